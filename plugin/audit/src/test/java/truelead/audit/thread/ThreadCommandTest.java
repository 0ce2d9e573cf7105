package truelead.audit.thread;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import truelead.audit.Recorded;

class ThreadCommandTest {

	private static JsonArray json(Object... callouts) {
		Recorded ran = Recorded.run(Stream.concat(Stream.of("thread", "--report", "json"), Stream.of(callouts)).toArray());
		assertThat(ran.status()).isZero();
		return JsonParser.parseString(ran.out()).getAsJsonArray();
	}

	@Test
	void oneFlatArrayInTheOrderAsked() {
		assertThat(json("1 1/4-7 UNC-2B", "M4-4H", "#10-32 UNF-2B")).extracting(e -> e.getAsJsonObject().get("designation").getAsString())
				.containsExactly("1-1/4-7 UNC-2B", "M4x0.7-4H", "#10-32 UNF-2B");
	}

	@Test
	void theKeysOfAThread() {
		JsonObject thread = json("M8-6H").get(0).getAsJsonObject();

		assertThat(thread.keySet()).containsExactly("designation", "nominal", "pitch", "tpi", "class", "minorMin", "minorMax", "pitchMin",
				"pitchMax", "majorMin", "tapDrill", "formDrill", "unit", "source");
		assertThat(thread.get("minorMax").getAsBigDecimal()).isEqualByComparingTo("6.912");
		assertThat(thread.get("tapDrill").getAsBigDecimal()).isEqualByComparingTo("6.8");
		assertThat(thread.get("unit").getAsString()).isEqualTo("mm");
	}

	@Test
	void allClassesWhenNoneIsAsked() {
		assertThat(json("1/4-20")).extracting(e -> e.getAsJsonObject().get("class").getAsString()).containsExactly("1B", "2B", "3B");
		assertThat(json("M20")).extracting(e -> e.getAsJsonObject().get("class").getAsString())
				.containsExactly("4H", "5H", "6H", "7H", "8H", "4G", "5G", "6G", "7G", "8G");
	}

	@Test
	void theLimitsOfTheScrewStandBesideThoseOfTheHole() {
		JsonObject thread = json("M20x1.5-6g").get(0).getAsJsonObject();
		JsonObject bolt = thread.getAsJsonArray("outside").get(0).getAsJsonObject();

		assertThat(bolt.get("class").getAsString()).isEqualTo("6g");
		assertThat(bolt.get("majorMin").getAsString()).isEqualTo("19.732");
		assertThat(bolt.get("pitchMax").getAsString()).isEqualTo("18.994");
		assertThat(Recorded.run("thread", "1/2-13 UNC").out())
				.contains("outside 2A: major diameter 0.4876 to 0.4985, pitch diameter 0.4435 to 0.4485; ring gauge 1/2-13 UNC-2A, "
						+ "go and no-go");
		assertThat(Recorded.run("thread", "M20x1.5-6g").out()).contains("outside 6g: major diameter 19.732 to 19.968")
				.doesNotContain("6g     not in the table", "minor diameter  ");
		assertThat(Recorded.run("thread", "M20x1.5-6H", "1/2-14 NPT").out()).doesNotContain("outside");
	}

	@Test
	void anUnknownCalloutIsToldWithItsNeighboursAndTheOthersArePrinted() {
		Recorded ran = Recorded.run("thread", "M8x1.25-6H", "M6x12");

		assertThat(ran.status()).isEqualTo(2);
		assertThat(ran.out()).startsWith("M8x1.25-6H");
		assertThat(ran.err()).isEqualTo("truelead: \"M6x12\" is no thread that is known here; the nearest spellings: M6x1, M7x1, M8x1\n");
	}

	@Test
	void aThreadOutsideTheTableSaysThatItIsComputed() {
		JsonObject thread = json("M20x3-6H").get(0).getAsJsonObject();

		assertThat(thread.get("minorMin").getAsString()).isEqualTo("16.752");
		assertThat(thread.get("source").getAsString())
				.contains("pitch diameter tolerance not in the table, computed by the formula of ISO 965-1");
	}

	@Test
	void aGradeThatTheStandardLeavesOutIsNotInTheTable() {
		JsonObject thread = json("M1.2x0.25-6H").get(0).getAsJsonObject();

		assertThat(thread.get("minorMin").isJsonNull()).isTrue();
		assertThat(thread.get("source").getAsString()).isEqualTo("not in the table");
	}

	@Test
	void aFamilyKnownByNameAloneIsRefusedByName() {
		Recorded ran = Recorded.run("thread", "VG8");

		assertThat(ran.status()).isEqualTo(2);
		assertThat(ran.err()).contains("\"VG8\" names a tyre valve thread of DIN 7756").contains("written by diameter and pitch");
	}

	@Test
	void trapezoidsAndOtherFormsHaveTheLimitsOfTheirFormulas() {
		JsonObject trapezoid = json("Tr 20x4 LH").get(0).getAsJsonObject();
		JsonObject acme = json("1/2-10 ACME-2G").get(0).getAsJsonObject();

		assertThat(trapezoid.get("designation").getAsString()).isEqualTo("Tr20x4-7H-LH");
		assertThat(trapezoid.get("minorMin").getAsString()).isEqualTo("16.000");
		assertThat(trapezoid.get("minorMax").getAsString()).isEqualTo("16.375");
		assertThat(trapezoid.get("pitchMax").getAsString()).isEqualTo("18.355");
		assertThat(trapezoid.get("majorMin").getAsString()).isEqualTo("20.500");
		assertThat(acme.get("pitchMax").getAsString()).isEqualTo("0.4637");
		assertThat(acme.get("minorMax").getAsString()).isEqualTo("0.4050");
	}

	@Test
	void whatComesFromMemorySaysSo() {
		assertThat(json("M8x1.25-8H").get(0).getAsJsonObject().get("source").getAsString()).contains("from memory");
	}

	@Test
	void theBenchSheetHasDrillsPinsAndTheShortestBlindHole() {
		Recorded ran = Recorded.run("thread", "M6-6H", "--depth", "12");

		assertThat(ran.out()).contains("coarse pitch 1 assumed").contains("go 4.917, no-go 5.153")
				.contains("drill for cutting 5 (5.000), 77.0 % thread").contains("drill for forming 5.55 (5.550), 66 % thread")
				.contains("countersink 6.000 to 6.300")
				.contains("shortest blind hole for 12.000 of thread, cut: full diameter to 17.000, tip of a 118 degree drill at 18.502");
	}

	@Test
	void aDepthThatIsNone() {
		Recorded ran = Recorded.run("thread", "M6", "--depth", "-1");

		assertThat(ran.status()).isEqualTo(2);
		assertThat(ran.err()).contains("--depth -1.0 is no depth of a hole");
	}

	@Test
	void aTextThatIsNoThreadAtAll() {
		Recorded ran = Recorded.run("thread", "M8x", "~".repeat(5000));

		assertThat(ran.status()).isEqualTo(2);
		assertThat(ran.out()).isEmpty();
		assertThat(ran.err()).contains("\"M8x\" is no thread").contains("~...\" is no thread")
				.contains("M8x1.25-6H, 1/4-20 UNC-2B, 1/4-18 NPT");
	}

	@Test
	void aWireInsertIsNotGivenTheSizesOfThePlainThread() {
		Recorded ran = Recorded.run("thread", "M8 STI", "1/4-20 STI");
		assertThat(ran.status()).isEqualTo(2);
		assertThat(ran.out()).isEmpty();
		assertThat(ran.err()).contains("\"M8 STI\" is tapped oversize for a wire insert, and the sizes of the plain thread are too small: "
				+ "minor diameter 8.271 to 8.483 mm, "
				+ "pitch diameter 8.812 mm at least, major diameter 9.624 mm at least; drill 8.4; DIN 8140-2, by its formulas (from "
				+ "memory); the other limits stand in the tables of the insert's maker",
				"\"1/4-20 STI\" is tapped oversize for a wire insert, and the sizes of the plain thread are too small: minor diameter "
				+ "0.2608 in at least, " + "pitch diameter 0.2825 in at least, major diameter 0.3150 in at least; drill H");
	}
}
