package truelead.checker.machine;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.chunk.PlaceRun;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Plane;
import truelead.checker.program.Reason;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;

/** One thing the machine does, in the order it does it. All positions and lengths in mm, angles in radians. */
public sealed interface Step {

	/** The block that makes it. */
	BlockRef block();

	/** State in force during the step, words of the block included. */
	Modal modal();

	/**
	 * A straight motion.
	 *
	 * @param rapid      G0 as against G1
	 * @param resolution half of the finest last decimal among the axis words written in the block, mm; 0 for computed values
	 */
	record Move(BlockRef block, Modal modal, boolean rapid, Point from, Point to, double resolution) implements Step {
	}

	/**
	 * Many straight motions and flat arcs in a row under one state but for the feed. The first and the last go straight aside in the XY
	 * plane; where one between may feed along Z alone the next one goes aside, so that nothing comes back out of where it went in. Its arcs
	 * close, by the control's tolerance, and no circle of 0.95 turns or more is among them. At least eight single motions stand between
	 * them and the next other arc, cycle or event on either side.
	 *
	 * @param block   the last of their blocks
	 * @param modal   state in force at their end
	 * @param first   the first block that is no rapid; the last of their blocks where all are
	 * @param cutting the states that moves other than rapids and arcs are made under: the first one, those of the smallest and the largest
	 *                feed; empty where all are rapids
	 * @param rapid   whether the last of them is G0
	 * @param moves   how many they are, arcs included
	 * @param levels  whether any of them but a rapid changes Z
	 */
	record Contour(BlockRef block, Modal modal, BlockRef first, List<Modal> cutting, boolean rapid, Point from, Point to, int moves,
			boolean levels) implements Step {

		public Contour {
			cutting = List.copyOf(cutting);
		}
	}

	/**
	 * An arc or helix in the plane in force.
	 *
	 * @param centre     the axis position is that of {@code from}
	 * @param sweep      angle swept about the centre, positive counter-clockwise seen against the plane's axis, more than 2 pi for several
	 *                   turns
	 * @param startRadius distance of the start from the centre, mm
	 * @param endRadius  distance of the end from the centre, mm; differs from the start's for a taper or a fault
	 * @param rise       advance along the plane's axis, mm, signed; known for an increment from an unknown level too
	 * @param byRadius   written with R as against I, J, K
	 * @param resolution as in {@link Move}; I, J, K and R included
	 * @param inChords   written as straight moves from corner to corner of the arc, of which the block is the first
	 */
	record Arc(BlockRef block, Modal modal, Point from, Point to, Point centre, double sweep, double startRadius, double endRadius,
			double rise, boolean byRadius, double resolution, boolean inChords) implements Step {

		/** Radius at the start, mm. */
		public double radius() {
			return startRadius;
		}

		/** Advance along the plane's axis in a full turn, mm, signed; NaN without sweep. */
		public double lead() {
			return rise / Math.abs(sweep) * 2 * Math.PI;
		}

		/** The way that the tool goes in the plane at a point of the arc, radians from the plane's first axis towards its second. */
		public double heading(Point at) {
			Plane plane = modal.plane();
			double bearing = Math.atan2(at.along(plane.second()) - centre.along(plane.second()),
					at.along(plane.first()) - centre.along(plane.first()));
			return bearing + (sweep > 0 ? Math.PI / 2 : -Math.PI / 2);
		}
	}

	/**
	 * A canned cycle at one place.
	 *
	 * Under a face cycle of a turning profile the modal's plane is XY, whatever plane is in force: its axis is the hole's.
	 *
	 * @param cycle      what the cycle's words say; the same object for all places it is repeated at
	 * @param place      position in the plane, the axis at the R level
	 * @param initial    axis level before the cycle, mm
	 * @param rLevel     R level, mm, absolute in the work offset's frame
	 * @param bottom     level of the tool's tip at the bottom, mm
	 * @param positioned whether this block holds the cycle's G code (as against an axis block that runs it again)
	 * @param repeat     1 for the first or only one of K or L repeats
	 * @param resolution as in {@link Move}
	 */
	record Stroke(BlockRef block, Modal modal, Cycle cycle, Point place, double initial, double rLevel, double bottom, boolean positioned,
			int repeat, double resolution) implements Step {

		/** Levels nearer to each other are one, mm. */
		private static final double SAME = 1e-6;

		/** The decimals that its words are written with, as far as the resolution tells; -1 where no number of decimals makes it. */
		public int decimals() {
			return MachineState.decimals(resolution, modal.unit());
		}

		/**
		 * Way from R to the bottom along the axis, mm, signed. Where the levels are not known, as in a subprogram by itself, the depth that
		 * G91 counts from R; NaN where neither tells.
		 */
		public double way() {
			double way = bottom - rLevel;
			return Double.isNaN(way) ? incremental("XYZ".charAt(modal.plane().axis())) : way;
		}

		/**
		 * Whether its levels count from the level before: under G91, but for a cycle begun in G90 of which G91 names further places alone.
		 */
		public boolean relative() {
			double level = cycle.word('R').orElse(Setting.NONE).value() * modal.unit().mm();
			boolean begunBefore = Math.abs(rLevel - level) < SAME && Math.abs(rLevel - level - initial) > SAME;
			return !modal.absolute() && !begunBefore;
		}

		/** What a word of a level says under G91, mm; NaN where it is absolute, not known or scaled. */
		public double incremental(char address) {
			Setting word = cycle.word(address).orElse(Setting.NONE);
			return !relative() || modal.scaled() || !word.known() ? Double.NaN : word.value() * modal.unit().mm();
		}
	}

	/**
	 * A canned cycle at the places of many blocks in a row that say nothing but X and Y, or the same cycle with the same words in each:
	 * strokes that differ in place, block and decimals written alone, and in where their words stand. The plane is XY.
	 *
	 * @param first the stroke at the first place
	 * @param run   the places
	 * @param count how many of them, 1 or more
	 */
	record Row(Stroke first, PlaceRun run, int count) implements Step {

		/** The last of their blocks. */
		@Override
		public BlockRef block() {
			return block(count - 1);
		}

		@Override
		public Modal modal() {
			return first.modal();
		}

		/** The stroke at a place, from 0. */
		public Stroke stroke(int index) {
			Stroke stroke = new Stroke(block(index), modal(), first.cycle(), new Point(x(index), y(index), first.place().z()),
					first.initial(), first.rLevel(), first.bottom(), first.positioned(), first.repeat(), resolution(index));
			return run.says() && index > 0 ? new SaidAgain(first.block(), stroke.block()).stroke(stroke) : stroke;
		}

		/** X of a place, mm. */
		public double x(int index) {
			double x = run.x(index);
			return !Double.isNaN(x) ? x * modal().unit().mm() : first.place().x();
		}

		/** Y of a place, mm. */
		public double y(int index) {
			double y = run.y(index);
			return !Double.isNaN(y) ? y * modal().unit().mm() : first.place().y();
		}

		/** Decimals that the words of a place are written with. */
		public int decimals(int index) {
			return run.decimals(index);
		}

		/** Half of the last decimal among the words of a place, mm. */
		public double resolution(int index) {
			return MachineState.resolution(run.decimals(index), modal().unit());
		}

		/** The first of the strokes. */
		public Row head(int most) {
			return new Row(first, run, most);
		}

		private BlockRef block(int index) {
			BlockRef begin = first.block();
			return new BlockRef(begin.file(), begin.line() + index, begin.caller(), begin.skippable());
		}
	}

	/**
	 * Motions that come again at place after place, as a helix does at hole after hole; only for a {@link StepSink#takesCopies() sink} that
	 * takes them. The plane is XY. Two turns of the same motions come before it and one behind it, step by step.
	 *
	 * @param block  the last of their blocks
	 * @param modal  state in force at the end of a turn
	 * @param copies the motions
	 */
	record Again(BlockRef block, Modal modal, Copies copies) implements Step {
	}

	/**
	 * A motion synchronised with the spindle: G33, G33.1, G32, G331, G332 and what the profile knows as such. Feeding with a floating
	 * holder (G63) is a {@link Move} with the overrides locked.
	 *
	 * @param code      G code times ten: 330, 331 for G33.1, 320, 3310
	 * @param lead      K or F as written, in program units a revolution
	 * @param returns   whether the same block also reverses and comes back (G33.1)
	 * @param resolution as in {@link Move}
	 * @param turned    part of a turn by which the pass of a cycle called by name starts later; NaN where words of the block tell it
	 * @param computed  what the words of the block come to that are expressions, in the program's own unit, by their letters; NaN where
	 *                  that is not known
	 */
	record Synchronised(BlockRef block, Modal modal, int code, Point from, Point to, Setting lead, boolean returns, double resolution,
			double turned, Map<Character, Double> computed) implements Step {

		/** One of which words of the block tell where it starts; its resolution in mm. */
		public Synchronised(BlockRef block, Modal modal, int code, Point from, Point to, Setting lead, boolean returns, double resolution) {
			this(block, modal, code, from, to, lead, returns, resolution, Double.NaN, Map.of());
		}

		/** The same motion with what its computed words come to, in the program's own unit. */
		public Synchronised with(Map<Character, Double> values) {
			return new Synchronised(block, modal, code, from, to, lead, returns, resolution, turned, values);
		}

		/** G331 and G332, times ten. */
		private static final int TAP_IN = 3310;
		private static final int TAP_OUT = 3320;

		/** Whether it takes a tap into its hole, whichever way it goes: G331, and G33.1 which comes back too. */
		public boolean goesIn() {
			return returns || code == TAP_IN;
		}

		/** Whether it turns the spindle of a tap by itself, G331 and G332, or comes back by itself, G33.1: no single point does. */
		public boolean drivesTap() {
			return returns || code == TAP_IN || code == TAP_OUT;
		}
	}

	/**
	 * Kinds of events without motion; {@code SUB_END} is the end of a subprogram that nothing here calls and that has no tool of its own:
	 * its caller goes on.
	 */
	enum EventKind {
		TOOL_CHANGE, TOOL_SELECTED, SPINDLE, STOP, OPTIONAL_STOP, DWELL, CYCLE_CANCELLED, RIGID_ON, RIGID_OFF, COOLANT,
				WORK_OFFSET, SUB_CALL,
		SUB_RETURN, SUB_END, PROGRAM_END
	}

	/** Something other than motion; the word that says it is first in {@code words}. */
	record Event(BlockRef block, Modal modal, EventKind kind, List<WordRef> words, Setting value) implements Step {

		/** Whether the program, or the subprogram that nothing here calls, ends with it. */
		public boolean ends() {
			return kind == EventKind.PROGRAM_END || kind == EventKind.SUB_END;
		}
	}

	/**
	 * Something could not be followed: a value that is not known, a branch, a call. The positions it may have changed are unknown from here
	 * on.
	 *
	 * @param why    one sentence for the programmer: what is not known, and what to do
	 * @param stops  whether nothing behind it is executed
	 * @param word   the word at fault, where there is one
	 * @param weight what may depend on it
	 */
	record NotFollowed(BlockRef block, Modal modal, Reason why, boolean stops, Optional<WordRef> word, Weight weight) implements Step {

		/** What may depend on something that is not followed. */
		public enum Weight {
			/** Nothing that makes a thread: worth information, once a program. */
			MINOR,
			/** The same, said by its name once a tool: a statement that may call a program that is not here, and which may make holes. */
			MAY_CALL,
			/** A thread only where a tool for threads makes none that is known: a code with axis words that the profile does not know. */
			UNKNOWN_CODE,
			/** The same, and the place is lost: a program of those that makers of machines and probes keep to themselves. */
			BY_TOOL,
			/** A thread only where the program makes any: the machine stops here too. */
			OWN_ALARM,
			/**
			 * Threads of a program that is not here, or holes for them, unless the tool in the spindle is known to make neither; and the
			 * place is lost.
			 */
			CALL,
			/**
			 * The same, of a program to which nothing is said, under no cycle: what is called so by tools for threads that make some, as a
			 * look for a broken tool is, makes neither.
			 */
			PLAIN_CALL,
			/** A thread, for all that is known. */
			THREAD
		}
	}
}
