package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/** Spotting or drilling on the centre line, or by a live drill on the face or the outside. */
final class TurnDrill extends TurnOp {
	enum Style { FEED, PECKS, CYCLE, FACE_PECK }

	final Turned turned;
	Style style = Style.FEED;
	/** The cycle that a fault puts here; 0 for the right one. */
	double wrongCode;
	double depth;
	double perTurn;
	List<Double> angles;
	boolean spots;

	TurnDrill(int id, Tool tool, double speed, Turned turned) {
		super(id, tool, speed);
		this.turned = turned;
		this.angles = turned.angles;
		this.depth = turned.drillTip;
	}

	@Override
	double across() {
		return switch (turned.at) {
			case CENTRE -> 0;
			case FACE -> turned.across;
			case SIDE -> turned.across + 4;
		};
	}

	@Override
	double along() {
		return turned.at == Turned.At.SIDE ? turned.along : 5;
	}

	@Override
	double angle() {
		return turned.live() ? angles.get(0) : -1;
	}

	@Override
	void body(Scene scene) {
		if (turned.live()) {
			live(scene);
			return;
		}
		Pen pen = scene.pen;
		Word f = feed(scene, perTurn);
		switch (style) {
			case FEED -> {
				Block down = scene.add(Word.g(1), pen.z(-depth), f).mark(mark("cycle"), mark("hole-0"));
				if (scene.dice.chance(0.2)) {
					down.swap('Z', Word.of('W', Figures.round(pen.unit(-depth) - pen.unit(5), pen.decimals), pen.decimals));
				}
				scene.add(Word.g(0), pen.z(5));
			}
			case PECKS -> pecks(scene, f);
			case CYCLE -> {
				Block block = new Block(Word.g(wrongCode > 0 ? wrongCode : 83), pen.z(-depth));
				if (scene.dice.chance(0.5)) {
					block.with(pen.length('R', -2.54));
				}
				scene.tape.add(block.with(peck(scene)).with(f).mark(mark("cycle"), mark("hole-0")));
				scene.add(Word.g(80));
				pen.height(5);
			}
			case FACE_PECK -> {
				scene.add(Word.g(74), pen.length('R', 1)).keep();
				scene.add(Word.g(74), pen.z(-depth), peck(scene), f).keep().mark(mark("cycle"), mark("hole-0"));
				pen.height(5);
			}
		}
	}

	private static Word peck(Scene scene) {
		return Word.whole('Q', scene.job.inch ? 1200 : 4000);
	}

	private void pecks(Scene scene, Word f) {
		Pen pen = scene.pen;
		double step = Math.max(6, depth / 6);
		double z = 0;
		boolean first = true;
		while (z < depth - 1e-9) {
			if (!first) {
				scene.add(Word.g(0), pen.z(5));
				scene.add(Word.g(0), pen.z(1 - z));
			}
			z = Math.min(depth, z + step);
			Block down = scene.add(Word.g(1), pen.z(-z));
			if (first) {
				down.with(f);
			}
			down.mark(mark("cycle"), mark("hole-0"));
			first = false;
		}
		scene.add(Word.g(0), pen.z(5));
	}

	private void live(Scene scene) {
		List<Word> words = new ArrayList<>();
		if (!spots) {
			words.add(peck(scene));
		}
		words.add(feed(scene, perTurn));
		TurnHoles.write(scene, this, turned, wrongCode > 0 ? wrongCode : turned.at == Turned.At.SIDE ? 87 : 83, depth, angles, words);
	}
}
