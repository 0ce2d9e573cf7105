package truelead.checker.rule.tapping;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.rule.BlockText;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.stroke.Strokes;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * The tapping cycle is still modal at a tool change, a spindle stop or the program's end, or an axis block has run it again where nothing
 * was drilled.
 */
public final class CycleLeftOn extends TappingRule {

	public CycleLeftOn() {
		super("cycle-left-on");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.LEFT_ON);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.OTHER_AXIS, Slip.NO_SPEED);
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		String code = tapping.cycle().map(cycle -> Figures.written(cycle.gWord())).orElse("the cycle");
		String end = named(tapping) ? "MCALL" : "G80";
		TapStroke retract = retract(tapping);
		if (retract != null) {
			Figures figures = new Figures(retract.modal().unit());
			String level = "XYZ".charAt(retract.place().plane().axis()) + Figures.number(retract.bottom() / figures.unit().mm(), 4);
			String message = code + " is still on and takes " + level
					+ ", a way out, for a depth above R: the tap goes in again at the last hole or the control stops; " + end
					+ " before it";
			Draft draft = Draft.of(this, Severity.ERROR, Location.of(retract.block()), message).programmed("depth", level, retract.block());
			found.accept(draft.fix(cancel(retract.block(), end)));
			return;
		}
		if (!tapping.strays().isEmpty()) {
			TapStroke stray = tapping.strays().get(0);
			String message = code + " is still on and this block runs it again with " + stray.tool().name() + ", "
					+ new Figures(stray.modal().unit()).length(stray.travel()) + " deep"
					+ (tapping.strays().size() > 1 ? ", " + (tapping.strays().size() - 1) + " more behind it" : "") + "; " + end
					+ " behind the last hole";
			found.accept(with(tapping, stray.block(), first(tapping, stray.block()), message, Severity.ERROR));
			return;
		}
		TapStroke last = lastUndrilled(tapping, work);
		if (last != null) {
			String message = code + " is still on and this block runs it again at a place where nothing was drilled, "
					+ new Figures(last.modal().unit()).length(last.travel()) + " deep into the stock; " + end + " behind the last hole";
			Draft draft = Draft.of(this, Severity.ERROR, Location.of(last.block()), message)
					.programmed("depth", new Figures(last.modal().unit()).length(last.travel()), last.block());
			draft.fix(cancel(last.block(), end));
			found.accept(draft);
			return;
		}
		TapStroke again = retractsByName(tapping);
		if (again != null) {
			found.accept(with(tapping, again.block(), again.block(),
					code + " is still on and runs again behind this motion, which stays at the last hole; " + end + " before it",
					Severity.ERROR));
			return;
		}
		if (!tapping.leftOn().isEmpty() && tapping.method().taps()) {
			Tapping.LeftOn met = tapping.leftOn().get(0);
			String what = switch (met.met()) {
				case TOOL_CHANGE -> "the tool change";
				case SPINDLE_STOP -> "the spindle stop";
				case PROGRAM_END -> "the end of the program";
			};
			found.accept(with(tapping, met.block(), met.block(), code + " is still on at " + what + ": the next axis word would tap again; "
					+ end + " before it", Severity.WARNING));
		}
	}

	/** A block behind a hole that only draws back along the axis, and to above R; null where there is none. */
	private static TapStroke retract(Tapping tapping) {
		TapStroke back = tapping.strokes().typical().stream().filter(s -> !s.positioned() && s.bottom() > s.start()).findFirst()
				.orElse(null);
		if (back == null || !(back.step() instanceof Step.Stroke)) {
			return null;
		}
		boolean down = tapping.strokes().typical().stream().anyMatch(s -> s.positioned() && s.bottom() < s.start());
		boolean again = tapping.strokes().stream().anyMatch(s -> s.order() < back.order() && s.place().equals(back.place()));
		return down && again ? back : null;
	}

	/**
	 * The stroke behind a motion that leaves the last hole along its axis, under a cycle that is called by name behind each motion; null
	 * where there is none.
	 */
	private static TapStroke retractsByName(Tapping tapping) {
		Strokes strokes = tapping.strokes();
		if (!named(tapping) || strokes.size() < 2 || tapping.leftOn().isEmpty() || !tapping.method().taps()) {
			return null;
		}
		TapStroke last = strokes.get(strokes.size() - 1);
		boolean stays = last.place().known() && last.place().equals(strokes.get(strokes.size() - 2).place());
		return stays && last.block().file().text().block(last.block().line()).words().stream().noneMatch(word -> word.address() == 'X'
				|| word.address() == 'Y') ? last : null;
	}

	/**
	 * The last stroke, where an axis block alone made it, nothing was drilled there and the others were drilled, and nothing ended the
	 * cycle behind it.
	 */
	private static TapStroke lastUndrilled(Tapping tapping, Work work) {
		Strokes strokes = tapping.strokes();
		if (strokes.size() < 2 || tapping.leftOn().isEmpty() || work.cutsAtUnknownPlaces()) {
			return null;
		}
		TapStroke last = strokes.get(strokes.size() - 1);
		boolean alone = !last.positioned() && last.place().known() && !last.hole().made();
		return alone && strokes.where(s -> !s.hole().madeBefore(s.order())).size() == 1 ? last : null;
	}

	/** The first block met with the cycle on: G80 belongs before it. */
	private static BlockRef first(Tapping tapping, BlockRef otherwise) {
		return tapping.leftOn().isEmpty() ? otherwise : tapping.leftOn().get(0).block();
	}

	private Draft with(Tapping tapping, BlockRef block, BlockRef cancel, String message, Severity severity) {
		Draft draft = Draft.of(this, severity, Location.of(block), message);
		if (!tapping.strokes().isEmpty()) {
			draft.related(tapping.strokes().get(tapping.strokes().size() - 1).block(), "the last hole");
		}
		draft.fix(cancel(cancel, named(tapping) ? "MCALL" : "G80"));
		return draft;
	}

	/** Whether the cycle is one that is called by name behind each motion. */
	private static boolean named(Tapping tapping) {
		return tapping.cycle().filter(cycle -> cycle.gWord().address() != 'G').isPresent();
	}

	private static Fix cancel(BlockRef block, String end) {
		return new Fix("Put " + end + " before line " + (block.line() + 1), true, end + " ends the cycle and moves nothing",
				List.of(BlockText.before(block, end)));
	}
}
