package truelead.faults;

/** What a lathe program begins with: unit, feed mode, the turret at home, the highest speed. */
final class TurnHead {
	private TurnHead() {
	}

	static void write(Scene scene) {
		Job job = scene.job;
		Dice dice = scene.dice;
		Block safe = new Block();
		if (job.unitStated) {
			safe.with(Word.g(job.inch ? 20 : 21));
		}
		if (dice.chance(0.4)) {
			safe.with(Word.g(18));
		}
		safe.with(Word.g(40));
		if (job.hand.orElseThrow().modeAtHead() || !job.perRev) {
			safe.with(Word.g(job.perRev ? 99 : 98));
		}
		if (dice.chance(0.3)) {
			safe.with(Word.g(80));
		}
		scene.tape.main.add(safe.mark("safe"));
		if (dice.chance(0.5)) {
			scene.add(Word.g(28), Word.of('U', 0, 3), Word.of('W', 0, 3));
		}
		if (job.hand.orElseThrow().limitAtHead()) {
			scene.add(Word.g(50), Word.whole('S', dice.pick(2000, 2500, 3000)));
		}
	}
}
