package truelead.audit.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.audit.Recorded;

class PlanCommandTest {

	private static JsonObject plan(Object... arguments) {
		return JsonParser.parseString(Recorded.run(arguments).out()).getAsJsonObject();
	}

	@Test
	void steelThatFlowsIsFormed() {
		JsonObject plan = plan("plan", "M8", "--stock", "steel", "--hardness", "28HRC", "--depth", "12", "--report", "json");

		assertThat(plan.get("recommended").getAsString()).isEqualTo("form-tap");
		assertThat(plan.get("blocks").getAsJsonArray().toString()).contains("G84 Z-15.75 R3.8 F587.5");
	}

	@Test
	void hardSteelIsMilledAndBrassIsNotFormed() {
		assertThat(plan("plan", "M8", "--stock", "steel", "--hardness", "55HRC", "--report", "json").get("recommended").getAsString())
				.isEqualTo("thread-mill");
		assertThat(plan("plan", "M8", "--stock", "brass", "--report", "json").get("recommended").getAsString()).isEqualTo("straight-flute");
	}

	@Test
	void littleRoomBelowLeavesTheThreadMill() {
		JsonObject plan = plan("plan", "M8", "--depth", "12mm", "--bottom", "16", "--report", "json");

		assertThat(plan.get("recommended").getAsString()).isEqualTo("thread-mill");
	}

	@Test
	void aLatheDrillsAndTapsOneHoleOnItsCentreline() {
		Recorded one = Recorded.run("plan", "M8", "--machine", "turning");
		Recorded two = Recorded.run("plan", "M8", "--machine", "turning", "--count", "2");

		assertThat(one.status()).isZero();
		assertThat(one.out()).contains("T0303 (SPIRAL FLUTE TAP M8X1.25)").contains("G84 Z-15.75 F1.25").contains("G0 X0.");
		assertThat(two.status()).isEqualTo(1);
		assertThat(two.out()).contains("2 holes in a row: a lathe makes one, on its centreline").doesNotContain("M30");
	}

	@Test
	void aShallowThreadInAThickWallIsDrilledThroughAndTappedAsAsked() {
		Recorded ran = Recorded.run("plan", "M8", "--depth", "8", "--through", "30");

		assertThat(ran.out()).contains("8 mm of full thread in a through hole of 30 mm").contains("G84 Z-14.88")
				.contains("HOLE: THROUGH 30.");
	}

	@Test
	void aTaperThreadIsTappedToItsGauge() {
		Recorded ran = Recorded.run("plan", "1/4-18 NPT", "--stock", "steel");

		assertThat(ran.status()).isZero();
		assertThat(ran.out()).contains("drill 7/16").contains("STRAIGHT FLUTE TAP 1/4-18 NPT").contains("Z-0.687 ");
	}

	@Test
	void feedIsProgrammedAsAsked() {
		assertThat(Recorded.run("plan", "1/4-20", "--feed", "per-rev").out()).contains("G95").contains("F0.05 (1/4-20")
				.contains("a minute at S");
		assertThat(Recorded.run("plan", "M8", "--machine", "turning", "--feed", "per-minute").out()).contains("G98").contains("F437.5");
	}

	@Test
	void compensationTakesTheCuttersRadiusOff() {
		Recorded ran = Recorded.run("plan", "M8", "--stock", "steel", "--hardness", "55HRC", "--compensation");

		assertThat(ran.out()).contains("G41 D3").contains("G40 X0. Y0.");
	}

	@Test
	void whereNothingFitsItSaysHowDeepEachCouldGo() {
		Recorded ran = Recorded.run("plan", "M8", "--depth", "12", "--bottom", "13");

		assertThat(ran.status()).isEqualTo(1);
		assertThat(ran.out()).contains("of full thread at most")
				.contains("no method makes 12 mm of full thread as asked; the deepest that the room gives is 9.3").doesNotContain("M30");
	}

	@Test
	void whatIsTooDeepIsToldADepthThatCanBeMade() {
		assertThat(Recorded.run("plan", "M8", "--through", "100").out())
				.contains("no method makes 100 mm of full thread as asked; 32 mm can be made");
		assertThat(Recorded.run("plan", "M8", "--depth", "2", "--bottom", "3").out()).contains("tools would have to reach 5.63 mm");
	}

	@Test
	void theSpottingDrillStaysAboveTheBottomToo() {
		Recorded ran = Recorded.run("plan", "G 1/2", "--depth", "1mm", "--bottom", "9mm");

		assertThat(ran.status()).isEqualTo(1);
		assertThat(ran.out()).contains("the countersink goes to 10.792 mm").doesNotContain("M30");
	}

	@Test
	void noThreadIsDeeperThanItsWall() {
		Recorded ran = Recorded.run("plan", "M8", "--depth", "12", "--through", "10");

		assertThat(ran.status()).isEqualTo(2);
		assertThat(ran.err()).contains("--depth 12 is more than the wall of 10");
	}

	@Test
	void aTapOnHandComesFirstAndTheOthersMustBeBought(@TempDir Path shop) throws IOException {
		Path list = Files.writeString(shop.resolve("tools.csv"), "TOOL,KIND,THREAD\n7,SPIRAL FLUTE TAP,M8\n");

		JsonObject plan = plan("plan", "M8", "--stock", "steel", "--depth", "12", "--tools", list.toString(), "--report", "json");

		assertThat(plan.get("recommended").getAsString()).isEqualTo("spiral-flute");
		assertThat(plan.toString()).contains("on hand: T7 of the tool list").contains("to be bought");
	}

	@Test
	void thePageSaysTheRecommendationFirstAndNeedsNothingBesideIt() {
		String page = Recorded.run("plan", "M8", "--stock", "steel", "--depth", "12", "--report", "html").out();

		assertThat(page).startsWith("<!DOCTYPE html>").contains("Recommended: forming tap").contains("G84 Z-15.75")
				.contains("about 8.2 N m").contains("reduced rapid").doesNotContain("http:").doesNotContain("https:")
				.doesNotContain("<script");
		assertThat(page.indexOf("Recommended")).isLessThan(page.indexOf("for</th>"));
	}

	@ParameterizedTest
	@ValueSource(strings = {"--depth=-1", "--depth=deep", "--hardness=hard", "--hardness=99HRC", "--stock=cheese", "--stock=a)b",
			"--count=0", "--count=1e9", "--count=x", "--bottom=0x10", "--machine=none", "--feed=fast"})
	void badOptionsAreOneClearLine(String option) {
		Recorded ran = Recorded.run("plan", "M8", option);

		assertThat(ran.status()).isEqualTo(2);
		assertThat(ran.out()).isEmpty();
		assertThat(ran.err()).startsWith("truelead: ").doesNotContain("Exception").doesNotContain("fault of Truelead");
	}

	private static final String TAPPED = """
			G21 G90 G17 G94
			(STOCK: STEEL, 28 HRC)
			T1 M6 (DRILL 5.0)
			G0 X0 Y0 S2000 M3
			G43 Z25. H1
			G99 G81 Z-20. R2. F200
			X10.
			G80
			(2X M6X1 DEPTH 11)
			T2 M6 (SPIRAL FLUTE TAP)
			G0 X0 Y0 S520 M3
			G43 Z25. H2
			G99 G84 Z-14.5 R5. F520
			X10.
			G80
			M30
			""";

	@ParameterizedTest
	@ValueSource(ints = {1, 6, 9, 10, 13, 14, 15})
	void whatElseCouldMakeTheThreadIsAskedFromAnyLineOfIt(int line, @TempDir Path folder) throws IOException {
		Path program = Files.writeString(folder.resolve("part.nc"), TAPPED);

		String text = Recorded.run("plan", "--from", program + ":" + line).out();

		assertThat(text).startsWith("M6x1, 11 mm of full thread, blind, stock STEEL, 28 HRC\n")
				.contains("the thread of part.nc:13, tapping cycle G84?").containsPattern("depth +11 mm +called out in a comment")
				.containsPattern("holes +2 +called out in a comment").containsPattern("stock +STEEL, 28 HRC +called out in a note")
				.containsPattern("machine +milling-metric +no machine is named")
				.contains("S520, 9.8 m/min", "made so now by T2, 9.8 m/min, within the band", "the hole can stay as it is")
				.containsPattern("another drill: 5\\.\\d+ mm, the program makes 5 mm");
	}

	@Test
	void whatIsGivenBesideGoesBeforeTheProgram(@TempDir Path folder) throws IOException {
		Path program = Files.writeString(folder.resolve("part.nc"), TAPPED);

		JsonObject plan = plan("plan", "--from", program + ":13", "--hardness", "55HRC", "--depth", "8", "--report", "json");

		assertThat(plan.get("recommended").getAsString()).isEqualTo("thread-mill");
		assertThat(plan.get("from").toString()).contains("{\"name\":\"depth\",\"value\":\"8 mm\",\"from\":\"given beside --from\"}",
				"\"value\":\"STEEL, 55 HRC\",\"from\":\"given beside --from\"",
				"\"name\":\"thread\",\"value\":\"M6x1\",\"from\":\"called out in a comment");
		assertThat(plan.get("blocks").getAsJsonArray().toString()).contains("COUNT 2");
	}

	@Test
	void aDrawingsHoleIsALimitAndADrilledOneIsNone(@TempDir Path folder) throws IOException {
		Path drawn = Files.writeString(folder.resolve("drawn.nc"),
				TAPPED.replace("(2X M6X1 DEPTH 11)", "(2X M6X1 DEPTH 11)\n(HOLE: BOTTOM 12)"));
		Path drilled = Files.writeString(folder.resolve("drilled.nc"), TAPPED.replace("Z-20.", "Z-16.").replace("DEPTH 11", ""));

		assertThat(Recorded.run("plan", "--from", drawn + ":14").out()).contains("tools may reach 13.502 mm")
				.containsPattern("deepest point +13.502 mm +called out in a note");
		assertThat(Recorded.run("plan", "--from", drilled + ":13").out()).contains("a deeper hole: to").doesNotContain("tools may reach")
				.containsPattern("depth +12 mm +programmed: the tool goes to 14.5 mm, less its lead of 2.5 turns");
	}

	@Test
	void thePageAndTheJsonSayWhereEachNumberIsFrom(@TempDir Path folder) throws IOException {
		Path program = Files.writeString(folder.resolve("part.nc"), TAPPED);

		assertThat(Recorded.run("plan", "--from", program + ":13", "--report", "html").out())
				.contains("What else could make the thread of part.nc:13", "called out in a note: &quot;STOCK: STEEL, 28 HRC&quot;");
		assertThat(plan("plan", "--from", program + ":13", "--report", "json").get("from").getAsJsonObject().get("line").getAsInt())
				.isEqualTo(13);
	}

	@Test
	void aThreadThatNothingNamesMustBeGivenToo(@TempDir Path folder) throws IOException {
		Path program = Files.writeString(folder.resolve("part.nc"), "G21 G90 G94\nT3 M6\nG0 X0 Y0 M3\nG84 Z-14.5 R5. F#5\nG80\nM30\n");

		Recorded refused = Recorded.run("plan", "--from", program + ":4");
		assertThat(refused.status()).isEqualTo(2);
		assertThat(refused.err()).contains("nothing names the thread that T3 makes in line 4; give it too");
		assertThat(Recorded.run("plan", "M6", "--from", program + ":4").out()).containsPattern("thread +M6x1 +given beside --from");
	}

	@ParameterizedTest
	@ValueSource(strings = {"part.nc", ":5", "part.nc:0", "part.nc:x", "gone.nc:4"})
	void aPlaceThatIsNoneIsOneClearLine(String place) {
		Recorded ran = Recorded.run("plan", "--from", place);

		assertThat(ran.status()).isEqualTo(2);
		assertThat(ran.err()).startsWith("truelead: ").doesNotContain("Exception").doesNotContain("fault of Truelead");
	}
}
