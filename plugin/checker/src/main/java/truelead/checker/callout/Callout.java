package truelead.checker.callout;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.ThreadSpec;

/**
 * A thread that a comment asks for.
 *
 * @param spec       the thread, with class and hand where they are written
 * @param start      first character of the callout in the comment's text
 * @param end        the character after its last
 * @param assumed    what was not written and taken for granted, one sentence each: {@code coarse pitch 1.25 assumed}
 * @param depth      the depth called out, if any
 * @param ofTap      the depth is said where a tap is named (TAP M8 15 DEEP), and not of the full thread, nor as a drawing says it: it may
 *                   be how deep the tap is programmed (common practice, no source)
 * @param drilled    how its hole is drilled is said behind its depth, 12 DEEP DRILLED 4.2 X 17, as who programs notes it: the depth may be
 *                   that of the tap too (common practice, no source)
 * @param holeEnd    through or blind, where the comment says so
 * @param wall       how thick the wall is that the hole goes through, where the comment says so
 * @param count      the number of holes, where the comment says so
 * @param wireInsert the thread is tapped oversize for a wire insert, so that sizes of the plain thread do not hold
 * @param certain    false for a bare size that could as well be something else ({@code M8}, an M code; {@code 10-24}, a date): it counts
 *                   only where the operation cuts a thread of that pitch
 */
public record Callout(ThreadSpec spec, int start, int end, List<String> assumed, Optional<Dimension> depth, boolean ofTap,
		boolean drilled, Optional<HoleEnd> holeEnd, Optional<Dimension> wall, OptionalInt count, boolean wireInsert, boolean certain) {

	/** No hole is tapped deeper, in diameters. */
	private static final double DEEPEST = 10;

	/**
	 * A length of the callout, mm. A bare number is in the program's unit, unless it is less than a pitch or more than 10 diameters there
	 * and neither in the unit of the thread: .50 DEEP behind #10-32 in a metric program is half an inch (common practice, no source).
	 */
	public double mm(Dimension length, LengthUnit unitOfProgram) {
		double there = length.mm(unitOfProgram);
		double own = length.mm(spec.unit());
		return !sound(there) && sound(own) ? own : there;
	}

	/**
	 * The size of a tool for the thread, mm. A bare number is in the program's unit, unless the tool is wider than twice the thread there
	 * and not wider than it in the unit of the thread: THREAD MILL 2.4 M3X0.5 in an inch program (common practice, no source).
	 */
	public double toolMm(Dimension size, LengthUnit unitOfProgram) {
		double there = size.toolMm(unitOfProgram);
		double own = size.toolMm(spec.unit());
		return there > 2 * spec.diameter() && own < spec.diameter() ? own : there;
	}

	/**
	 * The depth called out, mm; empty where none is, or where it is a bare whole number that no hole is tapped to: 1/4-20 X 12 in an inch
	 * program.
	 */
	public Optional<Double> depthMm(LengthUnit unitOfProgram) {
		return depth.filter(said -> said.unit().isPresent() || said.value() != Math.rint(said.value())
				|| mm(said, unitOfProgram) <= DEEPEST * spec.diameter()).map(said -> mm(said, unitOfProgram));
	}

	/** Whether the word behind it in its comment says that its depth is a length: {@code M14X1.5 X 20 LONG}. */
	public boolean longIn(String comment) {
		int from = Math.min(end, comment.length());
		while (from < comment.length() && Character.isWhitespace(comment.charAt(from))) {
			from++;
		}
		int to = from;
		while (to < comment.length() && Character.isLetter(comment.charAt(to))) {
			to++;
		}
		return depth.isPresent() && DepthWords.length(TradeWords.fold(comment.substring(from, to)));
	}

	/** Whether its pitch was not written but taken from the coarse series. */
	public boolean coarseAssumed() {
		return spec.system().metric() && !assumed.isEmpty();
	}

	/** The same callout with a pitch, mm, that is said elsewhere. */
	public Callout withPitch(double pitch) {
		ThreadSpec pitched = new ThreadSpec(spec.system(), spec.series(), spec.size(), spec.diameter(), pitch, 0, spec.starts(),
				spec.hand(), spec.threadClass());
		return new Callout(pitched, start, end, List.of(), depth, ofTap, drilled, holeEnd, wall, count, wireInsert, certain);
	}

	private boolean sound(double mm) {
		return mm >= spec.pitch() && mm <= DEEPEST * spec.diameter();
	}
}
