package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/**
 * Writes a canned cycle over the places of a feature: as a list of holes, a repeat count, a loop, a subprogram or a macro. Depth and
 * R plane are millimetres from the program's zero.
 */
final class Strokes {
	private final Scene scene;
	private final Op op;
	private final Feature feature;
	private final double code;
	private final List<Word> extras;
	private final double bottom;
	private final double plane;
	private final double initial;
	boolean relative;
	boolean highReturn;

	Strokes(Scene scene, Op op, Feature feature, double code, double bottom, double plane, double initial, List<Word> extras) {
		this.scene = scene;
		this.op = op;
		this.feature = feature;
		this.code = code;
		this.bottom = bottom;
		this.plane = plane;
		this.initial = initial;
		this.extras = extras;
	}

	void list(List<Place> places) {
		Pen pen = scene.pen;
		boolean atFirst = pen.x() == pen.unit(places.get(0).x()) && pen.y() == pen.unit(places.get(0).y());
		pen.incremental = relative;
		Block first = cycle(atFirst && scene.dice.chance(0.4) ? List.of() : place(places.get(0), false));
		if (relative) {
			first.words.add(0, Word.g(91));
		}
		first.mark(op.mark("hole-0"));
		boolean terse = scene.dice.chance(0.5);
		for (int i = 1; i < places.size(); i++) {
			Block next = new Block();
			next.words.addAll(place(places.get(i), terse));
			scene.tape.add(next.mark(op.mark("hole-" + i), op.mark("holes")));
		}
		if (relative) {
			pen.incremental = false;
			cancel();
			scene.add(Word.g(90));
		} else {
			cancel();
		}
	}

	void repeat() {
		List<Place> places = feature.pattern.places();
		cycle(place(places.get(0), false)).mark(op.mark("hole-0"));
		Pen pen = scene.pen;
		double pace = Figures.round(pen.unit(places.get(1).x()) - pen.unit(places.get(0).x()), pen.decimals);
		Block rest = scene.add(Word.g(91), Word.of('X', pace, pen.decimals), Word.whole(scene.job.rs274 ? 'L' : scene.dice.pick('K', 'L'),
				places.size() - 1));
		rest.mark(op.mark("holes"), op.mark("repeat"));
		cancel();
		scene.add(Word.g(90));
		Place last = places.get(places.size() - 1);
		pen.stands(last.x(), last.y(), 0);
		settle();
	}

	/** A loop over the angle of a bolt circle or the pace of a row, the cycle in the loop. */
	void loop() {
		Pattern p = feature.pattern;
		Pen pen = scene.pen;
		String index = "#" + (100 + scene.dice.whole(1, 9));
		String x = Figures.trim(pen.unit(p.x()), pen.decimals);
		String y = Figures.trim(pen.unit(p.y()), pen.decimals);
		int n = p.count();
		scene.line(index + "=0");
		int label = ++scene.label;
		scene.line(scene.job.rs274 ? "o" + label + " while [" + index + " LT " + n + "]" : "WHILE [" + index + " LT " + n + "] DO1");
		List<Word> at;
		if (p.shape() == Pattern.Shape.CIRCLE) {
			String r = Figures.trim(pen.unit(p.radius()), pen.decimals);
			String angle = "[" + index + "*" + Figures.trim(360.0 / n, 6) + "]";
			at = List.of(Word.said('X', "[" + x + "+" + r + "*COS" + angle + "]"),
					Word.said('Y', "[" + y + "+" + r + "*SIN" + angle + "]"));
		} else {
			double pace = pen.unit(p.places().get(1).x()) - pen.unit(p.x());
			at = List.of(Word.said('X', "[" + x + "+" + index + "*" + Figures.trim(pace, pen.decimals) + "]"),
					Word.of('Y', pen.unit(p.y()), pen.decimals));
		}
		cycle(at).mark(op.mark("hole-0"), op.mark("holes"));
		scene.line(index + "=[" + index + "+1]");
		scene.line(scene.job.rs274 ? "o" + label + " endwhile" : "END1");
		cancel();
		Place last = p.places().get(n - 1);
		pen.stands(last.x(), last.y(), 0);
		settle();
	}

	/** The first hole in the cycle block and the others in a subprogram; or all there, where the cycle is only defined first. */
	void sub() {
		List<Place> places = feature.pattern.places();
		boolean define = !scene.job.rs274 && Math.abs(feature.size.diameter() % 2) < 1;
		int from = define ? 0 : 1;
		String key = "holes" + scene.job.features.indexOf(feature);
		boolean known = scene.subs.containsKey(key);
		int number = scene.subs.computeIfAbsent(key, k -> 1001 + scene.subs.size());
		Block first = cycle(define ? List.of() : place(places.get(0), false));
		if (define) {
			first.with(Word.whole(scene.dice.pick('L', 'K'), 0));
		} else {
			first.mark(op.mark("hole-0"));
		}
		call(number).mark(op.mark("holes"), op.mark("call"));
		cancel();
		if (!known) {
			scene.tape.aside();
			scene.line(scene.job.rs274 ? "o" + number + " sub" : "O" + number);
			for (int i = from; i < places.size(); i++) {
				scene.pen.incremental = false;
				Block hole = new Block();
				hole.words.addAll(place(places.get(i), false));
				scene.tape.add(hole.mark("sub:hole-" + i));
			}
			endSub(number);
		}
		Place last = places.get(places.size() - 1);
		scene.pen.stands(last.x(), last.y(), 0);
		settle();
	}

	/** One macro call a hole, the cycle in the macro. */
	void macro(Block... before) {
		int number = scene.subs.computeIfAbsent("macro" + op.id, k -> 9010 + scene.subs.size());
		List<Place> places = feature.pattern.places();
		Word feed = extras.stream().filter(w -> w.letter() == 'F').findFirst().orElseThrow();
		for (int i = 0; i < places.size(); i++) {
			Block call = new Block(Word.g(65), Word.whole('P', number), scene.pen.x(places.get(i).x()), scene.pen.y(places.get(i).y()),
					Word.of('Z', scene.pen.unit(bottom), scene.pen.decimals), Word.of('R', scene.pen.unit(plane), scene.pen.decimals), feed)
					.keep();
			scene.tape.add(call.mark(op.mark("hole-" + i), op.mark("holes"), op.mark("call")));
		}
		scene.tape.aside();
		scene.line("O" + number);
		for (Block block : before) {
			scene.tape.add(block);
		}
		Block cycle = new Block(Word.g(90), Word.g(highReturn ? 98 : 99), Word.g(code), Word.said('X', "#24"), Word.said('Y', "#25"),
			Word.said('Z', "#26"), Word.said('R', "#18"), Word.said('F', "#9"));
		scene.tape.add(cycle.mark(op.mark("cycle")));
		cancel();
		endSub(number);
		settle();
	}

	private void endSub(int number) {
		scene.line(scene.job.rs274 ? "o" + number + " endsub" : "M99");
		scene.tape.back();
	}

	private Block call(int number) {
		return scene.job.rs274 ? scene.line("o" + number + " call") : scene.add(Word.m(98), Word.whole('P', number)).keep();
	}

	private Block cycle(List<Word> place) {
		Pen pen = scene.pen;
		Block block = new Block(Word.g(highReturn ? 98 : 99), Word.g(code));
		block.words.addAll(place);
		if (pen.incremental) {
			double r = pen.unit(plane);
			block.with(Word.of('Z', Figures.round(pen.unit(bottom) - r, pen.decimals), pen.decimals));
			block.with(Word.of('R', Figures.round(r - pen.unit(initial), pen.decimals), pen.decimals));
		} else {
			block.with(Word.of('Z', pen.unit(bottom), pen.decimals)).with(Word.of('R', pen.unit(plane), pen.decimals));
		}
		block.words.addAll(extras);
		return scene.tape.add(block.mark(op.mark("cycle")));
	}

	private List<Word> place(Place to, boolean terse) {
		Pen pen = scene.pen;
		boolean sameX = pen.x() == pen.unit(to.x());
		boolean sameY = pen.y() == pen.unit(to.y());
		List<Word> words = new ArrayList<>();
		if (!terse || !sameX || sameY) {
			words.add(pen.x(to.x()));
		}
		if (!terse || !sameY) {
			words.add(pen.y(to.y()));
		}
		return words;
	}

	private void cancel() {
		scene.add(Word.g(80)).mark(op.mark("cancel"));
		settle();
	}

	private void settle() {
		scene.pen.height(highReturn ? initial : plane);
	}
}
