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
		assertThat(plan("plan", "M8", "--stock", "steel", "--hardness", "55HRC", "--report", "json").get("recommended").getAsString()).isEqualTo("thread-mill");
		assertThat(plan("plan", "M8", "--stock", "brass", "--report", "json").get("recommended").getAsString()).isEqualTo("straight-flute");
	}

	@Test
	void littleRoomBelowLeavesTheThreadMill() {
		JsonObject plan = plan("plan", "M8", "--depth", "12mm", "--bottom", "16", "--report", "json");

		assertThat(plan.get("recommended").getAsString()).isEqualTo("thread-mill");
	}

	@Test
	void aLatheGetsTheFiguresAndNoProgramOfAMill() {
		Recorded ran = Recorded.run("plan", "M8", "--machine", "turning");

		assertThat(ran.status()).isEqualTo(1);
		assertThat(ran.out()).contains("drill 6.8").contains("the profile turning is a lathe's").doesNotContain("M30");
	}

	@Test
	void whereNothingFitsItSaysHowDeepEachCouldGo() {
		Recorded ran = Recorded.run("plan", "M8", "--depth", "12", "--bottom", "13");

		assertThat(ran.status()).isEqualTo(1);
		assertThat(ran.out()).contains("of full thread at most").contains("no method makes this thread as asked").doesNotContain("M30");
	}

	@Test
	void theSpottingDrillStaysAboveTheBottomToo() {
		Recorded ran = Recorded.run("plan", "G 1/2", "--depth", "1mm", "--bottom", "9mm");

		assertThat(ran.status()).isEqualTo(1);
		assertThat(ran.out()).contains("the spotting drill goes to 10.792 mm").doesNotContain("M30");
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

		assertThat(page).startsWith("<!DOCTYPE html>").contains("Recommended: forming tap").contains("G84 Z-15.75").contains("about 8.2 N m").contains("reduced rapid")
				.doesNotContain("http:").doesNotContain("https:").doesNotContain("<script");
		assertThat(page.indexOf("Recommended")).isLessThan(page.indexOf("for</th>"));
	}

	@ParameterizedTest
	@ValueSource(strings = {"--depth=-1", "--depth=deep", "--hardness=hard", "--hardness=99HRC", "--stock=cheese", "--stock=a)b", "--count=0", "--bottom=0x10", "--machine=none"})
	void badOptionsAreOneClearLine(String option) {
		Recorded ran = Recorded.run("plan", "M8", option);

		assertThat(ran.status()).isEqualTo(2);
		assertThat(ran.out()).isEmpty();
		assertThat(ran.err()).startsWith("truelead: ").doesNotContain("Exception").doesNotContain("fault of Truelead");
	}
}
