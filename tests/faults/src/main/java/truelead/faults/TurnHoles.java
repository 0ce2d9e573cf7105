package truelead.faults;

import java.util.List;

/** A cycle of a live tool over the holes of a face or of the outside, by the angles of the C axis. */
final class TurnHoles {
	private TurnHoles() {
	}

	/** {@code depth}: millimetres below the surface. */
	static void write(Scene scene, TurnOp op, Turned turned, double code, double depth, List<Double> angles, List<Word> extras) {
		Pen pen = scene.pen;
		boolean side = turned.at == Turned.At.SIDE;
		Block first = new Block(Word.g(code));
		if (scene.dice.chance(0.7)) {
			first.with(side ? pen.z(turned.along) : pen.x(turned.across));
		}
		if (scene.dice.chance(0.7)) {
			first.with(Word.of('C', angles.get(0), 3));
		}
		first.with(side ? pen.x(turned.across - 2 * depth) : Word.of('Z', pen.unit(-depth), pen.decimals));
		if (op.lift > 0) {
			first.with(pen.length('R', -op.lift));
		}
		first.words.addAll(extras);
		scene.tape.add(first.mark(op.mark("cycle"), op.mark("hole-0")));
		for (int i = 1; i < angles.size(); i++) {
			scene.add(Word.of('C', angles.get(i), 3)).mark(op.mark("holes"), op.mark("hole-" + i));
		}
		scene.add(Word.g(80)).mark(op.mark("cancel"));
		if (side) {
			pen.stands(op.across(), 0, turned.along);
		}
	}
}
