package truelead.checker.plan;

import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import truelead.checker.job.Stock;
import truelead.checker.job.StockGroup;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.FeedMode;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.ThreadSpec;

/**
 * What is to be made.
 *
 * @param thread  an internal thread
 * @param stock   what it is cut from; empty where nobody says
 * @param depth   full thread wanted, mm
 * @param bottom  the deepest point any tool may reach, mm below the surface; empty for no limit
 * @param through whether the hole goes through
 * @param count   holes, 1 to 10,000
 * @param profile the machine
 * @param wall    the wall of a through hole, mm, at least the depth; 0 for a blind hole
 * @param options how the program is to be written
 * @param rack    the tools on hand
 */
public record Request(ThreadSpec thread, Optional<Stock> stock, double depth, OptionalDouble bottom, boolean through, int count,
		MachineProfile profile, double wall, Set<Option> options, Rack rack) {

	/** How the program is to be written. */
	public enum Option {
		/** F is the advance in a turn, not in a minute. */
		FEED_PER_REV,
		/** F is the advance in a minute, also where the machine starts with the other. */
		FEED_PER_MINUTE,
		/** The path of a thread mill is the thread's wall, and the control takes the cutter's radius off (G41, G42 with D). */
		COMPENSATION
	}

	/** Depth in diameters where nobody says one (common practice, no source). */
	private static final double USUAL_DEPTH = 1.5;

	public Request {
		options = Set.copyOf(options);
	}

	/** A request with the usual options and no tools on hand, depth and bottom in mm; a through hole is threaded all the way. */
	public Request(ThreadSpec thread, Optional<Stock> stock, double depth, OptionalDouble bottom, boolean through, int count,
			MachineProfile profile) {
		this(thread, stock, depth, bottom, through, count, profile, through ? depth : 0, Set.of(), Rack.EMPTY);
	}

	/** The depth of full thread in mm that is taken where nobody says one: 1.5 diameters, of a taper thread what its joint needs. */
	public static double usualDepth(ThreadSpec thread) {
		return TaperTap.of(thread).map(TaperTap::full).orElse(USUAL_DEPTH * thread.diameter());
	}

	/** The same in a wall, mm, of which the depth is threaded. */
	public Request inWall(double thickness) {
		return new Request(thread, stock, depth, bottom, true, count, profile, thickness, options, rack);
	}

	/** The same to another depth of full thread, mm. */
	public Request to(double full) {
		return new Request(thread, stock, full, bottom, through, count, profile, through ? Math.max(full, wall) : 0, options, rack);
	}

	/** The same with no limit below. */
	Request free() {
		return new Request(thread, stock, depth, OptionalDouble.empty(), through, count, profile, wall, options, rack);
	}

	/** The same, written in another way. */
	public Request with(Option option) {
		Set<Option> more = EnumSet.of(option);
		more.addAll(options);
		return new Request(thread, stock, depth, bottom, through, count, profile, wall, more, rack);
	}

	/** The same with F in a turn or in a minute, whatever the machine starts with. */
	public Request feed(boolean perRev) {
		return with(perRev ? Option.FEED_PER_REV : Option.FEED_PER_MINUTE);
	}

	/** The same with tools on hand. */
	public Request with(Rack onHand) {
		return new Request(thread, stock, depth, bottom, through, count, profile, wall, options, onHand);
	}

	/** The group of the stock; OTHER where nobody says. */
	public StockGroup group() {
		return stock.map(Stock::group).orElse(StockGroup.OTHER);
	}

	/** Hardness, HRC; 0 where nobody says. */
	public double hardness() {
		return stock.map(s -> s.hardness().orElse(0)).orElse(0.0);
	}

	/** Depth in diameters. */
	public double diameters() {
		return depth / thread.diameter();
	}

	/** The unit of the program. */
	public LengthUnit unit() {
		return thread.unit();
	}

	/** Whether F is the advance in a turn: asked for, or usual on the machine. */
	public boolean feedPerRev() {
		return options.contains(Option.FEED_PER_REV) || !options.contains(Option.FEED_PER_MINUTE)
				&& profile.feedMode() == FeedMode.PER_REVOLUTION;
	}

	/** Whether the machine is a lathe: the part turns, tools stand on its centreline. */
	public boolean lathe() {
		return profile.isLathe();
	}
}
