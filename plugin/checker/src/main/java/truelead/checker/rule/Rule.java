package truelead.checker.rule;

import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.work.Work;

/**
 * One kind of fault. Its page, {@code pages/<name>.md} beside the class in the resources, holds summary, default severity, samples and
 * source.
 */
public interface Rule {

	/** The name in messages, reports, notes and settings; says what is wrong: {@code feed-off-pitch}. */
	String name();

	/** The slips that every finding of it is sure of; a single finding may tell of more ({@link Draft#tells}). */
	default Set<Slip> tells() {
		return Set.of();
	}

	/** The slips that already explain what it would say: where a finding no less severe tells of one, this rule's is left out. */
	default Set<Slip> silentWhere() {
		return Set.of();
	}

	/** Looks through the work and hands out what it finds. */
	void check(Work work, Consumer<Finding> found);

	/**
	 * Whether it judges the words of a cycle's block alone, whatever hole they are said at: what it finds in one block is true of all that
	 * say the same.
	 */
	default boolean isOfWords() {
		return false;
	}

	/**
	 * Whether each of its findings that are about no operation is about one stay of a tool, and depends on that stay and on what
	 * {@link Work#ofTools} may be made of.
	 */
	default boolean isOfAStay() {
		return false;
	}
}
