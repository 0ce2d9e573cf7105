package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/**
 * The bench's own small table. Drills: ISO 2306 (metric), the usual tap drill charts for inch drills (common practice);
 * form holes from D - 0.0068 x percent x P at about 65 percent (Machinery's Handbook), rounded to a drill one can buy; pipe
 * sizes: ASME B1.20.1 (E1 plus 0.8 P) and ISO 228-1, their drills common practice.
 */
final class Sizes {
	static final List<Size> ALL = build();

	private Sizes() {
	}

	private static List<Size> build() {
		List<Size> all = new ArrayList<>();
		double[][] coarse = {
			{2, .4, 1.6, 1.82}, {2.5, .45, 2.05, 2.3}, {3, .5, 2.5, 2.8}, {4, .7, 3.3, 3.7}, {5, .8, 4.2, 4.65}, {6, 1, 5, 5.55},
			{8, 1.25, 6.8, 7.45}, {10, 1.5, 8.5, 9.35}, {12, 1.75, 10.2, 11.25}, {14, 2, 12, 13.1}, {16, 2, 14, 15.1},
			{18, 2.5, 15.5, 0}, {20, 2.5, 17.5, 0}, {22, 2.5, 19.5, 0}, {24, 3, 21, 0}, {27, 3, 24, 0}, {30, 3.5, 26.5, 0},
			{33, 3.5, 29.5, 0}, {36, 4, 32, 0}};
		double[][] fine = {
			{3, .35, 2.65, 0}, {4, .5, 3.5, 0}, {5, .5, 4.5, 0}, {6, .75, 5.2, 5.65}, {8, 1, 7, 7.55}, {10, 1, 9, 9.55},
			{10, 1.25, 8.8, 9.45}, {12, 1, 11, 11.55}, {12, 1.25, 10.8, 0}, {12, 1.5, 10.5, 11.35}, {14, 1.5, 12.5, 13.35},
			{16, 1.5, 14.5, 15.35}, {18, 1.5, 16.5, 0}, {20, 1.5, 18.5, 0}, {20, 2, 18, 0}, {22, 1.5, 20.5, 0}, {24, 2, 22, 0},
			{24, 1.5, 22.5, 0}, {27, 2, 25, 0}, {30, 2, 28, 0}, {33, 2, 31, 0}, {36, 3, 33, 0}};
		for (double[] row : coarse) {
			all.add(metric(row, Series.METRIC_COARSE));
		}
		for (double[] row : fine) {
			all.add(metric(row, Series.METRIC_FINE));
		}
		String[] unified = {
			"#2-56 UNC .086 .0700 #50 0 -", "#4-40 UNC .112 .0890 #43 .1015 #38", "#5-40 UNC .125 .1015 #38 0 -",
			"#6-32 UNC .138 .1065 #36 .1250 1/8", "#8-32 UNC .164 .1360 #29 .1495 #25", "#10-24 UNC .190 .1495 #25 .1719 11/64",
			"#10-32 UNF .190 .1590 #21 .1770 #16", "1/4-20 UNC .25 .2010 #7 .2280 #1", "1/4-28 UNF .25 .2130 #3 .2344 15/64",
			"5/16-18 UNC .3125 .2570 F .2900 L", "5/16-24 UNF .3125 .2720 I .2950 M", "3/8-16 UNC .375 .3125 5/16 .3480 S",
			"3/8-24 UNF .375 .3320 Q .3580 T", "7/16-14 UNC .4375 .3680 U .40625 13/32", "7/16-20 UNF .4375 .390625 25/64 0 -",
			"1/2-13 UNC .5 .421875 27/64 0 -", "1/2-20 UNF .5 .453125 29/64 0 -", "9/16-12 UNC .5625 .484375 31/64 0 -",
			"9/16-18 UNF .5625 .515625 33/64 0 -", "5/8-11 UNC .625 .53125 17/32 0 -", "3/4-10 UNC .75 .65625 21/32 0 -",
			"3/4-16 UNF .75 .6875 11/16 0 -", "7/8-9 UNC .875 .765625 49/64 0 -", "7/8-14 UNF .875 .8125 13/16 0 -",
			"1-8 UNC 1. .875 7/8 0 -", "1-12 UNF 1. .921875 59/64 0 -", "1 1/8-7 UNC 1.125 .984375 63/64 0 -",
			"1 1/4-7 UNC 1.25 1.109375 1-7/64 0 -", "1 1/2-6 UNC 1.5 1.34375 1-11/32 0 -"};
		for (String row : unified) {
			all.add(inch(row));
		}
		String[] npt = {"1/8-27 NPT .3736 .3390 R", "1/4-18 NPT .49163 .4375 7/16", "3/8-18 NPT .62701 .578125 37/64",
			"1/2-14 NPT .77843 .703125 45/64", "3/4-14 NPT .98887 .921875 59/64"};
		for (String row : npt) {
			String[] f = row.split(" ");
			double tpi = Double.parseDouble(f[0].substring(f[0].lastIndexOf('-') + 1));
			all.add(new Size(f[0], Series.NPT, 25.4 * (Double.parseDouble(f[2]) + 0.8 / tpi), 25.4 / tpi, tpi,
				25.4 * Double.parseDouble(f[3]), f[4], 0, ""));
		}
		Object[][] g = {{"G1/8", 28., 9.728, 8.8}, {"G1/4", 19., 13.157, 11.8}, {"G3/8", 19., 16.662, 15.25},
			{"G1/2", 14., 20.955, 19.0}, {"G3/4", 14., 26.441, 24.5}};
		for (Object[] row : g) {
			double tpi = (Double) row[1];
			all.add(new Size((String) row[0], Series.G, (Double) row[2], 25.4 / tpi, tpi,
				(Double) row[3], Figures.trim((Double) row[3], 3), 0, ""));
		}
		return List.copyOf(all);
	}

	private static Size metric(double[] row, Series series) {
		String name = "M" + Figures.trim(row[0], 2) + "X" + Figures.trim(row[1], 2);
		return new Size(name, series, row[0], row[1], 0, row[2], Figures.trim(row[2], 2), row[3], Figures.trim(row[3], 2));
	}

	private static Size inch(String row) {
		String[] f = row.replace("1 1/", "1_1/").split(" ");
		double tpi = Double.parseDouble(f[0].substring(f[0].lastIndexOf('-') + 1));
		return new Size(f[0].replace('_', ' '), Series.valueOf(f[1]), 25.4 * Double.parseDouble(f[2]), 25.4 / tpi, tpi,
			25.4 * Double.parseDouble(f[3]), f[4], 25.4 * Double.parseDouble(f[5]), f[6]);
	}
}
