package truelead.checker.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import truelead.checker.program.Location;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Evidence;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Related;
import truelead.checker.rule.Severity;
import truelead.checker.work.Work;

/**
 * Folds what one rule says in the same words of one tool at hole after hole that is written out (a wrong helix put out sixty times by the
 * same system) into the first; the other blocks stay as related places, and a fix mends them all.
 */
final class OneACause {

	/** How another block with the same finding is named. */
	private static final String AGAIN = "the same again";
	/** As many other blocks as a person looks through. */
	private static final int MOST_PLACES = 200;

	private record Cause(String rule, Severity severity, String message, String file, int group) {
	}

	/** Rules that speak of the drill, and of a word for the feed mode. */
	private static final Set<String> OF_ONE_PLACE = Set.of("drill-too-small", "drill-too-big", "feed-in-wrong-mode");
	/** How their related places name it. */
	private static final Set<String> NAMED = Set.of("the drill block", "the word for feed per minute", "the word for feed per revolution");

	/** What is said of a drill whose size stands at a place, or of what a word at a place does. */
	private record Said(String rule, String message, Location place) {
	}

	private record Change(String rule, Severity severity, List<Edit> edits) {
	}

	private OneACause() {
	}

	static List<Finding> fold(List<Finding> found, Work work) {
		Map<Cause, List<Finding>> causes = new LinkedHashMap<>();
		List<Finding> folded = new ArrayList<>();
		for (Finding finding : found) {
			if (finding.operation() < 0) {
				folded.add(finding);
			} else {
				int group = work.operations().get(finding.operation()).group();
				causes.computeIfAbsent(new Cause(finding.rule(), finding.severity(), finding.message(), finding.at().file().name(), group),
						cause -> new ArrayList<>()).add(finding);
			}
		}
		causes.values().forEach(same -> folded.add(same.size() == 1 ? same.get(0) : first(same, " of this tool")));
		return mendedTogether(folded);
	}

	/**
	 * The places in common of which a finding may be told together with those of other tools: what its first change mends elsewhere, or
	 * what it is about.
	 */
	static Stream<Location> common(Finding finding) {
		return mendsElsewhere(finding) ? finding.fixes().get(0).edits().stream().map(Edit::at) : OF_ONE_PLACE.contains(finding.rule())
				? about(finding).stream() : Stream.empty();
	}

	private static boolean mendsElsewhere(Finding finding) {
		return finding.operation() >= 0 && !finding.fixes().isEmpty()
				&& finding.fixes().get(0).edits().stream().noneMatch(edit -> edit.at().file().equals(finding.at().file())
						&& edit.at().line() == finding.at().line());
	}

	/**
	 * What one rule says of several tools, and one change of a block that is theirs in common mends: a drill that is too shallow for two
	 * taps; or in the same words of the same drill, one that is too small for both, or of the same word for the feed mode.
	 */
	private static List<Finding> mendedTogether(List<Finding> found) {
		Map<Object, List<Finding>> changes = new LinkedHashMap<>();
		for (Finding finding : found) {
			Object cause = mendsElsewhere(finding) ? new Change(finding.rule(), finding.severity(), finding.fixes().get(0).edits())
					: OF_ONE_PLACE.contains(finding.rule()) ? said(finding) : new Object();
			changes.computeIfAbsent(cause, change -> new ArrayList<>()).add(finding);
		}
		return changes.values().stream().map(same -> same.size() == 1 ? same.get(0) : first(same, "")).toList();
	}

	/** The place that a finding is about: where the size of the drill is said, else what drills, or the word for the feed mode. */
	private static Optional<Location> about(Finding finding) {
		Optional<Location> size = finding.evidence().stream().filter(number -> number.name().equals("drill")).map(Evidence::at)
				.flatMap(Optional::stream).findFirst();
		return size.or(() -> finding.related().stream().filter(related -> NAMED.contains(related.what())).map(Related::at).findFirst());
	}

	private static Object said(Finding finding) {
		return about(finding).<Object>map(place -> new Said(finding.rule(), finding.message(), place)).orElseGet(Object::new);
	}

	private static Finding first(List<Finding> same, String of) {
		Finding first = same.get(0);
		Set<Related> related = new LinkedHashSet<>(first.related());
		same.stream().skip(1).limit(MOST_PLACES).forEach(finding -> related.add(new Related(finding.at(), AGAIN)));
		int more = same.size() - 1;
		return first.forAll(first.message() + "; the same at " + more + (more == 1 ? " more block" : " more blocks") + of,
				related, fixes(same));
	}

	/** The first, second, ... fix of all of them as one; none where not all have as many. */
	private static List<Fix> fixes(List<Finding> same) {
		List<Fix> fixes = new ArrayList<>();
		int count = same.get(0).fixes().size();
		if (same.stream().anyMatch(finding -> finding.fixes().size() != count)) {
			return List.of();
		}
		for (int i = 0; i < count; i++) {
			int which = i;
			Optional<Fix> all = Fix.together(same.stream().map(finding -> finding.fixes().get(which)).toList());
			all.ifPresent(fixes::add);
		}
		return fixes;
	}
}
