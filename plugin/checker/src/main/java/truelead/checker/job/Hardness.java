package truelead.checker.job;

/**
 * Rockwell C from other scales for steel, by linear interpolation in the usual conversion table (values as in ASTM E140 for non-austenitic
 * steel, from memory, rounded). Below 20 HRC, where Rockwell C is not used, the values are an extension downwards for comparing only.
 */
final class Hardness {

	private static final double[][] HRC_HB_HV = { { 0, 150, 158 }, { 10, 187, 196 }, { 20, 226, 238 }, { 25, 253, 266 }, { 30, 286, 302 },
			{ 35, 327, 345 }, { 40, 371, 392 }, { 45, 421, 446 }, { 50, 475, 513 }, { 55, 546, 595 }, { 60, 613, 697 }, { 65, 739, 832 },
			{ 68, 800, 940 } };

	private Hardness() {
	}

	/** Rockwell C of a Brinell hardness, HB; 0 below the table, 68 above it. */
	static double fromBrinell(double hb) {
		return look(hb, 1);
	}

	/** Rockwell C of a Vickers hardness, HV; 0 below the table, 68 above it. */
	static double fromVickers(double hv) {
		return look(hv, 2);
	}

	private static double look(double value, int column) {
		if (value <= HRC_HB_HV[0][column]) {
			return HRC_HB_HV[0][0];
		}
		for (int i = 1; i < HRC_HB_HV.length; i++) {
			double[] low = HRC_HB_HV[i - 1];
			double[] high = HRC_HB_HV[i];
			if (value <= high[column]) {
				return low[0] + (value - low[column]) / (high[column] - low[column]) * (high[0] - low[0]);
			}
		}
		return HRC_HB_HV[HRC_HB_HV.length - 1][0];
	}
}
