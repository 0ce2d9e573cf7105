package truelead.checker.run;

import java.util.ArrayList;
import java.util.List;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.program.Plane;

/**
 * Holds straight feeds back for as long as they turn one way by little, as a helix does that is written in short chords; whoever takes them
 * out gets those that lie on circles as arcs.
 */
final class Chords {

	/** A straight feed and the number of its step. */
	record Chord(Step.Move move, int number) {
	}

	private static final int MOST = 50_000;
	/** Chords in a row that turn one way, before one that does not is taken for a slip among them. */
	private static final int ENOUGH = 6;
	/** Turns in a row that a single wrong corner spoils. */
	private static final int SPOILT = 3;
	private static final double STRAIGHT = Math.tan(Math.toRadians(0.2));
	private static final double MOST_TURN = Math.tan(ChordPath.MOST_ANGLE);
	/** Turns are hidden by rounding where it is worth this angle. */
	private static final double HIDDEN = Math.toRadians(0.25);
	private static final double FINEST = 0.0005;

	private final List<Chord> held = new ArrayList<>();
	private int turning;
	private int spoilt;
	private int sense;
	private double u;
	private double v;

	/** Whether a motion may be a chord: a straight feed aside, between known places. */
	static boolean may(Step step) {
		if (!(step instanceof Step.Move move) || move.rapid() || !move.from().known() || !move.to().known()) {
			return false;
		}
		Plane plane = move.modal().plane();
		double u = move.to().along(plane.first()) - move.from().along(plane.first());
		double v = move.to().along(plane.second()) - move.from().along(plane.second());
		return u * u + v * v > FINEST * FINEST / 4;
	}

	boolean isEmpty() {
		return held.isEmpty();
	}

	/** Takes a move that {@link #may} be a chord; those held before that it does not go on from are handed out, in order. */
	List<Chord> add(Step.Move move, int number) {
		List<Chord> out = List.of();
		if (!held.isEmpty() && (held.size() == MOST || !goesOn(held.get(held.size() - 1).move(), move))) {
			out = takeAll();
		} else if (!held.isEmpty() && !turns(move)) {
			if (turning >= ENOUGH) {
				return behindCorner(move, number);
			}
			out = takeAll();
		}
		if (held.isEmpty()) {
			begin();
		}
		Plane plane = move.modal().plane();
		u = move.to().along(plane.first()) - move.from().along(plane.first());
		v = move.to().along(plane.second()) - move.from().along(plane.second());
		held.add(new Chord(move, number));
		return out;
	}

	/** What follows the corner at which the way turned otherwise may be a stretch of its own. */
	private List<Chord> behindCorner(Step.Move move, int number) {
		List<Chord> all = takeAll();
		int corner = all.size() - SPOILT;
		List<Chord> out = new ArrayList<>(all.subList(0, corner));
		for (Chord chord : all.subList(corner, all.size())) {
			out.addAll(add(chord.move(), chord.number()));
		}
		out.addAll(add(move, number));
		return out;
	}

	private void begin() {
		turning = 0;
		spoilt = 0;
		sense = 0;
	}

	/** All that are held, in order; none are behind it. */
	List<Chord> takeAll() {
		List<Chord> all = List.copyOf(held);
		held.clear();
		return all;
	}

	private static boolean goesOn(Step.Move before, Step.Move move) {
		Modal one = before.modal();
		Modal next = move.modal();
		return same(before.to(), move.from()) && (one == next || one.plane() == next.plane() && one.frame() == next.frame()
				&& one.workOffset() == next.workOffset() && one.compensation() == next.compensation()
				&& one.rotary().equals(next.rotary()));
	}

	private static boolean same(Point one, Point other) {
		return one.x() == other.x() && one.y() == other.y() && one.z() == other.z();
	}

	/** Whether the way turns on, or a corner may be wrong among those before. */
	private boolean turns(Step.Move move) {
		Plane plane = move.modal().plane();
		double du = move.to().along(plane.first()) - move.from().along(plane.first());
		double dv = move.to().along(plane.second()) - move.from().along(plane.second());
		// across is the sine and along the cosine of the turn, both as many times larger
		double across = u * dv - v * du;
		double along = u * du + v * dv;
		double rounding = 3 * Math.max(Decimals.open(move.modal().unit(), move.resolution()), FINEST);
		double shorter = Math.min(u * u + v * v, du * du + dv * dv);
		boolean hidden = rounding * rounding >= HIDDEN * HIDDEN * shorter;
		boolean on = hidden ? sense == 0 || sense * across * Math.sqrt(shorter) > -rounding * along : Math.abs(across) >= STRAIGHT * along
				&& sense * across >= 0;
		if (on && along > 0 && Math.abs(across) <= MOST_TURN * along) {
			turning++;
			spoilt = 0;
			sense = hidden || sense != 0 ? sense : across > 0 ? 1 : -1;
			return true;
		}
		return turning >= ENOUGH && ++spoilt <= SPOILT;
	}
}
