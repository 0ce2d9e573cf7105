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

	private Programs() {
	}
}
