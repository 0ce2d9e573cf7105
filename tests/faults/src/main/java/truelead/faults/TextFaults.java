package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/** Slips of the keyboard, and values and programs that are not there. */
final class TextFaults {
	private TextFaults() {
	}

	static List<Fault> all() {
		List<Fault> all = new ArrayList<>();
		all.add(typed("the letter O for a nought", "1O."));
		all.add(typed("two decimal points", "1..5"));
		all.add(typed("a bracket never closed", "[1+2"));
		all.add(typed("a word without its number", " "));
		all.add(Fault.of("depth from a variable without a value", "not-followed", Aim.tap(t -> Aim.cycle(t) && !Aim.macro(t),
				(job, tap, dice) -> {
			Aim.edit(job, tap, "cycle", (tape, block) -> block.swap('Z', Word.said('Z', job.rs274 ? "#<tap_depth>" : "#514")));
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("feed from a variable without a value", "not-followed", Aim.tap(t -> Aim.cycle(t) && !Aim.macro(t),
				(job, tap, dice) -> {
			Aim.edit(job, tap, "cycle", (tape, block) -> block.swap('F', Word.said('F', "#531")));
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("subprogram not there", "not-followed", Aim.at(Op.class, o -> o instanceof Tapping || o instanceof ThreadMilling,
				(job, op, dice) -> {
			if (job.rs274) {
				return List.of();
			}
			job.edits.add(tape -> tape.first(op.mark("change"))
					.ifPresent(b -> tape.before(b, new Block(Word.m(98), Word.whole('P', 7771)).keep().mark(op.mark("lost")))));
			return Aim.marks(op, "lost");
		})));
		all.add(Fault.of("no unit word", "unit-unstated", (job, dice) -> {
			if (job.inch || !job.unitStated) {
				return List.of();
			}
			job.unitStated = false;
			return List.of("safe", "anywhere");
		}));
		all.add(Fault.of("a note with a slip in it", "note-not-understood",
				Aim.at(Op.class, o -> o instanceof Tapping || o instanceof ThreadMilling, (job, op, dice) -> {
			String slip = dice.pick("THREAD: " + op.features.get(0).size.name() + ", DEPHT 12", "HOLE: BOTTUM 18", "STOCK: STEEL, 28 XRC",
					"SURFACE: 5 UP OR SO", "TOOL: T" + op.tool.number + ", LEED 2.5", "ALLOW: feed-off-pitch");
			op.notes.add(slip);
			return Aim.marks(op, "note");
		})));
		return all;
	}

	/** A slip in the X word of a block that places a threaded hole, or in its Z word. */
	private static Fault typed(String name, String text) {
		return Fault.of(name, "not-understood", Aim.at(Op.class, o -> o instanceof Tapping || o instanceof ThreadMilling,
				(job, op, dice) -> {
			String mark = op.mark("slip");
			job.edits.add(tape -> {
				List<Block> blocks = new ArrayList<>(tape.marked(op.mark("cycle")));
				blocks.addAll(tape.marked(op.mark("place")));
				Block block = dice.pick(blocks);
				char letter = block.has('Z') ? 'Z' : 'X';
				block.swap(letter, Word.said(letter, text));
				block.marks.add(mark);
			});
			return List.of(mark);
		})).beside("not-followed", "hole-missing", "hole-skipped", "hole-off-position", "count-differs", "length-offset-missing",
			"entry-off-pitch", "cutter-hits-bottom", "helix-uneven");
	}
}
