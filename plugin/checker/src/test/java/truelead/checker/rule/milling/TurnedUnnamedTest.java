package truelead.checker.rule.milling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Severity;

/** Threads of a lathe that nobody names, and the passes, starts, ends and lengths of those that somebody does. */
class TurnedUnnamedTest {

	private static final String STUD = """
			G21 G99
			T0101
			G97 S1000 M3
			G0 X38. Z2.
			G1 Z-50. F.25
			X43.
			G0 Z2.
			X29.
			G1 X32.85 Z-2.1 F.12
			Z-48.
			X39.
			G0 X100. Z100.
			T0303
			S500 M3
			G0 X36. Z8.
			X32.3
			G32 Z-44. F2.
			G0 X36.
			Z8.
			X31.6
			G32 Z-44. F2.
			G0 X36.
			Z8.
			X30.9
			G32 Z-44. F2.
			G0 X36.
			Z8.
			X30.546
			G32 Z-44. F2.
			G0 X100.
			Z100.
			M30
			""";

	private static final String NUT = """
			G21 G99
			T0202
			G97 S600 M3
			G0 X34. Z2.
			G1 X30.9 Z-1. F.2
			Z-30.
			X28.
			G0 Z2.
			X100. Z100.
			T0404
			S500 M3
			G0 X29. Z6.
			G92 X31.6 Z-26. F2.
			X32.2
			X32.7
			X33.
			G0 X100. Z100.
			M30
			""";

	@Test
	void aStudWithoutAWordIsJudgedByItself() {
		assertThat(said(STUD)).isEmpty();
		assertThat(said(STUD.replace("X31.6\nG32 Z-44. F2.", "X31.6\nG32 Z-44. F1.5"))).singleElement().asString()
				.startsWith("21 feed-off-pitch F1.5 cuts a lead of 1.500 mm, the other 3 passes of the thread 2.000: ").endsWith("F2");
		assertThat(said(STUD.replace("Z8.\nX30.9\n", "Z7.\nX30.9\n"))).singleElement().asString().startsWith("23 helix-uneven");
		assertThat(said(STUD.replace("X30.546\nG32 Z-44.", "X30.546\nG32 Z-49."))).singleElement().asString()
				.startsWith("29 thread-into-shoulder");
		assertThat(said(STUD.replace("X30.546", "X31.546"))).isNotEmpty()
				.allSatisfy(line -> assertThat(line).startsWith("28 helix-off-size the deepest pass of the thread outside goes to"));
		assertThat(said(STUD.replace("X31.6\n", "X29.6\n"))).isNotEmpty().allSatisfy(line -> assertThat(line).startsWith("20 "));
		assertThat(said(STUD.replace("S500 M3", "G96 S90 M3"))).singleElement().asString().contains("speed-changed");
		assertThat(said(STUD.replace("X31.6\nG32 Z-44. F2.\nG0 X36.", "X31.6\nG32 Z-44. F2.\nG0 X26."))).singleElement().asString()
				.contains("exit-scars-thread");
		assertThat(said(STUD.replace("X32.85", "X36.85").replace("Z-44.", "Z-60."))).as("no thread is as wide as it is turned").isEmpty();
	}

	@Test
	void theBoreOfANutThatNobodyNamesIsDeepEnough() {
		assertThat(said(NUT)).isEmpty();
		assertThat(said(NUT.replace("Z-26.", "Z-32."))).singleElement().asString().startsWith("13 drill-too-shallow");
		assertThat(said(NUT.replace("X30.9", "X31.9"))).as("another thread, or none").isEmpty();
	}

	@Test
	void eachStartOfAThreadNamedByOneStartIsMeasured() {
		String two = """
				G21 G99
				T0909 (M30X1.5)
				G97 S400 M3
				G0 X32. Z8.
				G76 P020060 Q50 R30
				G76 X28.16 Z-38. P920 Q250 F3.
				G0 Z9.5
				G76 P020060 Q50 R30
				G76 X28.16 Z-38. P920 Q250 F3.
				G0 X100. Z80.
				M30
				""";
		assertThat(said(two)).isEmpty();
		assertThat(said(two.replace("G0 Z9.5", "G0 Z9."))).singleElement().asString().startsWith("7 helix-uneven");
		String shallow = two.substring(0, two.lastIndexOf("X28.16")) + "X29.16" + two.substring(two.lastIndexOf("X28.16") + 6);
		assertThat(said(shallow)).singleElement().asString().startsWith("9 helix-off-size the deepest pass of this start");
	}

	@Test
	void theOtherEndHasAShoulderOfItsOwn() {
		String ends = end("-39.5", "-35.") + "M0 (TURN PART AROUND)\n" + end("-33.5", "-29.") + "M30\n";
		assertThat(said(ends)).isEmpty();
		assertThat(said(ends.replace("Z-29. F", "Z-35. F"))).singleElement().asString().contains("thread-into-shoulder");
	}

	private static String end(String shoulder, String thread) {
		return """
				T0101
				G21 G99 G97 S1000 M3
				G0 X14. Z2.
				G1 X15.9 Z-.5 F.1
				Z%1$s
				X22.
				Z-60.
				X24.
				G0 X100. Z100.
				T0303 (M16X1.5)
				S800 M3
				G0 X18. Z6.
				G92 X15.2 Z%2$s F1.5
				X14.8
				X14.5
				X14.3
				X14.16
				G0 X100. Z100.
				""".formatted(shoulder, thread);
	}

	@Test
	void aThreadIsAsLongAsItsCommentSays() {
		String bolt = """
				G21 G99
				T0101
				G97 S1000 M3
				G0 X10. Z2.
				G1 X13.9 Z-1.5 F.1
				Z-25.
				X19.
				G0 X100. Z100.
				T0303 (M14X1.5 X 20 LONG)
				S900 M3
				G0 X16. Z5.
				G76 P010060 Q50 R20
				G76 X12.16 Z-20.5 P920 Q200 F1.5
				G0 X100. Z100.
				M30
				""";
		assertThat(said(bolt)).isEmpty();
		assertThat(said(bolt.replace("Z-20.5", "Z-15."))).singleElement().asString()
				.isEqualTo("13 thread-too-short the thread ends 15 mm behind the face, called out are 20 mm: 5 mm short; Z-20 or beyond");
		String titled = "(M14X1.5 X 20 LONG)\n" + bolt.replace(" (M14X1.5 X 20 LONG)", "");
		assertThat(said(titled.replace("Z-20.5", "Z-15."))).singleElement().asString().startsWith("14 thread-too-short");
		assertThat(said(titled.replace("Z-20.5", "Z-10."))).as("a bolt, threaded over a part of its length").isEmpty();
		assertThat(said(titled.replace("20 LONG", "60 LONG").replace("Z-20.5", "Z-18."))).as("longer than is turned").isEmpty();
		assertThat(said(titled.replace("20 LONG", "25 LONG").replace("Z-20.5", "Z-18."))).as("a bolt, 25 to its head").isEmpty();
		assertThat(said(titled.replace(" LONG", "").replace("Z-20.5", "Z-15."))).as("a bolt of 20").isEmpty();
		String inside = "(M33X2 X 25 DEEP)\n" + NUT;
		assertThat(said(inside)).isEmpty();
		assertThat(said(inside.replace("Z-26.", "Z-16."))).singleElement().asString().startsWith("14 thread-too-short");
	}

	@Test
	void aTaperThreadsLastPassCutsAir() {
		String nipple = """
				G20 G99
				T0404 (1/2-14 NPT)
				G97 S700 M3
				G0 X1. Z.3
				G92 X.81 Z-.6 R-.0281 F.0714
				X.78
				X.755
				X.738
				X.738
				M30
				""";
		assertThat(said(nipple)).isEmpty();
		assertThat(said(nipple.replace("X.738\nM30", "X.768\nM30"))).singleElement().asString()
				.startsWith("9 passes-too-heavy the last pass, to diameter 0.768 in, cuts air");
	}

	@Test
	void aToolThatLeavesByCancellingItsOffsetHasTurnedTheOutside() {
		String bar = """
				G21 G99
				T0100
				G97 S4000 M3
				G0 X3.9 Z-0.2 T01
				G1 Z0 F0.05
				X4.95 Z0.6
				Z9
				X9
				G0 T00
				T0300 (M5X0.8)
				S1500 M3
				G0 X6 Z-3 T03
				G92 X4.6 Z8 F0.8
				X4.3
				X4.1
				X4.018
				G0 X9 T00
				M2
				""";
		assertThat(said(bar)).isEmpty();
		assertThat(said(bar.replace("Z8 F0.8", "Z10.5 F0.8"))).singleElement().asString().startsWith("13 thread-into-shoulder");
	}

	private static List<String> said(String program) {
		return Samples.findings(MachineProfile.named("turning"), program).stream().filter(f -> f.severity() != Severity.INFORMATION)
				.map(f -> (f.at().line() + 1) + " " + f.rule() + " " + f.message()).toList();
	}
}
