package truelead.checker.rule.milling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;

/** Threads of a lathe whose passes a loop or an expression makes. */
class ComputedPassesTest {

	/** Two starts in a loop, the angle in thousandths of a degree. */
	@Test
	void theAngleOfAStartIsWorkedOut() {
		String stem = """
				G21 G99
				T0707 (M16X4P2)
				G97 S400 M3
				G0 X20. Z10.
				#104=0
				N10 #105=.3
				N20 G0 X[16.-2*#105]
				G32 Z-25. F4. Q[#104*360000/2]
				G0 X20.
				Z10.
				#105=#105+.1545
				IF[#105LE1.228]GOTO20
				#104=#104+1
				IF[#104LT2]GOTO10
				G0 X100. Z50.
				M30
				""";
		assertThat(said(stem)).isEmpty();
		assertThat(said(stem.replace("*360000/2]", "*90000/2]"))).singleElement().asString()
				.startsWith("helix-uneven passes from here on begin 0.5 mm beside the groove of the first one");
	}

	/** The same by name, in degrees. */
	@Test
	void theAngleOfAStartByNameIsWorkedOut() {
		String stem = """
				G18 G71 G90 G95 DIAMON
				T7 D1 ; M16X4P2
				G97 S400 M3
				R4=0
				GANG:
				R5=.3
				PASS:
				G0 X=16-2*R5 Z10
				G33 Z-25 K4 SF=R4*180
				G0 X20
				R5=R5+.1545
				IF R5<=1.228 GOTOB PASS
				R4=R4+1
				IF R4<2 GOTOB GANG
				G0 X100 Z50
				M30
				""";
		assertThat(said(stem)).isEmpty();
		assertThat(said(stem.replace("R4*180", "R4*90"))).singleElement().asString()
				.startsWith("helix-uneven passes from here on begin 1 mm beside the groove of the first one");
	}

	/** Height and first pass in the cycle of two blocks: in thousandths, or in whole units. */
	@Test
	void theDepthsOfACycleAreWorkedOut() {
		String stem = """
				G21 G99
				T0505 (M27X2 THREAD)
				G97 S550 M3
				#1=2.
				G0 X30. Z8.
				G76 P020060 Q80 R.03
				G76 X[27.-1.2268*#1] Z-36. P[ROUND[613.4*#1]] Q350 F#1
				G0 X100. Z100.
				M30
				""";
		assertThat(said(stem)).isEmpty();
		assertThat(said(stem.replace("Q350", "Q1200"))).singleElement().asString()
				.startsWith("passes-too-heavy the first pass takes 1.2 mm of the thread's 1.227 mm at once");
		assertThat(said(stem.replace("Q350", "Q[.6*#1]"))).singleElement().asString()
				.startsWith("passes-too-heavy the first pass takes 1.2 mm of the thread's 1.227 mm at once");
	}

	private static List<String> said(String text) {
		return Samples.heard(MachineProfile.named("turning"), text);
	}
}
