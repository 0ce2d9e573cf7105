package truelead.checker.stroke;

import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.machine.Modal;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Setting;
import truelead.checker.tool.ToolUse;

/**
 * One tap going into one hole and out again. Levels in mm along the hole's axis.
 *
 * @param order     number of the step in the order of execution
 * @param step      the step that goes in
 * @param back      the step that comes out, where it is one of its own (G1 or G33 in and out)
 * @param tool      the tool in the spindle
 * @param hole      what else was done at the place, {@link Hole#untouched} where nothing; compare {@link Cut#order()} for before and after
 * @param start     level the feed or the synchronised move starts from, the R level of a cycle; NaN where not known
 * @param bottom    level of the tap's end at the bottom; NaN where not known
 * @param initial   level before the cycle; {@code start} where there is none
 * @param feed      F in force going in: per {@link Modal#feedMode()} of {@link #modal()}; NONE for a synchronised move
 * @param lead      K or F of a synchronised move, program units a revolution; NONE for a cycle
 * @param speed     S in force going in
 * @param turning   the spindle's direction going in
 * @param feedOut   F coming out; the same as going in for a cycle
 * @param speedOut  S coming out
 * @param turningOut the spindle's direction coming out; for a cycle the reverse of going in
 * @param staleFeed whether F was last written before this tool's change
 * @param positioned whether the block holds the cycle's G code, as against an axis block that runs it again; true for moves
 * @param repeat    1 for the first or only one of K or L repeats
 * @param resolution half of the finest last decimal among the axis words of the block that goes in, mm; 0 for computed values
 */
public record TapStroke(int order, Step step, Optional<Step> back, ToolUse tool, Hole hole, double start, double bottom, double initial,
		Setting feed, Setting lead, Setting speed, SpindleTurn turning, Setting feedOut, Setting speedOut, SpindleTurn turningOut,
		boolean staleFeed, boolean positioned, int repeat, double resolution) {

	/** The block that goes in. */
	public BlockRef block() {
		return step.block();
	}

	/** The state in force going in. */
	public Modal modal() {
		return step.modal();
	}

	/** Where the tap goes in. */
	public Place place() {
		return hole.place();
	}

	/** Way of the tap from where it starts to the bottom, mm; NaN where not known. */
	public double travel() {
		double way = Math.abs(start - bottom);
		return Double.isNaN(way) && step instanceof Step.Stroke stroke ? Math.abs(stroke.way()) : way;
	}

	/** What the tap is led along its axis in a turn, mm: K or F of a synchronised move, F a turn, or F / S; NaN where it is not known. */
	public double advance() {
		return advance(step.modal(), lead, feed, speed);
	}

	/** The same of a stroke with this state, lead, feed and speed. */
	static double advance(Modal modal, Setting lead, Setting feed, Setting speed) {
		if (lead.isSet()) {
			return lead.value() * modal.unit().mm();
		}
		double mm = feed.value() * modal.unit().mm();
		return switch (modal.feedMode()) {
			case PER_REVOLUTION -> mm;
			case PER_MINUTE -> speed.value() > 0 ? mm / speed.value() : Double.NaN;
			case INVERSE_TIME -> Double.NaN;
		};
	}

	/** -1 where the tap goes towards smaller numbers along the axis, the usual way, +1 otherwise. */
	public int direction() {
		return bottom > start ? 1 : -1;
	}
}
