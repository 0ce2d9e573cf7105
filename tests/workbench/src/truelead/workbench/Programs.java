package truelead.workbench;

/** Programs that the tests open. */
final class Programs {

	/** Four M6 holes, drilled and tapped as they should be. */
	static final String GOOD = """
			%
			O1 (FOUR M6 HOLES)
			G17 G21 G40 G49 G80 G90 G94
			G54
			T1 M6 (SPOT DRILL 90 DEG, 12 DIA)
			G0 X20. Y20. S2400 M3
			G43 Z25. H1
			G99 G81 Z-3.2 R2. F240
			X80.
			G80
			T2 M6 (DRILL 5.0)
			G0 X20. Y20. S3200 M3
			G43 Z25. H2
			G99 G83 Z-19. R2. Q4. F320
			X80.
			G80
			T3 M6 (M6X1 TAP)
			G0 X20. Y20. S520 M3
			G43 Z25. H3
			G99 G84 Z-14.5 R5. F520
			X80.
			G80
			M30
			%
			""";

	/** The same with a feed that does not fit the pitch. */
	static final String WRONG_FEED = GOOD.replace("F520", "F500");

	/** A thread that a lathe cuts by a single point, 3 mm before a shoulder. */
	static final String TURNED = """
			O3 (SHAFT END)
			G21 G40 G99
			T0101 (TURN)
			G97 S1200 M3
			G0 X26. Z2.
			G1 X19.9 F.2
			Z-30.
			X40.
			G0 X100. Z100.
			T0303 (THREAD M20X1.5)
			G97 S600 M3
			G0 X24. Z6.
			G92 X19.3 Z-27. F1.5
			X18.7
			X18.16
			G0 X100. Z100.
			M30
			""";

	/** A thread milled from the bottom up. */
	static final String HELIX = """
			%
			O2 (GLAND)
			(T2 THREAD MILL 12 DIA, PITCH 1.5, SINGLE FORM)
			G17 G21 G40 G49 G80 G90 G94 G54
			T1 M6 (DRILL 18.5)
			G0 X50. Y40. S900 M3
			G43 Z25. H1
			G99 G83 Z-22. R2. Q6. F160
			G80
			T2 M6 (M20X1.5-6H THREAD MILL, THROUGH)
			G0 X50. Y40. S2600 M3
			G43 Z25. H2
			G0 Z-17.25
			G3 X54.02 Y40. Z-16.875 I2.01 J0. F220
			G3 X54.02 Y40. Z-15.375 I-4.02 J0.
			G3 X54.02 Y40. Z-13.875 I-4.02 J0.
			G3 X54.02 Y40. Z-12.375 I-4.02 J0.
			G3 X54.02 Y40. Z-10.875 I-4.02 J0.
			G3 X54.02 Y40. Z-9.375 I-4.02 J0.
			G3 X54.02 Y40. Z-7.875 I-4.02 J0.
			G3 X54.02 Y40. Z-6.375 I-4.02 J0.
			G3 X54.02 Y40. Z-4.875 I-4.02 J0.
			G3 X54.02 Y40. Z-3.375 I-4.02 J0.
			G3 X54.02 Y40. Z-1.875 I-4.02 J0.
			G3 X54.02 Y40. Z-0.375 I-4.02 J0.
			G3 X54.02 Y40. Z1.125 I-4.02 J0.
			G3 X50. Y40. Z1.5 I-2.01 J0.
			G0 Z25.
			M30
			%
			""";

	private Programs() {
	}
}
