package truelead.checker.callout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.checker.program.LengthUnit;

/** What shops write on drawings, in tool names and tables: a line each in callouts.txt, with the thread that it means, or none. */
class ShopCalloutsTest {

	static Stream<String> lines() {
		try (var in = ShopCalloutsTest.class.getResourceAsStream("/truelead/checker/callouts.txt")) {
			return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> !line.startsWith("#")).toList().stream();
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	@ParameterizedTest
	@MethodSource("lines")
	void meansThisAndNothingElse(String line) {
		List<String> cells = List.of(line.split(" ; ", -1));

		assertThat(CalloutReader.read(cells.get(0))).extracting(c -> c.spec().designation())
				.containsExactlyElementsOf(cells.get(1).isBlank() ? List.of() : List.of(cells.get(1)));
	}

	@Test
	void severalStartsLeadByAsManyPitches() {
		assertThat(CalloutReader.read("1/2-10 ACME 2 START").get(0).spec().lead()).isEqualTo(5.08);
		assertThat(CalloutReader.read("TR 20x8(P4)").get(0).spec().lead()).isEqualTo(8);
	}

	@Test
	void aNumberBeforeAFractionCountsHolesOnlyWhereHolesAreSpokenOf() {
		assertThat(CalloutReader.read("3  5/16-18 TAP").get(0).count()).isEmpty();
		assertThat(CalloutReader.read("TAP 4 1/4-20 HOLES").get(0).count()).hasValue(4);
	}

	@Test
	void aWholeNumberBehindAnInchThreadThatNoHoleIsAsDeepAsIsNoDepth() {
		assertThat(CalloutReader.read("10-24 UNC X 4").get(0).count()).hasValue(4);
		assertThat(CalloutReader.read("1/4-20 UNC X 12").get(0).count()).isEmpty();
		assertThat(CalloutReader.read("1/4-20 UNC X 12").get(0).depthMm(LengthUnit.INCH)).isEmpty();
		assertThat(CalloutReader.read("1/4-20 UNC X 12").get(0).depthMm(LengthUnit.MM)).contains(12.0);
		assertThat(CalloutReader.read("1 1/4-7 UNC X 4").get(0).depthMm(LengthUnit.INCH)).contains(101.6);
		assertThat(CalloutReader.read("10-24 UNC X .4").get(0).depthMm(LengthUnit.INCH)).hasValueSatisfying(depth -> assertThat(depth)
				.isCloseTo(10.16, within(1e-9)));
	}

	@Test
	void aBareDepthThatIsAbsurdInTheProgramsUnitIsInTheThreads() {
		Callout inch = CalloutReader.read("10-32 UNF-2B .50 DEEP").get(0);
		Callout metric = CalloutReader.read("M8 TAP 20 DEEP").get(0);

		assertThat(inch.mm(inch.depth().orElseThrow(), LengthUnit.MM)).isEqualTo(12.7);
		assertThat(metric.mm(metric.depth().orElseThrow(), LengthUnit.INCH)).isEqualTo(20);
		assertThat(metric.mm(metric.depth().orElseThrow(), LengthUnit.MM)).isEqualTo(20);
	}

	@ParameterizedTest
	@ValueSource(strings = {"M6 THREAD DEPTH 15", "M6 DEPTH OF THREAD 15", "M6 FULL THREAD 15", "M6 15 MIN FULL THREAD",
			"M6 PROF. ROSCA 15", "M6 PROFONDITA FILETTO 15", "M6 PROF TARAUDAGE 15", "M6 GEWINDETIEFE 15",
			"M6 BOHRTIEFE 20 GEWINDETIEFE 15", "M6 GANGDJUP 15", "M6 DRAADDIEPTE 15", "M6X1-6H X 15", "M6 - 15 DEEP",
			"M6 X 15 DP / 22 DRILL", "M6 15 DEEP / DRILL 22 DEEP", "M6 NUTZLÄNGE 15", "G1 15 DEEP", "G1 1/4 X 15 DP"})
	void depthOfTheThread(String comment) {
		assertThat(CalloutReader.read(comment).get(0).depth().orElseThrow().value()).isEqualTo(15);
	}

	@ParameterizedTest
	@ValueSource(strings = {"M8 15 DEEP / 6.8 DRILL", "G1 1/4", "G1 Z-15", "THREADMILL COMB 3.0 X 12 TEETH"})
	void noThreadToBeCut(String comment) {
		assertThat(CalloutReader.read(comment)).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = {"EG M8", "M8X1.25 EG", "1/4-20 STI TAP", "M8 INSERT TAP", "TAP M8 FOR INSERT", "WIRE INSERT M8 TAP",
			"GEWINDEEINSATZ M8"})
	void tappedOversizeForAWireInsert(String comment) {
		assertThat(CalloutReader.read(comment)).singleElement().extracting(Callout::wireInsert).isEqualTo(true);
	}

	@ParameterizedTest
	@ValueSource(strings = {"THREAD MILL INSERT M30X2", "M8 TAP", "INSERT DRILL 20, TAP M24"})
	void insertsOfACutterAreNone(String comment) {
		assertThat(CalloutReader.read(comment)).allSatisfy(c -> assertThat(c.wireInsert()).isFalse());
	}
}
