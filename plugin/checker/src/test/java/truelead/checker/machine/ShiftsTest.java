package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShiftsTest {

	private static final String START = "G21 G90 G54 G0 X0 Y0 Z10.";

	@Test
	void aLocalZeroShiftsWhatFollowsAndIsTakenBack() {
		Followed run = Followed.milling(START, "G52 X100. Y50.", "G0 X1. Y2.", "G52 X0 Y0", "G0 X1. Y2.");
		assertThat(run.ends()).containsExactly("0,0,10", "101,52,10", "1,2,10");
	}

	@Test
	void aRotationTurnsAboutItsPoint() {
		Followed run = Followed.milling(START, "G68 X10. Y10. R90.", "G0 X20. Y10.", "G69", "G0 X20. Y10.");
		assertThat(run.ends()).containsExactly("0,0,10", "10,20,10", "20,10,10");
	}

	@Test
	void incrementsAreTurnedToo() {
		assertThat(Followed.milling(START, "G68 X0 Y0 R90.", "G91 G0 X5.").end()).satisfies(end -> {
			assertThat(end.x()).isEqualTo(0, within(1e-9));
			assertThat(end.y()).isEqualTo(5, within(1e-9));
		});
	}

	@Test
	void aMirrorFlipsArcsAndSaysSo() {
		Followed run = Followed.milling(START, "G51.1 X0", "G0 X10. Y0", "G3 X10. Y0 Z8.5 I-10. F100", "G50.1 X0", "G0 X10.");
		Step.Arc arc = run.arcs().get(0);
		assertThat(arc.sweep()).isEqualTo(-2 * Math.PI, within(1e-9));
		assertThat(Followed.text(arc.from())).isEqualTo("-10,0,10");
		assertThat(arc.modal().mirrored()).isTrue();
		assertThat(run.state().mirrored()).isFalse();
	}

	@Test
	void twoMirrorsFlipNothing() {
		Followed run = Followed.milling(START, "G51.1 X0", "G51.1 Y0", "G0 X10. Y5.");
		assertThat(run.ends()).containsExactly("0,0,10", "-10,-5,10");
		assertThat(run.state().mirrored()).isFalse();
	}

	@Test
	void aScaleBelowZeroMirrors() {
		Followed run = Followed.milling(START, "G51 X0 Y0 Z0 I-1. J1. K1.", "G0 X10. Y5.", "G50", "G0 X10.");
		assertThat(run.ends()).containsExactly("0,0,10", "-10,5,10", "10,5,10");
	}

	@Test
	void aScaleEnlargesArcsAndStrokes() {
		Followed run = Followed.milling(START, "G51 X0 Y0 Z0 P2.", "G0 X10. Y0", "G3 I-10.", "G81 X5. Y5. Z-3. R1. F100");
		assertThat(run.arcs().get(0).startRadius()).isEqualTo(20, within(1e-9));
		assertThat(run.stroke(0).bottom()).isEqualTo(-6, within(1e-9));
		assertThat(run.state().scaled()).isTrue();
	}

	@Test
	void polarWordsAreRadiusAndAngle() {
		Followed run = Followed.milling(START, "G16", "G81 X50. Y0 Z-5. R2. F100.", "Y90.", "G91 Y90.", "G15 G90", "G80");
		assertThat(run.places()).containsExactly("50,0", "0,50", "-50,0");
	}

	/** RS-274: a radius and an angle about the program's zero; what is left out is as it is at the place now. */
	@Test
	void radiusAndAngleBySigns() {
		Followed run = Followed.milling(START, "G0 @50 ^90", "^180", "G0 @25", "G91 ^90",
				"G90 G81 @10 ^[2*45] Z-5. R2. F100.", "^0", "G80");
		assertThat(run.ends().subList(1, 5)).containsExactly("0,50,10", "-50,0,10", "-25,0,10", "0,-25,10");
		assertThat(run.places()).containsExactly("0,10", "10,0");
	}

	@Test
	void aSignOfARadiusAloneIsNoMotion() {
		assertThat(Followed.milling(START, "G0 X5.", "@714").ends()).containsExactly("0,0,10", "5,0,10");
	}

	@Test
	void g92CallsThePresentPlaceSo() {
		Followed run = Followed.milling(START, "G92 X100.", "G0 X110.", "G92.1", "G0 X1.");
		assertThat(run.ends()).containsExactly("0,0,10", "10,0,10", "1,0,10");
		assertThat(run.state().frame()).isZero();
	}

	@Test
	void g92AtAnUnknownPlaceMakesAnotherFrameThatIsTheSameWhenSaidAgain() {
		Followed run = Followed.milling("G28 X0 Y0 Z0", "G92 X200. Y100. Z50.", "G0 X0 Y0", "G28 X0 Y0 Z0",
				"G92 X200. Y100. Z50.", "G0 X0 Y0");
		assertThat(run.moves().get(2).modal().frame()).isNotZero().isEqualTo(run.state().frame());
		assertThat(Followed.text(run.end())).isEqualTo("0,0,50");
	}

	@ParameterizedTest
	@CsvSource({"1, G54", "6, G59", "7, G59.1", "9, G59.3"})
	void offsetDataMakesAFrameOfItsOwnThatComesBack(int number, String offset) {
		String data = "G10 L2 P" + number + " Y0 X";
		Followed run = Followed.milling(data + "50.", offset + " G0 X1.", data + "90.", "G0 X1.", data + "50.", "G0 X1.");
		assertThat(run.moves()).extracting(move -> move.modal().frame()).satisfies(frames -> {
			assertThat(frames.get(0)).isEqualTo(frames.get(2)).isNotEqualTo(frames.get(1));
		});
	}

	@Test
	void toolDataMovesNothing() {
		Followed run = Followed.milling(START, "G10 L12 P1 R5.", "G10 L50", "N1234 P1 R3", "G11", "G0 X1.");
		assertThat(run.ends()).containsExactly("0,0,10", "1,0,10");
		assertThat(run.state().frame()).isZero();
	}

	@Test
	void cyclesAreTurnedWithTheirPattern() {
		Followed run = Followed.milling(START, "G68 X0 Y0 R30.", "G81 X10. Y0 Z-5. R2. F100.", "G69", "G80");
		assertThat(run.places()).containsExactly("8.66,5");
	}
}
