package truelead.checker.rulebook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import truelead.checker.machine.Step;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Related;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * Where a cycle is written whole at every hole, a rule that has judged its words in one block has judged them in all: a change mends every
 * block that says the same.
 */
final class AtEveryHole {

	private static final String SAME_CYCLE = "the same cycle again";
	/** As many other blocks as a person looks through. */
	private static final int MOST_PLACES = 200;

	private AtEveryHole() {
	}

	static List<Finding> spread(List<Finding> found, Work work) {
		List<Finding> spread = new ArrayList<>(found.size());
		for (Finding finding : found) {
			spread.add(finding.operation() >= 0 && work.operations().get(finding.operation()) instanceof Tapping tapping
					&& tapping.strokes().size() > 1 ? spread(finding, tapping) : finding);
		}
		return spread;
	}

	private static Finding spread(Finding finding, Tapping tapping) {
		for (TapStroke stroke : tapping.strokes().typical()) {
			if (stroke.positioned() && stroke.step() instanceof Step.Stroke step && isOf(finding, step)) {
				return spread(finding, step, others(tapping, stroke, step, Rules.isOfWords(finding.rule())));
			}
		}
		return finding;
	}

	/** Whether a finding is at a word of the block that says a cycle, or changes one. */
	private static boolean isOf(Finding finding, Step.Stroke step) {
		return Stream.concat(Stream.of(finding.at()), finding.fixes().stream().flatMap(fix -> fix.edits().stream()).map(Edit::at))
				.anyMatch(place -> address(step, place).isPresent());
	}

	/** The other blocks that say the same cycle, by their lines: at holes of the same kind, or at all. */
	private static Map<Integer, Step.Stroke> others(Tapping tapping, TapStroke like, Step.Stroke step, boolean atAll) {
		Object said = step.cycle().said();
		Predicate<TapStroke> same = kind -> kind == like || atAll && kind.positioned() && kind.step() instanceof Step.Stroke other
				&& other.cycle().said().equals(said);
		Map<Integer, Step.Stroke> others = new LinkedHashMap<>();
		for (TapStroke stroke : tapping.strokes().where(same)) {
			Step.Stroke other = (Step.Stroke) stroke.step();
			others.putIfAbsent(other.cycle().start().line(), other);
		}
		others.remove(step.cycle().start().line());
		return others;
	}

	private static Finding spread(Finding finding, Step.Stroke like, Map<Integer, Step.Stroke> others) {
		if (others.isEmpty()) {
			return finding;
		}
		List<Fix> fixes = finding.fixes().stream().map(fix -> inAll(fix, like, others)).toList();
		Set<Related> related = new LinkedHashSet<>(finding.related());
		others.values().stream().limit(MOST_PLACES)
				.forEach(other -> related.add(new Related(Location.of(other.cycle().start()), SAME_CYCLE)));
		int more = others.size();
		return finding.forAll(finding.message() + "; the same in " + more + (more == 1 ? " more block" : " more blocks") + " of this cycle",
				related, fixes);
	}

	/** The fix with what it does to words of a cycle's block done in the others too. */
	private static Fix inAll(Fix fix, Step.Stroke like, Map<Integer, Step.Stroke> others) {
		Map<Character, String> changed = new LinkedHashMap<>();
		Set<Integer> done = new HashSet<>();
		for (Edit edit : fix.edits()) {
			done.add(edit.at().line());
			address(like, edit.at()).ifPresent(address -> changed.put(address, edit.text()));
		}
		List<List<Edit>> more = new ArrayList<>();
		for (Map.Entry<Integer, Step.Stroke> other : changed.isEmpty() ? Set.<Map.Entry<Integer, Step.Stroke>>of() : others.entrySet()) {
			if (done.add(other.getKey())) {
				more.add(changed.entrySet().stream().flatMap(change -> said(other.getValue(), change.getKey())
						.map(word -> new Edit(Location.of(word), change.getValue())).stream()).toList());
			}
		}
		return fix.also(more);
	}

	/** The address of the word of a cycle's block that stands at a place. */
	private static Optional<Character> address(Step.Stroke step, Location place) {
		return place.line() != step.cycle().start().line() ? Optional.empty()
				: Stream.concat(Stream.of('F'), step.cycle().words().keySet().stream()).filter(address -> said(step, address)
						.filter(word -> isAt(word, place)).isPresent()).findFirst();
	}

	/** A word of the block that says a cycle; F in force is one of them where it stands there. */
	private static Optional<WordRef> said(Step.Stroke step, char address) {
		Setting setting = address == 'F' ? step.modal().feed() : step.cycle().word(address).orElse(Setting.NONE);
		return step.cycle().says(setting) ? setting.word() : Optional.empty();
	}

	private static boolean isAt(WordRef word, Location place) {
		return word.block().line() == place.line() && word.span().equals(place.span())
				&& word.block().file().name().equals(place.file().name());
	}
}
