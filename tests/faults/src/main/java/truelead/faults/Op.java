package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/** One operation: a tool is changed in, set turning and over the first place, works, and goes home. */
abstract class Op {
	final int id;
	final Tool tool;
	final List<Feature> features = new ArrayList<>();
	final List<String> notes = new ArrayList<>();
	double speed;
	int spindle = 3;
	boolean coolant = true;
	boolean stop;

	Op(int id, Tool tool, double speed) {
		this.id = id;
		this.tool = tool;
		this.speed = speed;
	}

	String mark(String role) {
		return id + ":" + role;
	}

	/** Where the tool starts, millimetres. */
	abstract Place start();

	abstract void body(Scene scene);

	/** What the comment of the operation says; empty: nothing. */
	String title() {
		return tool.name;
	}

	int offset() {
		return features.isEmpty() ? 54 : features.get(0).offsets.get(0);
	}

	/** Height of the approach above the surface, millimetres. */
	double clearance(Scene scene) {
		return scene.job.inch ? 25.4 : 25;
	}

	void write(Scene scene) {
		Job.Talk talk = scene.job.talk;
		if (!title().isEmpty() && (talk == Job.Talk.BEFORE || talk == Job.Talk.BOTH)) {
			scene.say(title());
			scene.tape.main.get(scene.tape.main.size() - 1).mark(mark("title"));
		}
		Block change = scene.add(Word.whole('T', tool.number), Word.m(6)).mark(mark("change"));
		if (talk == Job.Talk.BEHIND) {
			change.say(title());
		}
		if (scene.dice.chance(0.15)) {
			change.drop('M');
			scene.add(Word.m(6)).mark(mark("change"));
		}
		for (String note : notes) {
			Block block = Block.comment(note).mark(mark("note"));
			scene.tape.add(block);
		}
		approach(scene);
		int next = scene.job.ops.indexOf(this) + 1;
		if (scene.job.preselected && next < scene.job.ops.size()) {
			scene.add(Word.whole('T', scene.job.ops.get(next).tool.number));
		}
		body(scene);
		retract(scene);
	}

	/** Position, spindle, length offset, coolant. */
	private void approach(Scene scene) {
		Place at = start();
		Pen pen = scene.pen;
		pen.incremental = false;
		Block spin = new Block(Word.whole('S', speed), Word.m(spindle)).mark(mark("start"));
		if (spindle == 0 || speed <= 0) {
			spin.words.clear();
		}
		Block place = new Block(Word.g(0), Word.g(90), Word.g(offset()), pen.x(at.x()), pen.y(at.y())).mark(mark("place"));
		Block length = new Block(Word.g(43), pen.z(top() + clearance(scene)), Word.whole('H', tool.h)).mark(mark("length"));
		Block cool = new Block(Word.m(8)).mark(mark("coolant"));
		switch (scene.dice.whole(0, 2)) {
			case 0 -> {
				place.words.addAll(spin.words);
				place.mark(mark("start"));
				scene.tape.add(place);
				if (coolant) {
					length.with(Word.m(8)).mark(mark("coolant"));
				}
				scene.tape.add(length);
			}
			case 1 -> {
				scene.tape.add(spin);
				scene.tape.add(place);
				scene.tape.add(length);
				addCoolant(scene, cool);
			}
			default -> {
				scene.tape.add(place);
				scene.tape.add(spin);
				scene.tape.add(length);
				addCoolant(scene, cool);
			}
		}
	}

	private void addCoolant(Scene scene, Block cool) {
		if (coolant) {
			scene.tape.add(cool);
		}
	}

	private void retract(Scene scene) {
		Pen pen = scene.pen;
		pen.incremental = false;
		switch (scene.dice.whole(0, 3)) {
			case 0 -> {
				scene.add(Word.g(0), Word.g(90), pen.z(top() + 100), Word.m(9)).mark(mark("home"));
				scene.add(Word.m(5)).mark(mark("off"));
			}
			case 1 -> {
				scene.add(Word.m(9)).mark(mark("dry"));
				scene.add(Word.g(91), Word.g(28), Word.of('Z', 0, 3), Word.m(5)).mark(mark("home"), mark("off"));
				scene.add(Word.g(90)).mark(mark("absolute"));
			}
			case 2 -> {
				scene.add(Word.m(5)).mark(mark("off"));
				scene.add(Word.g(53), Word.g(0), Word.of('Z', 0, 3)).mark(mark("home"));
				scene.add(Word.m(9)).mark(mark("dry"));
			}
			default -> {
				scene.add(Word.g(0), Word.g(90), pen.z(top() + 50)).mark(mark("home"));
				scene.add(Word.m(9)).mark(mark("dry"));
				scene.add(Word.m(5)).mark(mark("off"));
			}
		}
		if (stop) {
			Block block = scene.add(Word.m(1));
			block.optional = true;
		}
	}

	private double top() {
		return features.stream().mapToDouble(f -> f.surface).max().orElse(0);
	}
}
