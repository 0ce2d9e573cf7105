package truelead.checker.wanted;

import java.util.Optional;
import truelead.checker.thread.DrillPoint;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.ToolUse;

/**
 * What an operation cuts and into which hole, to weigh words against that could mean something else.
 *
 * @param lead  advance in a turn, mm; NaN where it is not known
 * @param drill diameter of the hole before it is threaded, mm, where it is known
 * @param drilledBy the tool that made the hole deepest before it is threaded, where there is one
 * @param milled diameter that a thread mill's edge reaches, mm, where it is known
 * @param path   diameter of the widest path of a thread mill, mm, where one cuts it
 * @param full  how deep the hole has its full diameter before it is threaded, mm; NaN where it is not known
 * @param tip   how deep the drill's point goes, mm; NaN where it is not known
 * @param tapped how deep the tap goes, mm; NaN where none does
 */
public record AsCut(double lead, Optional<Double> drill, Optional<ToolUse> drilledBy, Optional<Double> milled, Optional<Double> path,
		double full, double tip, double tapped) {

	/** How far behind a part a drill comes out at most, besides twice its diameter, mm (common practice, no source). */
	private static final double BEHIND = 3;
	/** How far a tap goes behind it at most, threads of its lead (DIN 2197, form A). */
	private static final double LEADS_BEHIND = 8;

	/** How far a thread's lead may be from the advance, a part of it. */
	private static final double FITS = 0.05;

	/** How far a hole may be beyond those that a thread is cut or formed in, a part of the pitch. */
	private static final double AMISS = 0.25;

	/**
	 * How much smaller the hole of a taper thread is at its small end, a part of the pitch: D - (1.9 + 0.05 D) P (ASME B1.20.1, D in
	 * inches).
	 */
	private static final double TAPER = 0.4;

	/** Whether drill or tap go through so thick a part and come out right behind it, so that no boss and no step is meant. */
	boolean comesOut(double thick) {
		double deep = full(Optional.empty());
		boolean drilled = deep >= thick && deep <= thick + BEHIND + 2 * drill.orElse(0.0);
		return drilled || tapped >= thick && tapped <= thick + BEHIND + LEADS_BEHIND * lead;
	}

	/**
	 * How deep the hole has its full diameter, mm: where nobody says the drill's, with the point of the drill that the thread needs; the
	 * tip's depth where its point is not known; NaN where the thread is not known either.
	 */
	double full(Optional<ThreadSpec> thread) {
		if (!Double.isNaN(full)) {
			return full;
		}
		return drill.isPresent() ? tip
				: tip - thread.map(spec -> DrillPoint.length(spec.diameter() - spec.pitch(), DrillPoint.ORDINARY)).orElse(Double.NaN);
	}

	/** Whether a thread mill cuts it, and no tap. */
	boolean isMilled() {
		return Double.isNaN(tapped);
	}

	/** Whether lead or hole are that of a thread. */
	boolean speaksFor(ThreadSpec thread) {
		return suitsLead(thread) || suitsHole(thread);
	}

	/** Whether the lead is that of a thread, or a little beside it, as a wrong feed is. */
	boolean suitsLead(ThreadSpec thread) {
		return amiss(thread) <= FITS;
	}

	/** How far the lead of a thread is from what is cut, a part of it. */
	double amiss(ThreadSpec thread) {
		return Math.abs(thread.lead() - lead) / thread.lead();
	}

	/**
	 * Whether a thread mill goes out to the thread's own diameter with its lead, whatever the hole is; in the middle of a taper thread it
	 * goes less far.
	 */
	boolean suitsMilled(ThreadSpec thread) {
		return suitsLead(thread) && reaches(thread);
	}

	/** Whether a thread mill goes out to a thread's own diameter. */
	boolean reaches(ThreadSpec thread) {
		return milled.filter(d -> Math.abs(d - thread.diameter()) <= amiss(thread.taperOnDiameter() > 0) * thread.pitch()).isPresent();
	}

	/** Whether a thread mill's path is the wall of a thread with its lead, from which compensation is to keep the cutter. */
	boolean isWallOf(ThreadSpec thread) {
		return suitsLead(thread) && path.filter(d -> Math.abs(d - thread.diameter()) <= AMISS * thread.pitch()).isPresent();
	}

	private static double amiss(boolean taper) {
		return taper ? AMISS + TAPER : AMISS;
	}

	/** Whether the hole is known, and is between one for a full thread and one for half of it, or a little beyond, as a wrong drill is. */
	boolean suitsHole(ThreadSpec thread) {
		double fullDepth = 2 * thread.system().profileOverPitch() * thread.pitch();
		double smaller = amiss(thread.taperOnDiameter() > 0) * thread.pitch();
		return drill.filter(hole -> hole > thread.diameter() - fullDepth - smaller
				&& hole < thread.diameter() - fullDepth / 2 + AMISS * thread.pitch()).isPresent();
	}
}
