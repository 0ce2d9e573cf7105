package truelead.checker.profile;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import truelead.checker.program.LengthUnit;

/** A machine profile seen as a sheet of keys, and changed line by line. */
class ProfileSheetTest {

	private static final String TEXT = """
			# the mill in bay 2
			name = Mill in bay 2
			base = milling-inch

			M135 =rigid-tap-on
			tapping-speed-limit = fast
			""";

	private static ProfileEntry entry(String text, String key) {
		return ProfileSheet.of(text).entries().stream().filter(entry -> entry.key().equals(key)).findFirst().orElseThrow();
	}

	@Test
	void whatTheProfileDoesNotSayComesFromItsBase() {
		assertThat(entry(TEXT, "unit")).satisfies(unit -> {
			assertThat(unit.value()).isEqualTo("inch");
			assertThat(unit.own()).isFalse();
			assertThat(unit.purpose()).isEqualTo("unit of a program that states none");
			assertThat(unit.choices()).containsExactly("mm", "inch");
		});
		assertThat(entry(TEXT, "name").value()).isEqualTo("Mill in bay 2");
		assertThat(entry("", "name").value()).isEmpty();
	}

	@Test
	void everyKeyAndEveryCodeIsInTheSheetOnce() {
		assertThat(ProfileSheet.of(TEXT).entries()).extracting(ProfileEntry::key).doesNotHaveDuplicates()
				.contains("M135", "G84", "call-depth").containsSubsequence("unit", "call-depth", "G0", "G84", "M3", "M135");
		assertThat(entry(TEXT, "M135")).satisfies(code -> {
			assertThat(code.value()).isEqualTo("rigid-tap-on");
			assertThat(code.own()).isTrue();
		});
		assertThat(entry(TEXT, "G84").value()).isEqualTo("tap");
	}

	@Test
	void aLineThatCannotBeUsedIsNamedAndItsKeyStillShowsWhatWasWritten() {
		assertThat(ProfileSheet.of(TEXT).problems()).singleElement().satisfies(problem -> {
			assertThat(problem.line()).isEqualTo(5);
			assertThat(problem.message()).isEqualTo("tapping-speed-limit takes a number from 0 to 1000000, not 'fast'");
		});
		assertThat(entry(TEXT, "tapping-speed-limit").value()).isEqualTo("fast");
	}

	@Test
	void aChangeTouchesItsLineAlone() {
		assertThat(ProfileSheet.of(TEXT).with("tapping-speed-limit", "2000").text()).isEqualTo(TEXT.replace("fast", "2000"));
		assertThat(ProfileSheet.of(TEXT).with("holder", "synchro").text()).isEqualTo(TEXT + "holder = synchro\n");
		assertThat(ProfileSheet.of(TEXT).without("M135").text()).isEqualTo(TEXT.replace("M135 =rigid-tap-on\n", ""));
		assertThat(ProfileSheet.of("base = rs274\r\n").with("unit", "inch").text()).isEqualTo("base = rs274\r\nunit = inch\r\n");
	}

	@Test
	void ofTwoLinesForAKeyTheLastCountsAndIsChanged() {
		String twice = "unit = mm\nUnit = inch\n";
		assertThat(entry(twice, "unit").value()).isEqualTo("inch");
		assertThat(MachineProfile.read(ProfileSheet.of(twice).with("unit", "mm").text(), "x").profile().unit()).isEqualTo(LengthUnit.MM);
	}

	@Test
	void anUnknownBaseIsAProblemAndTheGenericMillStandsIn() {
		ProfileSheet sheet = ProfileSheet.of("base = router\n");
		assertThat(sheet.base()).isEqualTo("milling-metric");
		assertThat(sheet.problems()).singleElement().extracting(ProfileProblem::message).asString().contains("base takes milling-metric");
	}
}
