package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/** What was not switched on or not switched off: cycles, feed modes, length offsets, coolant, planes. */
final class ModeFaults {
	private ModeFaults() {
	}

	static List<Fault> all() {
		List<Fault> all = new ArrayList<>();
		all.add(Fault.of("cycle left on over the tool change", "cycle-left-on",
				Aim.tap(t -> Aim.cycle(t) && !Aim.macro(t) && !t.relative && !t.perRev, ModeFaults::leftOn)));
		all.add(Fault.of("one move too many with the cycle on", "cycle-left-on hole-missing",
				Aim.tap(t -> Aim.cycle(t) && !Aim.macro(t) && !t.relative && t.feature.way != Feature.Way.REPEAT
						&& t.feature.offsets.size() == 1, (job, tap, dice) -> {
			job.edits.add(tape -> tape.first(tap.mark("cancel")).ifPresent(cancel -> {
				tape.before(cancel, new Block(Word.of('X', job.inch ? -3 : -80, 3), Word.of('Y', job.inch ? -2.5 : -60, 3))
						.mark(tap.mark("extra")));
			}));
			return Aim.marks(tap, "extra", "cycle", "cancel");
		})).beside("count-differs"));
		all.add(Fault.of("feed per revolution left on", "per-rev-left-on", Aim.tap(t -> t.perRev, (job, tap, dice) -> {
			int next = job.ops.indexOf(tap) + 1;
			if (next >= job.ops.size() || job.ops.get(next) instanceof Tapping) {
				return List.of();
			}
			tap.modeAfter = false;
			return Aim.join(Aim.marks(job.ops.get(next), "cycle", "feed", "in", "entry", "on", "hole-0", "holes"),
					Aim.marks(tap, "mode", "cycle", "minutes"));
		})).beside("feed-in-wrong-mode"));
		all.add(Fault.of("length offset forgotten", "length-offset-missing", Aim.at(Op.class, o -> threads(o), (job, op, dice) -> {
			Aim.edit(job, op, "length", (tape, block) -> {
				block.drop('G', 43);
				block.drop('H');
				block.words.add(0, Word.g(0));
			});
			return length(op);
		})));
		all.add(Fault.of("length offset without its code", "length-offset-missing", Aim.at(Op.class, o -> threads(o), (job, op, dice) -> {
			// the first tool would have none at all; two others show that each tool has its own
			if (job.ops.indexOf(op) < 1 || job.ops.size() < 3) {
				return List.of();
			}
			Aim.edit(job, op, "length", (tape, block) -> {
				block.drop('G', 43);
				block.words.add(0, Word.g(0));
			});
			return length(op);
		})));
		all.add(Fault.of("length offset of another tool", "length-offset-missing", Aim.at(Op.class, o -> threads(o), (job, op, dice) -> {
			int other = job.drilling(op.features.get(0)).tool.number;
			op.tool.h = other;
			return length(op);
		})));
		all.add(Fault.of("countersink with another tool's length offset", "length-offset-missing", Aim.at(HoleMaking.class,
				h -> h.tool.kind == Tool.Kind.CHAMFER, (job, hole, dice) -> {
			hole.tool.h = job.drilling(hole.features.get(0)).tool.number;
			return length(hole);
		})));
		all.add(Fault.of("tap runs dry", "coolant-off", Aim.tap(t -> true, (job, tap, dice) -> {
			tap.coolant = false;
			return Aim.join(Aim.numbers(tap), Aim.marks(tap, "change", "length"));
		})));
		all.add(Fault.of("another plane left on", "plane-wrong", Aim.tap(t -> Aim.cycle(t) && !Aim.macro(t), (job, tap, dice) -> {
			job.edits.add(tape -> {
				List<Block> ends = tape.marked(tap.mark("cancel"));
				tape.after(ends.get(ends.size() - 1), new Block(Word.g(17)));
			});
			Aim.edit(job, tap, "change", (tape, block) -> {
				if (block.has('M')) {
					tape.after(block, new Block(Word.g(dice.pick(18, 19))).mark(tap.mark("plane-word")));
				}
			});
			return Aim.join(Aim.numbers(tap), Aim.marks(tap, "plane-word", "hole-0"));
		})));
		return all;
	}

	private static boolean threads(Op op) {
		return op instanceof Tapping || op instanceof ThreadMilling;
	}

	private static List<String> length(Op op) {
		return Aim.join(Aim.numbers(op), Aim.marks(op, "length", "change", "hole-0"));
	}

	/** G80 is forgotten, the tool goes home by G28, and the cycle is still on at the tool change or the end. */
	private static List<String> leftOn(Job job, Tapping tap, Dice dice) {
		// a G0 of the program's end would end the cycle too
		boolean last = job.ops.indexOf(tap) == job.ops.size() - 1;
		if (last || tap.feature.offsets.size() > 1) {
			return List.of();
		}
		job.edits.add(tape -> {
			tape.marked(tap.mark("cancel")).forEach(tape::remove);
			tape.marked(tap.mark("home")).forEach(block -> {
				block.words.clear();
				block.words.addAll(List.of(Word.g(91), Word.g(28), Word.of('Z', 0, 3)));
				tape.after(block, new Block(Word.g(90)));
			});
		});
		List<String> marks = Aim.marks(tap, "cycle", "hole-0", "holes", "home", "off", "call");
		int next = job.ops.indexOf(tap) + 1;
		marks.add(job.ops.get(next).mark("change"));
		return marks;
	}
}
