package truelead.checker.turn;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Places;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.run.AxisRun;
import truelead.checker.tool.ToolLog;

/** Finds what a lathe turns, grooves and parts on the outside: feeds beside the axis of a tool that leaves the work away from the axis. */
final class TurnedOutside {

	private static final int MOST = 5_000;
	/**
	 * As wide as a grooving tool is, mm, and a relief in pitches of its thread, of which the wider counts: so far two grooves that meet are
	 * programmed apart, and so far a groove may go on beside its place (common practice, no source).
	 */
	private static final double WIDEST = 5;
	private static final double RELIEF = 1.5;
	/**
	 * Parts of the pitch that the outside may stand within and beyond the major diameter of its thread, on the radius (common practice, no
	 * source).
	 */
	private static final double BEYOND = 0.15;
	private static final double WITHIN = 0.6;
	private static final double SAME = 1e-6;
	/** So far beside the work a tool begins to face it at most, mm (common practice, no source). */
	private static final double CLEAR = 3;

	/** A feed, between points of which X is the distance from the axis. */
	private record Feed(int order, ToolLog tool, Step step, Modal modal, Point from, Point to) {

		boolean along() {
			return Math.abs(to.z() - from.z()) > Math.abs(to.x() - from.x());
		}

		boolean plunges() {
			return Math.abs(to.z() - from.z()) < SAME && Math.abs(to.x()) < Math.abs(from.x());
		}

		/** Whether a level lies between its ends, or so far beside them. */
		boolean covers(double level, double beside) {
			return level > Math.min(from.z(), to.z()) - beside && level < Math.max(from.z(), to.z()) + beside;
		}

		/**
		 * Whether it leaves room where a pass begins: it turns narrower there, grooves beside it, or rounds, of which nobody knows how
		 * deep.
		 */
		boolean relieves(Point begin, double widest) {
			boolean narrow = Math.min(Math.abs(from.x()), Math.abs(to.x())) < Math.abs(begin.x()) + SAME;
			return step instanceof Step.Arc ? covers(begin.z(), widest) : narrow && covers(begin.z(), plunges() ? widest : 0);
		}

		/** The levels between which it runs no farther from the axis than a distance, in the order it runs; empty where it does not. */
		Optional<double[]> within(double radius) {
			double a = Math.abs(from.x());
			double b = Math.abs(to.x());
			if (Math.min(a, b) > radius) {
				return Optional.empty();
			}
			double crossing = from.z() + (a == b ? 0 : (radius - a) / (b - a)) * (to.z() - from.z());
			return Optional.of(new double[] { a > radius ? crossing : from.z(), b > radius ? crossing : to.z() });
		}
	}

	/** Levels along the way to the shoulder between which the outside is narrow enough, mm; whether a tool goes straight in there. */
	private record Stretch(double near, double far, boolean plunged) {
	}

	private final List<Feed> feeds = new ArrayList<>();
	/** What leaves the work towards the axis, as tools inside do. */
	private final List<Feed> inner = new ArrayList<>();
	private final List<Feed> open = new ArrayList<>();

	/** A straight motion. */
	void motion(Step.Move move, ToolLog tool, int order) {
		if (move.rapid()) {
			leave(Math.abs(move.to().x()) - Math.abs(move.from().x()));
		} else {
			feed(move, move.from(), move.to(), tool, order);
		}
	}

	/** Another tool comes: where its first motion leads says nothing of the way that the one before has left. */
	void changed() {
		leave(0);
	}

	/** A corner is taken for its chord. */
	void arc(Step.Arc arc, ToolLog tool, int order) {
		feed(arc, arc.from(), arc.to(), tool, order);
	}

	private void feed(Step step, Point from, Point to, ToolLog tool, int order) {
		boolean beside = Math.max(Math.abs(from.x()), Math.abs(to.x())) > AxisRun.CENTRE_LINE;
		if (beside && !Double.isNaN(from.x() + to.x() + from.z() + to.z()) && feeds.size() + inner.size() + open.size() < MOST) {
			open.add(new Feed(order, tool, step, step.modal(), from, to));
		}
	}

	/** The tool leaves by a rapid motion, which may go across; where it does not, the feed before it tells. */
	private void leave(double across) {
		double outwards = across;
		for (int i = open.size() - 1; i >= 0 && !(Math.abs(outwards) > SAME); i--) {
			outwards = Math.abs(open.get(i).to().x()) - Math.abs(open.get(i).from().x());
		}
		(outwards > SAME ? feeds : inner).addAll(open);
		open.clear();
	}

	/**
	 * The shaft that a thread is cut on.
	 *
	 * @param after  the number of the step behind which this end of the part is turned; -1 for all
	 * @param radius half the major diameter, mm
	 * @param first  the first pass
	 * @param levels the levels between which the thread goes, mm
	 * @return empty where nothing here turns as much as half of the thread to about its diameter before
	 */
	Optional<SinglePoint.Shaft> shaft(ToolLog tool, int after, int order, double radius, double pitch, Step.Synchronised first,
			DoubleSummaryStatistics levels) {
		double limit = radius + BEYOND * pitch;
		double begin = levels.getMin();
		double end = levels.getMax();
		Optional<Feed> turned = Optional.empty();
		for (Feed feed : feeds) {
			boolean fits = feed.order() > after && feed.order() < order && feed.tool().part() == tool.part() && feed.along()
					&& Math.min(Math.abs(feed.from().x()), Math.abs(feed.to().x())) > radius - WITHIN * pitch;
			double shared = fits ? feed.within(limit).map(within -> shared(within, begin, end)).orElse(0.0) : 0;
			boolean most = shared > Math.abs(end - begin) / 2
					|| shared > 2 * pitch && behindNeck(feed, after, order, radius - pitch, first);
			turned = most ? Optional.of(feed) : turned;
		}
		return turned.map(feed -> shaft(feed, ofPart(feed, after, order, radius - pitch), limit, Math.max(WIDEST, RELIEF * pitch), first));
	}

	/**
	 * Whether a pass begins over a part of the work that is narrower than a distance from the axis, and lies for the most part on what a
	 * feed turns behind that, as a nut's thread in the middle of a shaft.
	 */
	private boolean behindNeck(Feed feed, int after, int order, double narrow, Step.Synchronised first) {
		double way = Math.signum(first.to().z() - first.from().z());
		double near = way * Math.min(way * feed.from().z(), way * feed.to().z());
		double before = way * (near - first.from().z());
		double over = (near + first.from().z()) / 2;
		boolean mostly = before > 0 && Math.abs(feed.to().z() - feed.from().z()) > Math.abs(first.to().z() - near) / 2;
		return mostly && feeds.stream().anyMatch(other -> other.order() > after && other.order() < order && other.along()
				&& other.tool().part() == feed.tool().part() && other.covers(over, 0)
				&& Math.max(Math.abs(other.from().x()), Math.abs(other.to().x())) < narrow);
	}

	/**
	 * The feeds before a step on the part that one of them turns: where the work has been narrower than a distance from the axis before
	 * that, it was another part.
	 */
	private List<Feed> ofPart(Feed turned, int after, int order, double narrow) {
		List<Feed> all = feeds.stream().filter(feed -> feed.order() > after && feed.order() < order
				&& feed.tool().part() == turned.tool().part()).toList();
		double half = Math.abs(turned.to().z() - turned.from().z()) / 2;
		int before = all.stream().filter(feed -> feed.order() < turned.order() && feed.tool() != turned.tool() && feed.along()
				&& feed.within(narrow).filter(within -> shared(within, turned.from().z(), turned.to().z()) > half).isPresent())
				.mapToInt(feed -> feed.tool().index()).max().orElse(-1);
		return before < 0 ? all : all.stream().filter(feed -> feed.tool().index() > before).toList();
	}

	private static double shared(double[] levels, double begin, double end) {
		return Math.min(Math.max(levels[0], levels[1]), Math.max(begin, end)) - Math.max(Math.min(levels[0], levels[1]),
				Math.min(begin, end));
	}

	/**
	 * How far the outside goes on no wider, by whatever cuts it before the thread; behind a groove whose width nobody says by as much as
	 * one is wide.
	 */
	private static SinglePoint.Shaft shaft(Feed turned, List<Feed> ofPart, double limit, double widest, Step.Synchronised first) {
		double way = Math.signum(turned.to().z() - turned.from().z());
		List<Stretch> stretches = new ArrayList<>();
		for (Feed feed : ofPart) {
			feed.within(limit).ifPresent(levels ->
					stretches.add(new Stretch(Math.min(way * levels[0], way * levels[1]), Math.max(way * levels[0], way * levels[1]),
							feed.plunges())));
		}
		stretches.sort((one, other) -> Double.compare(one.near(), other.near()));
		double floor = way * turned.within(limit).orElseThrow()[1];
		boolean groove = false;
		for (Stretch stretch : stretches) {
			if (stretch.near() - floor <= widest && stretch.far() - floor > SAME) {
				groove = stretch.plunged();
				floor = stretch.far();
			}
		}
		double buried = behind(way, turned.within(limit).orElseThrow()[0], first);
		boolean relieved = buried > 0 && ofPart.stream().anyMatch(feed -> feed.relieves(first.from(), widest));
		return new SinglePoint.Shaft(turned.step(), way * (floor + (groove ? widest : 0)), way, wider(ofPart, limit),
				relieved ? 0 : buried);
	}

	/**
	 * How far a pass along the way begins behind where its work does, or the face, which is taken for Z0, mm; 0 where it does not.
	 *
	 * @param way  +1 or -1, the way along Z into the work
	 * @param near level where the work begins, mm
	 */
	static double behind(double way, double near, Step.Synchronised first) {
		boolean inwards = way * (first.to().z() - first.from().z()) > 0;
		double behind = way * first.from().z() - Math.max(way * near, 0);
		return inwards && behind > SAME ? behind : 0;
	}

	/**
	 * Whether the hole in the middle is wide enough where a pass inside begins, by whatever has bored or grooved it before: as a groove is
	 * wide about its place.
	 */
	boolean hollow(int part, int order, Step.Synchronised first, double pitch) {
		double radius = Math.abs(first.from().x());
		return inner.stream().anyMatch(feed -> feed.order() < order && feed.tool().part() == part
				&& Math.max(Math.abs(feed.from().x()), Math.abs(feed.to().x())) > radius - SAME
				&& feed.covers(first.from().z(), feed.along() ? 0 : Math.max(WIDEST, RELIEF * pitch)));
	}

	/**
	 * How far the hole in the middle goes on as wide as a bore behind its end, by a relief that is turned or grooved there before a step;
	 * behind a groove whose width nobody says by as much as one is wide.
	 *
	 * @param floor level where the bore ends, mm
	 */
	double hollowTo(int part, int order, Cut bore, double floor, double pitch) {
		double radius = bore.diameter().orElseThrow().value() / 2;
		double way = bore.direction();
		double widest = Math.max(WIDEST, RELIEF * pitch);
		double end = way * floor;
		boolean groove = false;
		for (Feed feed : inner) {
			boolean wide = feed.order() < order && feed.tool().part() == part && Math.abs(feed.to().x()) > radius + SAME;
			double near = Math.min(way * feed.from().z(), way * feed.to().z());
			double far = Math.max(way * feed.from().z(), way * feed.to().z());
			if (wide && near - way * floor <= widest && far - way * floor > SAME) {
				groove = far > end + SAME ? !feed.along() : groove;
				end = Math.max(end, far);
			}
		}
		return way * (end + (groove ? widest : 0));
	}

	/**
	 * Whether the work is seen to be wider than a distance from the axis: a tool turns it there, cuts up to it, or faces it from far
	 * outside.
	 */
	private static boolean wider(List<Feed> ofPart, double limit) {
		return ofPart.stream().anyMatch(feed -> feed.along() && Math.min(Math.abs(feed.from().x()), Math.abs(feed.to().x())) > limit
				|| !feed.along() && Math.max(Math.abs(feed.from().x()), Math.abs(feed.to().x())) > limit + (feed.plunges() ? CLEAR : 0));
	}

	/** Where tools cut across to the middle, or to the hole there. */
	List<Parting> partings() {
		return feeds.stream().filter(feed -> Math.abs(feed.to().z() - feed.from().z()) < SAME
				&& Math.abs(feed.to().x()) < Math.abs(feed.from().x()) / 2)
				.map(feed -> new Parting(feed.order(), Places.of(feed.tool().part(), feed.modal(), Places.across(2),
						new Point(0, 0, feed.to().z())), Math.abs(feed.to().x()), feed.to().z(), feed.step().block())).toList();
	}
}
