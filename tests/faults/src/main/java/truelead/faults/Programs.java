package truelead.faults;

import java.util.LinkedHashSet;
import java.util.Set;

/** Writes a job down as a program: head, operations, end, and the edits that a fault asked for. */
final class Programs {
	private Programs() {
	}

	static Tape write(Job job) {
		Dice dice = new Dice(job.seed ^ 0x5DEECE66DL);
		Scene scene = new Scene(job, dice);
		head(scene);
		for (Op op : job.ops) {
			op.write(scene);
		}
		tail(scene);
		job.edits.forEach(edit -> edit.accept(scene.tape));
		if (job.rs274) {
			// o-words must be read before they are called
			scene.tape.head.addAll(scene.tape.subs);
			scene.tape.subs.clear();
		}
		return scene.tape;
	}

	static Print print(Job job) {
		Tape tape = write(job);
		return new Dress(job.seed * 31 + 7, job.rs274 && job.seed % 2 == 0, !tape.numbered()).print(tape);
	}

	private static void head(Scene scene) {
		Job job = scene.job;
		Dice dice = scene.dice;
		boolean percent = !job.rs274 || dice.chance(0.3);
		if (percent) {
			scene.tape.head.add(Block.line("%"));
		}
		if (!job.rs274) {
			scene.tape.head.add(Block.line("O" + dice.whole(10, 8999))
					.say(dice.pick("VALVE PLATE", "COVER", "BEARING BLOCK", "OP 20", "")));
		} else {
			scene.tape.head.add(Block.comment(dice.pick("manifold side 2", "gear cover", "adapter plate op1")));
		}
		if (job.talk == Job.Talk.LIST || job.talk == Job.Talk.BOTH) {
			Set<String> lines = new LinkedHashSet<>();
			for (Op op : job.ops) {
				String pocket = job.lathe() && dice.chance(0.7) ? job.hand.orElseThrow().word(op.tool.number, true).text()
						: String.valueOf(op.tool.number);
				if (!op.title().isEmpty()) {
					lines.add("T" + pocket + dice.pick(" ", " - ", " = ") + op.tool.name);
				}
			}
			lines.forEach(line -> scene.tape.head.add(Block.comment(line).mark("list")));
		}
		if (!job.stock.isEmpty()) {
			scene.tape.head.add(Block.comment("STOCK: " + job.stock).mark("stock"));
		}
		job.headNotes.forEach(note -> scene.tape.head.add(Block.comment(note).mark("head-note")));
		if (job.lathe()) {
			TurnHead.write(scene);
			return;
		}
		Block safe = new Block();
		if (job.unitStated) {
			safe.with(Word.g(job.rs274 || dice.chance(0.8) ? job.inch ? 20 : 21 : job.inch ? 70 : 71));
		}
		safe.with(Word.g(17)).with(Word.g(40)).with(Word.g(job.perRev ? 95 : 94)).with(Word.g(80)).with(Word.g(90));
		safe.marks.add("safe");
		if (dice.chance(0.4)) {
			safe.with(Word.g(49));
		}
		scene.tape.main.add(safe);
		if (dice.chance(0.4)) {
			scene.add(Word.g(91), Word.g(28), Word.of('Z', 0, 3));
			scene.add(Word.g(90));
		}
	}

	private static void tail(Scene scene) {
		Dice dice = scene.dice;
		if (!scene.job.lathe() && dice.chance(0.3)) {
			scene.add(Word.g(53), Word.g(0), Word.of('X', 0, 3), Word.of('Y', 0, 3));
		}
		scene.add(Word.m(scene.job.rs274 && dice.chance(0.5) ? 2 : 30)).mark("end");
		if (!scene.job.rs274 || dice.chance(0.3)) {
			scene.tape.subs.add(Block.line("%"));
		}
	}
}
