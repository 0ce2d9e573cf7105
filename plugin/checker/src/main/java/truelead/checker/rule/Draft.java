package truelead.checker.rule;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.checker.job.Fact;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.work.ThreadingOperation;

/**
 * A finding while a rule writes it: the message first, then where every number of it comes from, the other blocks that matter, the fixes.
 */
public final class Draft {

	private static final String THREADING_BLOCK = "the threading block";

	private final String rule;
	private final Severity severity;
	private final Location at;
	private String message;
	private final Set<Related> related = new LinkedHashSet<>();
	private final List<Fix> fixes = new ArrayList<>();
	private final List<Evidence> evidence = new ArrayList<>();
	private final Set<Slip> tells = EnumSet.noneOf(Slip.class);
	private int operation = -1;

	private Draft(Rule rule, Severity severity, Location at, String message) {
		this.rule = rule.name();
		tells.addAll(rule.tells());
		this.severity = severity;
		this.at = at;
		this.message = message;
	}

	/** Starts a finding at a place of the program. */
	public static Draft of(Rule rule, Severity severity, Location at, String message) {
		return new Draft(rule, severity, at, message);
	}

	/** Starts a finding at the word that set a number, or at the block where no word did. */
	public static Draft of(Rule rule, Severity severity, Setting setting, BlockRef block, String message) {
		return of(rule, severity, setting.word().map(Location::of).orElseGet(() -> Location.of(block)), message);
	}

	/** More that the message says at its end. */
	public Draft adds(String words) {
		message += words;
		return this;
	}

	/** Says which operation it is about; its block and its tool change become related places. */
	public Draft on(ThreadingOperation about) {
		operation = about.index();
		related(about.block(), THREADING_BLOCK);
		callers(about.block());
		about.tool().change().ifPresent(change -> related(change, Related.TOOL_CHANGE + about.tool().name()));
		return this;
	}

	/** Whether it is about that operation. */
	public boolean isOn(ThreadingOperation about) {
		return operation == about.index();
	}

	/** Another block that matters; the calls that led to it follow. */
	public Draft related(BlockRef block, String what) {
		related.add(new Related(Location.of(block), what));
		return this;
	}

	/** Another place that matters. */
	public Draft related(Location place, String what) {
		related.add(new Related(place, what));
		return this;
	}

	/** A number that the program says. */
	public Draft programmed(String name, String value, Setting setting) {
		String origin = setting.word().map(w -> "programmed: " + Figures.written(w)).orElse(setting.why().isEmpty() ? "programmed"
				: setting.why().words());
		evidence.add(new Evidence(name, value, origin, setting.word().map(Location::of)));
		return this;
	}

	/** A number that a block of the program makes. */
	public Draft programmed(String name, String value, BlockRef block) {
		evidence.add(new Evidence(name, value, "programmed", Optional.of(Location.of(block))));
		return this;
	}

	/** A number that the job says, and where; a place in the program becomes a related place. */
	public Draft known(String name, String value, Fact<?> fact) {
		evidence.add(new Evidence(name, value, fact.origin(), fact.at()));
		fact.at().ifPresent(place -> related(place, name));
		return this;
	}

	/** A number from a standard, a profile, a default or a formula, in words. */
	public Draft from(String name, String value, String origin) {
		evidence.add(new Evidence(name, value, origin, Optional.empty()));
		return this;
	}

	/** A slip that this finding is sure of, beside those that its rule always tells of. */
	public Draft tells(Slip slip) {
		tells.add(slip);
		return this;
	}

	/** A change that removes the finding; the best comes first. */
	public Draft fix(Fix fix) {
		fixes.add(fix);
		return this;
	}

	/** The finding. */
	public Finding finding() {
		List<Related> others = new ArrayList<>(related.size());
		for (Related one : related) {
			if (one.what().equals(THREADING_BLOCK) || !one.at().equals(at)) {
				others.add(one);
			}
		}
		return new Finding(rule, severity, message, at, others, fixes, evidence, operation, tells, Optional.empty());
	}

	/** Replaces the number of a word, where it is a plain number; empty where it is computed. */
	public static Optional<Fix> change(WordRef word, double value, int maxDecimals, boolean safe, String why) {
		if (!word.literal()) {
			return Optional.empty();
		}
		String text = WordText.rewrite(word, value, maxDecimals);
		String title = "Change " + Figures.written(word) + " to " + Figures.tight(text);
		return Optional.of(new Fix(title, safe, why, List.of(new Edit(Location.of(word), text))));
	}

	private void callers(BlockRef block) {
		for (Optional<BlockRef> caller = block.caller(); caller.isPresent(); caller = caller.get().caller()) {
			related(caller.get(), "the call");
		}
	}
}
