package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import truelead.checker.Samples;

class WallTooThinTest {

	private static final String COVER = """
			G21 G90 G17
			T1 M6 (DRILL 2.65)
			G0 X2.5 Y7.5 S2600 M3
			G43 Z25. H1
			G83 Z-9.6 R2. Q3. F138.
			G80
			T2 M6 (M3X0.35 TAP)
			(THREAD: M3X0.35, DEPTH 3, BLIND)
			(HOLE: WALL 10.15)
			G0 X2.5 Y7.5 S860 M3
			G43 Z25. H2
			G84 Z-5. R5. F301.
			G80
			M30
			""";

	@Test
	void aDrillThatNearlyComesThroughIsTold() {
		Samples.one(COVER, "wall-too-thin", "the drill's point leaves 0.55 mm of a wall of 10.15 mm");
	}

	/** Level 0 lies under the part, as on a table: the R plane is above the surface, nobody knows how far. */
	@Test
	void whereNobodySaysTheSurfaceTheWallIsNotMeasured() {
		String raised = COVER.replace("Z25.", "Z175.").replace("Z-9.6 R2.", "Z142.5 R152.").replace("Z-5. R5.", "Z145. R155.");
		assertThat(Samples.heard(raised)).isEmpty();
	}
}
