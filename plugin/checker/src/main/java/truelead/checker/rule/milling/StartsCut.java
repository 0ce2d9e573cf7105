package truelead.checker.rule.milling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import truelead.checker.job.Fact;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * A thread of several starts of which not all are cut by a cutter with one row of teeth: each start is a groove of its own, whole pitches
 * from the first one within the lead (geometry). A cutter with rows a pitch apart cuts all of them at once.
 */
final class StartsCut {

	/** As many passes in a hole are compared. */
	private static final int MOST = 200;

	private StartsCut() {
	}

	/**
	 * The finding at a hole whose finishing passes cut fewer grooves than the thread has starts; empty where they cut all, or it cannot be
	 * told.
	 */
	static Optional<Draft> missing(HelixUneven rule, Work work, ThreadMilling operation, List<MillPass> finishing, ThreadSpec thread) {
		if (thread.starts() < 2 || MillFacts.comb(operation) || !work.course().toItsEnd()) {
			return Optional.empty();
		}
		MillPass first = finishing.get(0);
		List<MillPass> all = new ArrayList<>();
		for (ThreadMilling other : SharedGroove.at(work, operation, first.hole().place())) {
			boolean same = other == operation || other.wanted().statedThread().map(Fact::value).filter(t -> t.withoutClass()
					.equals(thread.withoutClass())).isPresent();
			if (!same) {
				continue;
			}
			if (other.firstOrder() < operation.firstOrder()) {
				// the first operation at the hole says it
				return Optional.empty();
			}
			List<MillPass> there = other.finishing(first.hole());
			all.addAll(there.subList(0, Math.min(there.size(), MOST)));
		}
		if (all.stream().anyMatch(pass -> pass.besideHole() > 0 || SharedGroove.offLead(pass, thread))) {
			return Optional.empty();
		}
		long grooves = LongStream.concat(LongStream.of(0), all.stream().mapToLong(pass -> number(pass, first, thread))).distinct().count();
		return grooves < thread.starts() ? Optional.of(draft(rule, operation, all, (int) grooves, thread)) : Optional.empty();
	}

	/** The number of a pass's groove within the lead, counted from that of the first pass. */
	private static long number(MillPass pass, MillPass first, ThreadSpec thread) {
		double off = SharedGroove.groove(pass, thread) - SharedGroove.groove(first, thread);
		return Math.floorMod(Math.round(off / thread.pitch()), (long) thread.starts());
	}

	private static Draft draft(HelixUneven rule, ThreadMilling operation, List<MillPass> all, int grooves, ThreadSpec thread) {
		MillPass first = all.get(0);
		Figures figures = new Figures(first.modal().unit());
		String axis = MillFacts.axisLetter(first.axis());
		String cut = grooves == 1 && all.size() >= thread.starts() ? "all passes run in one groove, " + thread.designation() + " has "
				+ thread.starts() + " starts" : grooves + " of " + thread.starts() + " starts of " + thread.designation()
				+ (grooves == 1 ? " is" : " are") + " cut to the whole depth";
		return Draft.of(rule, Severity.ERROR, MillFacts.word(first.block(), axis), cut + "; begin each start "
				+ figures.advance(thread.pitch()) + " farther along " + axis).on(operation).known("starts", String.valueOf(thread.starts()),
						operation.wanted().statedThread().orElseThrow());
	}
}
