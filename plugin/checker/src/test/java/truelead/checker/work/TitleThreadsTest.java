package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.heard;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What the title says where the tool says nothing of it. */
class TitleThreadsTest {

	@Test
	void aThreadMilledOutToTheTitlesDiameterIsThatThreadThoughTheBoreIsWrong() {
		assertThat(milled("10.25")).isEmpty();
		assertThat(milled("9.25")).containsExactly("drill-too-small the hole is milled 38.5 mm, the smallest minor diameter of M42x1.5 "
				+ "(6H, assumed) is 40.376 mm: 1.876 mm too small, "
				+ "180 % of thread, and the screw does not go in; mill 40.376 mm to 40.676 mm");
	}

	@Test
	void aThreadThatIsToBeDeeperThanThePlateIsBlind() {
		assertThat(tapped("PLATE 12 THICK, 4X M8 X 16 DEEP")).hasSize(1).allMatch(message -> message.startsWith("drill-too-shallow"));
		assertThat(tapped("PLATE 12 THICK, 4X M8")).as("drilled through the plate").isEmpty();
	}

	@Test
	void aCountIsWarnedOfWhereMostOfItIsThreaded() {
		assertThat(tapped("PLATE 12 THICK, 5X M8")).singleElement().asString()
				.startsWith("count-differs 4 holes are threaded, the title says 5: 1 missing");
		assertThat(tapped("PLATE 12 THICK, 9X M8")).as("the others may be made in another setting").isEmpty();
	}

	@Test
	void theOnlyTapOfTheProgramIsTheTitlesByItsLeadOrWhereTheTitleSpeaksOfATap() {
		assertThat(bare("CARRIER 2X M3", "2.5", "600")).isEmpty();
		assertThat(bare("CARRIER 2X M3", "2.0", "600")).singleElement().asString()
				.startsWith("drill-too-small the hole is drilled 2 mm, the smallest minor diameter of M3x0.5");
		assertThat(bare("CARRIER", "2.0", "600")).as("nothing names it").isEmpty();
		assertThat(bare("TAP M12", "", "2100")).isEmpty();
		assertThat(bare("TAP M12", "", "1800")).singleElement().asString()
				.startsWith("feed-off-pitch F1800 at S1200 advances 1.500 mm a turn, M12x1.75 needs 1.750");
		assertThat(bare("M12 COVER", "", "1800")).as("the title may speak of what is there already").isEmpty();
	}

	@Test
	void whichOfTwoTapsTheTitleSpeaksOfNobodyKnows() {
		assertThat(heard("(TAP M12)\nG21 G90\nT1 M6\nS900 M3\nG0 X0 Y0\nG81 Z-40 R2 F120\nX30\nG80\nT2 M6\nS200 M3\nG0 X0 Y0\n"
				+ "G84 Z-25 R6 F350\nG80\nT3 M6\nS200 M3\nG0 X30 Y0\nG84 Z-25 R6 F300\nG80\nM30\n")).isEmpty();
	}

	/** Tools of which the program says nothing but the drill's size, or not even that. */
	private static List<String> bare(String title, String drill, String feed) {
		return heard("(" + title + ")\nG21 G17 G40 G90 G94\nT1 M6" + (drill.isEmpty() ? "" : " (" + drill + " DRILL)")
				+ "\nG54 G0 X0 Y0 S3000 M3\nG43 H1 Z30\nG81 Z-20 R3 F300\nX20\nG80\nT2 M6\n"
				+ "G54 G0 X0 Y0 S1200 M3\nG43 H2 Z30\nG84 Z-8 R5 F" + feed + "\nX20\nG80\nM30\n");
	}

	private static List<String> milled(String radius) {
		return heard("(BODY, 4X 1-11.5 NPT AND M42X1.5)\nG21 G17 G40 G90 G94\nT5 M6 (20 MM END MILL)\nG54 G0 X0 Y0 S3000 M3\nG43 H5 Z30\n"
				+ "G0 Z0.5\nG1 X" + radius + " F500\nG3 I-" + radius + " Z-6 F900\nG3 I-" + radius + " Z-12\nG3 I-" + radius
				+ " Z-18\nG3 I-" + radius
				+ "\nG1 X0\nG0 Z30\nT6 M6 (THREAD MILL D16, SINGLE)\nG54 G0 X0 Y0 S2200 M3\nG43 H6 Z30\nG0 Z-16\nG41 D6 G1 X11 Y-10 F600\n"
				+ "G3 X21 Y0 R10 Z-15.625\nG3 I-21 Z-14.125 F350\nG3 I-21 Z-12.625\nG3 I-21 Z-11.125\nG3 I-21 Z-9.625\nG3 I-21 Z-8.125\n"
				+ "G3 I-21 Z-6.625\nG3 I-21 Z-5.125\nG3 I-21 Z-3.625\nG3 I-21 Z-2.125\n"
				+ "G3 I-21 Z-0.625\nG3 I-21 Z0.875\nG3 X11 Y10 R10 Z1.25\nG40 G1 X0 Y0 F2000\nG0 Z30\nM30\n");
	}

	private static List<String> tapped(String title) {
		return heard("(" + title + ")\nG21 G17 G40 G90 G94\nT1 M6 (DRILL 6.8)\nG54 G0 X0 Y0 S3000 M3\nG43 H1 Z30\nG81 Z-20 R3 F300\nX20\n"
				+ "X40\nX60\nG80\nT2 M6 (TAP M8)\nG54 G0 X0 Y0 S400 M3\nG43 H2 Z30\nG84 Z-18 R5 F500\n" + "X20\nX40\nX60\nG80\nM30\n");
	}
}
