package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Jumps on what only the machine knows: counters of tool life, results of a probe. */
class DetourTest {

	@Test
	void aTapThatIsNotWornOutGoesOnBehindTheAlarm() {
		Followed run = Followed.milling("#501=#501+1", "IF [#501 LT 200] GOTO 90", "G91 G28 Z0", "#501=0", "#3000=1 (CHANGE TAP)",
				"N90 G90 G0 X1.", "M30");
		assertThat(run.lost()).isEmpty();
		assertThat(run.ends()).contains("1,?,?");
	}

	@Test
	void aJumpToTheEndOrToAnAlarmIsNotMade() {
		Followed run = Followed.milling("IF [#100 EQ 1] GOTO 999", "IF [#5063 GT 0.5] GOTO 800", "G0 X1.", "N999 M5", "M30",
				"N800 G91 G28 Z0", "#3000=2 (NO PART)");
		assertThat(run.lost()).isEmpty();
		assertThat(run.ends()).contains("1,?,?");
	}

	@Test
	void whereBothWaysEndTheOneWithoutTheAlarmIsTaken() {
		assertThat(Followed.milling("G0 X1.", "IF [#501 GT 60.05] GOTO 900", "IF [#501 LT 59.95] GOTO 900", "M30",
				"N900 #3000=1 (BORE OUT OF LIMITS)", "M30").lost()).isEmpty();
		assertThat(Followed.milling("G0 X1.", "IF [#501 LT 60.] GOTO 900", "#3000=1 (BORE OUT OF LIMITS)", "N900 M5", "M30").lost())
				.isEmpty();
	}

	@Test
	void whatIsSetOnOneWayAloneIsNotKnownBehindIt() {
		Followed run = Followed.milling("#1=5.", "IF [#500 EQ 1] GOTO 10", "#1=7.", "N10 G0 X#1");
		assertThat(run.lost()).containsExactly("X is not known: #500 is not set in the program");
	}

	@Test
	void operationsThatMayBeLeftOutAreSaid() {
		Followed run = Followed.milling("IF [#500 EQ 1] GOTO 10", "G0 X3.", "N10 G0 Y1.", "M30");
		assertThat(run.lost()).containsExactly("which way the program goes here is not known: #500 is not set in the program");
	}
}
