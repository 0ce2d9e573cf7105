package truelead.checker.rule;

import java.util.function.Consumer;
import truelead.checker.work.Work;

/** One kind of fault. Its page, {@code pages/<name>.md} beside the class in the resources, holds summary, default severity, samples and source. */
public interface Rule {

	/** The name in messages, reports, notes and settings; says what is wrong: {@code feed-off-pitch}. */
	String name();

	/** Looks through the work and hands out what it finds. */
	void check(Work work, Consumer<Finding> found);
}
