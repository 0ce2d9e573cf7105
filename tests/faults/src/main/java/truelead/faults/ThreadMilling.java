package truelead.faults;

import java.util.List;

/**
 * A thread milled inside a hole. {@code cutter} and {@code size} are diameters in millimetres; {@code size} is the diameter that the
 * finishing pass cuts to. Up from the bottom or down from the top, in full circles, half arcs or a macro loop, on the cutter's
 * centre path or with cutter radius compensation on the contour.
 */
final class ThreadMilling extends Op {
	enum Compensation { NONE, CONTOUR, WEAR }

	enum Arcs { CIRCLES, HALVES, LOOP, TURNS }

	final Feature feature;
	Compensation compensation = Compensation.NONE;
	Arcs arcs = Arcs.HALVES;
	boolean radiusWords;
	boolean down;
	boolean comb;
	double cutter;
	double size;
	double rough;
	double advance;
	/** Lowest height of the full helix below the surface, millimetres, and the number of turns. */
	double tip;
	int turns;
	double feed;
	double entryRise = 0.25;
	int flip = 1;
	int unevenTurn = -1;
	boolean straightEntry;
	boolean earlyExit;
	boolean cancelled = true;
	boolean compensationOnArc;
	boolean taperOff;
	List<Place> places;

	ThreadMilling(int id, Tool tool, double speed, Feature feature) {
		super(id, tool, speed);
		this.feature = feature;
		this.advance = feature.size.pitch();
		this.places = feature.pattern.places();
		features.add(feature);
	}

	@Override
	Place start() {
		return places.get(0);
	}

	/** True where the helix runs counter-clockwise: right hand up or left hand down; a fault may flip it. */
	boolean counter() {
		boolean ccw = feature.left == down;
		return flip > 0 ? ccw : !ccw;
	}

	/** Radius of the programmed path, millimetres. */
	double radius(double cutTo) {
		return compensation == Compensation.CONTOUR ? cutTo / 2 : (cutTo - cutter) / 2;
	}

	@Override
	void body(Scene scene) {
		boolean first = true;
		for (int offset : feature.offsets) {
			if (!first) {
				scene.add(Word.g(0), Word.g(offset), scene.pen.z(feature.surface + clearance(scene)));
			}
			first = false;
			int i = 0;
			for (Place at : places) {
				scene.add(Word.g(0), scene.pen.x(at.x()), scene.pen.y(at.y())).mark(mark("hole-" + i++));
				if (rough > 0) {
					new HelixPath(scene, this, at).pass(size - rough, false);
				}
				new HelixPath(scene, this, at).pass(size, true);
				scene.add(Word.g(0), scene.pen.z(feature.surface + clearance(scene)));
			}
		}
	}
}
