package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A subprogram by itself taps in increments from a level that nobody knows: what can be said for certain is said all the same. */
class SubprogramAloneTest {

	private static List<String> found(String cycle) {
		return SampleCheck.of("O1001 (M8X1.25 TAP, 20 DEEP)\nG21 M3 S500\n" + cycle + "\nX20.\nG90 G80\nM99\n").stream()
				.filter(f -> f.severity() != Severity.INFORMATION).map(f -> f.rule() + " " + f.severity()).toList();
	}

	@Test
	void theDepthIsItsCallersAndThatIsSaid() {
		assertThat(found("G91 G84 X10. Z-27. R-3. F625.")).isEmpty();
		assertThat(SampleCheck.of("O1001 (M8X1.25 TAP)\nG90 G21 G84 X10. Y0 Z-17. R3. F#9\nX20.\nG80\nM99\n")).extracting(Finding::message)
				.contains("the feed of the thread is not known: #9 is not set in the program: the program that calls this one gives it, "
						+ "check it there (1 more such place)");
	}

	@Test
	void theFeedIsHeldAgainstThePitchOverTheWayOfTheTap() {
		assertThat(found("G91 G84 X10. Z-27. R-3. F600.")).containsExactly("feed-off-pitch ERROR");
	}

	@Test
	void aWayShorterThanTheDepthCalledOutIsTooShort() {
		assertThat(found("G91 G84 X10. Z-15. R-3. F625.")).containsExactly("thread-too-short ERROR");
	}

	@Test
	void aDepthOfTheWrongSignThreadsNothing() {
		assertThat(found("G91 G84 X10. Z27. R-3. F625.")).contains("plane-heights-wrong ERROR");
	}

	@Test
	void anRThatCountsUpwardsIsAnAbsoluteOne() {
		assertThat(found("G91 G84 X10. Z-27. R3. F625.")).contains("plane-heights-wrong ERROR");
	}

	@Test
	void absoluteDepthsFromAnUnknownShiftSayNothingOfTheWay() {
		assertThat(found("G90 G52 Z#500\nG84 X10. Z-15. R3. F600.")).doesNotContain("thread-too-short ERROR");
	}

	@Test
	void theCycleIsEndedByItsCaller() {
		assertThat(SampleCheck.of("O1001 (M8X1.25 TAP)\nG21 M3 S500\nG84 X10. Y0 Z-17. R3. F625.\nX20.\nM99\n"))
				.noneMatch(f -> f.rule().equals("cycle-left-on"));
	}

	@Test
	void itsTitleDoesNotNameTheToolChangedToLastInTheTextBefore() {
		String program = """
				O1
				G21 G90 G54
				T1 M6 (D6.8)
				G0 X0 Y0 S2000 M3
				G43 H1 Z20. M98 P1001
				G28 Z20.
				T2 M6 (M8)
				G90 G0 X0 Y0 S500 M3
				G43 H2 Z20.
				G84 X0 Y0 Z-17. R3. F625.
				G80
				M30
				O1001 (DRILL SUB)
				G81 X0 Y0 Z-24. R3. F300.
				G80
				M99
				""";
		assertThat(SampleCheck.of(program)).noneMatch(f -> f.severity() != Severity.INFORMATION);
	}
}
