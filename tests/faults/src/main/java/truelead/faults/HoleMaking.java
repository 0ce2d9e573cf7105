package truelead.faults;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Spotting, drilling, chamfering and boring by helix: depths are millimetres below the surface to the tip of the tool. */
final class HoleMaking extends Op {
	enum Style { CYCLE, PLUNGE, HELIX }

	final Map<Feature, Double> depth = new HashMap<>();
	/** Other places than the feature's own, where a fault has moved or left out a hole. */
	final Map<Feature, List<Place>> places = new HashMap<>();
	Style style = Style.CYCLE;
	double code = 81;
	double feed;
	double peck;
	double plane = 2;
	boolean relative;

	HoleMaking(int id, Tool tool, double speed, double feed) {
		super(id, tool, speed);
		this.feed = feed;
	}

	boolean makesHole() {
		return tool.kind == Tool.Kind.DRILL || style == Style.HELIX;
	}

	@Override
	Place start() {
		return at(features.get(0)).get(0);
	}

	List<Place> at(Feature feature) {
		return places.getOrDefault(feature, feature.pattern.places());
	}

	@Override
	void body(Scene scene) {
		boolean first = true;
		for (Feature feature : features) {
			for (int offset : feature.offsets) {
				Place at = at(feature).get(0);
				if (!first) {
					scene.add(Word.g(0), Word.g(offset), scene.pen.z(feature.surface + clearance(scene)));
					scene.add(Word.g(0), scene.pen.x(at.x()), scene.pen.y(at.y()));
				}
				first = false;
				switch (style) {
					case CYCLE -> cycle(scene, feature);
					case PLUNGE -> plunge(scene, feature);
					case HELIX -> helix(scene, feature);
				}
			}
		}
	}

	private Word feedWord(Scene scene) {
		return scene.feed(scene.job.perRev ? feed / speed : feed, scene.job.perRev);
	}

	private void cycle(Scene scene, Feature feature) {
		List<Word> extras = new ArrayList<>();
		if (code == 83 || code == 73) {
			extras.add(scene.pen.length('Q', peck));
		}
		if (code == 82) {
			extras.add(Word.whole('P', scene.job.rs274 ? 0 : 200));
		}
		extras.add(feedWord(scene));
		Strokes strokes = new Strokes(scene, this, feature, code, feature.surface - depth.get(feature), feature.surface + plane,
			scene.pen.inch ? scene.pen.z() * 25.4 : scene.pen.z(), extras);
		strokes.highReturn = scene.dice.chance(0.4);
		strokes.relative = relative;
		boolean moved = places.containsKey(feature);
		Feature.Way way = moved ? Feature.Way.LIST : feature.way;
		switch (way) {
			case REPEAT -> strokes.repeat();
			case LOOP -> strokes.loop();
			case SUB -> strokes.sub();
			default -> strokes.list(at(feature));
		}
	}

	private void plunge(Scene scene, Feature feature) {
		Pen pen = scene.pen;
		int i = 0;
		for (Place at : at(feature)) {
			Block over = scene.add(Word.g(0), pen.x(at.x()), pen.y(at.y()));
			over.mark(mark("hole-" + i++));
			scene.add(Word.g(0), pen.z(feature.surface + plane));
			Block down = scene.add(Word.g(1), pen.z(feature.surface - depth.get(feature)), feedWord(scene));
			down.mark(mark("cycle"), mark("holes"));
			scene.add(Word.g(0), pen.z(feature.surface + plane));
		}
	}

	/** Down in full circles from the wall, one flat circle at the bottom, back to the middle and up. */
	private void helix(Scene scene, Feature feature) {
		Pen pen = scene.pen;
		double radius = (feature.hole() - tool.diameter) / 2;
		double bottom = feature.surface - depth.get(feature);
		double pitch = Math.min(2, tool.diameter / 6);
		for (Place at : at(feature)) {
			scene.add(Word.g(0), pen.x(at.x()), pen.y(at.y()));
			scene.add(Word.g(0), pen.z(feature.surface + 1)).mark(mark("holes"));
			scene.add(Word.g(1), pen.x(at.x() + radius), feedWord(scene)).mark(mark("feed"), mark("cycle"));
			double z = feature.surface + 1;
			while (z > bottom + 1e-9) {
				z = Math.max(bottom, z - pitch);
				scene.add(Word.g(3), pen.length('I', -radius), Word.of('J', 0, 1), pen.z(z)).mark(mark("cycle"));
			}
			scene.add(Word.g(3), pen.length('I', -radius), Word.of('J', 0, 1)).mark(mark("cycle"));
			scene.add(Word.g(1), pen.x(at.x()));
			scene.add(Word.g(0), pen.z(feature.surface + clearance(scene)));
		}
	}
}
