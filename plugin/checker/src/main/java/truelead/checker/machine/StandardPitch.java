package truelead.checker.machine;

/** The coarse pitch of a metric size, which threading cycles take instead of a pitch. Source: ISO 261, first series. */
final class StandardPitch {

	private static final double[][] COARSE = {{3, 0.5}, {4, 0.7}, {5, 0.8}, {6, 1}, {7, 1}, {8, 1.25}, {10, 1.5}, {12, 1.75}, {14, 2},
			{16, 2}, {18, 2.5}, {20, 2.5}, {22, 2.5}, {24, 3}, {27, 3}, {30, 3.5}, {33, 3.5}, {36, 4}, {39, 4}, {42, 4.5},
			{45, 4.5}, {48, 5}};

	private StandardPitch() {
	}

	/** Pitch in mm of a size in mm, M3 to M48; NaN for a size that has none. */
	static double of(double size) {
		for (double[] row : COARSE) {
			if (row[0] == size) {
				return row[1];
			}
		}
		return Double.NaN;
	}
}
