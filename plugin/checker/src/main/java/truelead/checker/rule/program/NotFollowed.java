package truelead.checker.rule.program;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.program.Reason;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Related;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.NotEvaluated;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** A value, a branch or a call that could not be followed; a warning where a thread may depend on it, else information, once. */
public final class NotFollowed implements Rule {

	/** As many other blocks as a person looks through. */
	private static final int MOST_PLACES = 200;

	@Override
	public String name() {
		return "not-followed";
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.PART_UNKNOWN);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.OTHER_AXIS, Slip.DISTANCE_MODE);
	}

	/** What is said of a place, and why it is not followed. */
	private record Said(Draft draft, Reason why) {
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		Map<String, Said> byLine = new LinkedHashMap<>();
		List<NotEvaluated> minor = new ArrayList<>();
		List<NotEvaluated> callers = new ArrayList<>();
		List<NotEvaluated> elsewhere = new ArrayList<>();
		for (truelead.checker.work.NotFollowed trouble : work.trouble().notFollowed()) {
			switch (trouble.bearing()) {
				case THREAD -> byLine.merge(key(at(trouble.block(), trouble.word())), new Said(draft(trouble), trouble.why()),
						(one, other) -> trouble.word().filter(w -> w.address() != 'G').isPresent() ? other : one);
				case CALLER -> callers.add(new NotEvaluated(trouble.block(), trouble.word(), trouble.why(), true));
				case ELSEWHERE -> elsewhere.add(new NotEvaluated(trouble.block(), trouble.word(), trouble.why(), false));
				case NONE -> minor.add(new NotEvaluated(trouble.block(), trouble.word(), trouble.why(), false));
			}
		}
		for (ThreadingOperation operation : work.operations()) {
			Set<Reason> said = new HashSet<>();
			for (NotEvaluated part : operation.notEvaluated()) {
				if (part.ofCaller()) {
					callers.add(part);
					continue;
				}
				Said known = byLine.get(key(at(part.block(), part.word())));
				if (known != null) {
					known.draft().on(operation);
					said.add(part.why());
				} else if (said.add(part.why()) && byLine.values().stream().noneMatch(one -> one.draft().isOn(operation))) {
					byLine.put(key(at(part.block(), part.word())), new Said(Draft.of(this, Severity.WARNING, at(part.block(), part.word()),
							sentence(part.why()) + "this thread is not checked in full").on(operation), part.why()));
				}
			}
		}
		byCause(byLine.values()).forEach(found);
		all(callers, "the program that calls this one gives it, check it there").ifPresent(found);
		all(elsewhere, "threads that it makes are not checked").ifPresent(found);
		all(minor, "no thread depends on it").ifPresent(found);
	}

	/**
	 * One finding for a variable that nothing sets, whatever depends on it, and for blocks in a row of which the same is said; the other
	 * places stay as related ones.
	 */
	private static List<Finding> byCause(Collection<Said> all) {
		Map<Object, List<Finding>> causes = new LinkedHashMap<>();
		Said first = null;
		Location before = null;
		for (Said one : all) {
			Finding finding = one.draft().finding();
			boolean goesOn = first != null && first.why().equals(one.why()) && finding.at().file().equals(before.file())
					&& finding.at().line() == before.line() + 1;
			first = goesOn ? first : one;
			before = finding.at();
			causes.computeIfAbsent(one.why().unset().<Object>map(variable -> variable).orElse(first), cause -> new ArrayList<>())
					.add(finding);
		}
		return causes.values().stream().map(NotFollowed::first).toList();
	}

	private static Finding first(List<Finding> same) {
		Finding first = same.get(0);
		if (same.size() == 1) {
			return first;
		}
		Set<Related> related = new LinkedHashSet<>(first.related());
		same.stream().skip(1).limit(MOST_PLACES).forEach(other -> related.add(new Related(other.at(), "depends on it too")));
		return first.forAll(first.message(), related, first.fixes());
	}

	private Draft draft(truelead.checker.work.NotFollowed trouble) {
		Draft draft = Draft.of(this, Severity.WARNING, at(trouble.block(), trouble.word()),
				sentence(trouble.why()) + (trouble.stops() ? "nothing behind it is checked" : "what depends on it is not checked"));
		trouble.block().caller().ifPresent(caller -> draft.related(caller, "the call"));
		return draft;
	}

	/** One piece of information for all places whose bearing is the same. */
	private Optional<Finding> all(List<NotEvaluated> places, String bearing) {
		if (places.isEmpty()) {
			return Optional.empty();
		}
		NotEvaluated first = places.get(0);
		long more = places.stream().map(place -> key(at(place.block(), place.word()))).distinct().count() - 1;
		Draft draft = Draft.of(this, Severity.INFORMATION, at(first.block(), first.word()), sentence(first.why()) + bearing
				+ (more > 0 ? " (" + more + (more == 1 ? " more such place)" : " more such places)") : ""));
		places.stream().skip(1).limit(10).forEach(place -> draft.related(at(place.block(), place.word()), "also not followed"));
		return Optional.of(draft.finding());
	}

	private static String key(Location at) {
		return at.line() + " " + at.file().name();
	}

	private static Location at(BlockRef block, Optional<WordRef> word) {
		return word.map(Location::of).orElse(Location.of(block));
	}

	private static String sentence(Reason why) {
		String text = why.words().strip();
		while (text.endsWith(".")) {
			text = text.substring(0, text.length() - 1);
		}
		return text + ": ";
	}
}
