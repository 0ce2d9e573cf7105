package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/**
 * Holes in a row, a grid, on a bolt circle or scattered, 1 to 30 of them. Millimetres; {@code step} is the pace of a row,
 * {@code radius} that of a bolt circle about the centre (x, y), and 0 elsewhere.
 */
record Pattern(Shape shape, List<Place> places, double x, double y, double step, double radius) {
	enum Shape { ONE, ROW, GRID, CIRCLE, LOOSE }

	/** Holes at least {@code pace} apart, on round numbers of {@code unit} (25.4 or 1 mm), about the origin given. */
	static Pattern of(Dice dice, double pace, double unit, double x, double y) {
		double grain = unit > 1 ? 25.4 / 8 : 0.5;
		double step = Math.ceil(pace / grain) * grain + grain * dice.whole(0, 8);
		Shape shape = dice.pick(Shape.values());
		List<Place> places = new ArrayList<>();
		double radius = 0;
		switch (shape) {
			case ONE -> places.add(new Place(x, y));
			case ROW -> {
				int n = dice.whole(2, 7);
				for (int i = 0; i < n; i++) {
					places.add(new Place(x + i * step, y));
				}
			}
			case GRID -> {
				int columns = dice.whole(2, 6);
				int rows = dice.whole(2, dice.chance(0.3) ? 5 : 2);
				for (int j = 0; j < rows; j++) {
					for (int i = 0; i < columns; i++) {
						int k = j % 2 == 0 ? i : columns - 1 - i;
						places.add(new Place(x + k * step, y + j * step));
					}
				}
			}
			case CIRCLE -> {
				int n = dice.pick(3, 4, 5, 6, 8, 12);
				radius = Math.ceil(n * step / 6 / grain) * grain;
				for (int i = 0; i < n; i++) {
					double angle = 2 * Math.PI * i / n;
					places.add(new Place(x + radius * Math.cos(angle), y + radius * Math.sin(angle)));
				}
			}
			case LOOSE -> {
				int n = dice.whole(2, 6);
				for (int i = 0; i < n; i++) {
					places.add(new Place(x + i * (step + 3 * grain) + grain * dice.whole(0, 3), y + grain * dice.whole(-20, 20)));
				}
			}
		}
		return new Pattern(shape, List.copyOf(places), x, y, step, radius);
	}

	int count() {
		return places.size();
	}
}
