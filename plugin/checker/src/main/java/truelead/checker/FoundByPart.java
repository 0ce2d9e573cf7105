package truelead.checker;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import truelead.checker.comment.ChangedLines;
import truelead.checker.program.Location;
import truelead.checker.rule.Finding;
import truelead.checker.rulebook.Rules;

/**
 * What the rules find in a program, by the part of it that each finding is about: a threading operation, a line in a tool's stay, or all of
 * it.
 */
final class FoundByPart {

	private final Map<Integer, List<Finding>> ofOperations = new HashMap<>();
	private final NavigableMap<Integer, List<Finding>> ofLines = new TreeMap<>();
	private final List<Finding> ofAll = new ArrayList<>();
	/** How many are at a line, and how often they name it. */
	private final NavigableMap<Integer, Integer> at = new TreeMap<>();
	private final NavigableMap<Integer, Integer> named = new TreeMap<>();
	/** How many may be told together with others of a place in common in a line. */
	private final NavigableMap<Integer, Integer> inCommon = new TreeMap<>();
	private int reachAll;
	private int failed;

	FoundByPart(List<Finding> found) {
		add(found);
	}

	/** Whether a finding is about one of some operations, or about a line of some that belongs to a stay. */
	static boolean isIn(Finding finding, BitSet operations, BitSet lines) {
		return finding.operation() >= 0 ? operations.get(finding.operation()) : !isOfAll(finding) && lines.get(finding.at().line());
	}

	/** Whether a finding is about the whole program. */
	private static boolean isOfAll(Finding finding) {
		return finding.operation() < 0 && !Rules.isOfAStay(finding.rule());
	}

	void add(List<Finding> found) {
		for (Finding finding : found) {
			group(finding).add(finding);
			count(finding, 1);
		}
	}

	private List<Finding> group(Finding finding) {
		return finding.operation() >= 0 ? ofOperations.computeIfAbsent(finding.operation(), operation -> new ArrayList<>())
				: isOfAll(finding) ? ofAll : ofLines.computeIfAbsent(finding.at().line(), line -> new ArrayList<>());
	}

	/** What was found in a part but for what is about the whole program, and is known. */
	List<Finding> butForAll(List<Finding> part) {
		return part.stream().filter(finding -> !isOfAll(finding) || !ofAll.contains(finding)).toList();
	}

	/** Takes out what is about some operations, and about some lines that belong to stays; what it takes out. */
	List<Finding> remove(BitSet operations, BitSet lines) {
		List<Finding> all = new ArrayList<>();
		for (int operation = operations.nextSetBit(0); operation >= 0; operation = operations.nextSetBit(operation + 1)) {
			List<Finding> gone = ofOperations.remove(operation);
			if (gone != null) {
				all.addAll(gone);
			}
		}
		ofLines.entrySet().removeIf(entry -> {
			boolean gone = lines.get(entry.getKey());
			if (gone) {
				all.addAll(entry.getValue());
			}
			return gone;
		});
		all.forEach(finding -> count(finding, -1));
		return all;
	}

	private void count(Finding finding, int times) {
		at.merge(finding.at().line(), times, FoundByPart::sum);
		places(finding).forEach(place -> named.merge(place.line(), times, FoundByPart::sum));
		Rules.inCommon(finding).forEach(place -> inCommon.merge(place.line(), times, FoundByPart::sum));
		reachAll += finding.reachesAll() ? times : 0;
		failed += Rules.failed(finding) ? times : 0;
	}

	/** Nothing where none is left. */
	private static Integer sum(int one, int other) {
		return one + other == 0 ? null : Integer.valueOf(one + other);
	}

	/** Whether one of them may explain what is found anywhere in the program. */
	boolean reachesAll() {
		return reachAll > 0;
	}

	/** Whether one of them says that its rule broke. */
	boolean failed() {
		return failed > 0;
	}

	/** Whether one of them names a place in lines that differ. */
	boolean pointsAt(ChangedLines lines) {
		return lines.first() <= lines.last() && !named.subMap(lines.first(), true, lines.last(), true).isEmpty();
	}

	/** Whether one of them is at one of some lines, or may be told together with others of a place there. */
	boolean isAt(BitSet lines) {
		for (int from = lines.nextSetBit(0); from >= 0; from = lines.nextSetBit(lines.nextClearBit(from))) {
			if (!at.subMap(from, lines.nextClearBit(from)).isEmpty() || !inCommon.subMap(from, lines.nextClearBit(from)).isEmpty()) {
				return true;
			}
		}
		return false;
	}

	/** Whether findings are at some lines, are told together with others of places there at most, and explain none elsewhere. */
	static boolean areApart(List<Finding> some, BitSet lines) {
		return some.stream().allMatch(finding -> !finding.reachesAll() && lines.get(finding.at().line())
				&& Rules.inCommon(finding).allMatch(place -> lines.get(place.line())));
	}

	/** All of them, by rules and operations. */
	List<Finding> all() {
		List<Finding> all = new ArrayList<>(ofAll);
		ofLines.values().forEach(all::addAll);
		ofOperations.values().forEach(all::addAll);
		all.sort(Comparator.<Finding>comparingInt(finding -> Rules.number(finding.rule())).thenComparingInt(Finding::operation));
		return all;
	}

	private static Stream<Location> places(Finding finding) {
		return Stream.of(Stream.of(finding.at()), finding.related().stream().map(other -> other.at()),
				finding.fixes().stream().flatMap(fix -> fix.edits().stream()).map(edit -> edit.at()),
				finding.evidence().stream().flatMap(number -> number.at().stream())).flatMap(places -> places);
	}
}
