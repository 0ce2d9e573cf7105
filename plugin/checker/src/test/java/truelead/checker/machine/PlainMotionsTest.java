package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.Setting;

/**
 * What is made straight from the text is what the words make one by one: small letters mean the same to a control, and are never made
 * straight from the text.
 */
class PlainMotionsTest {

	@Property(tries = 100)
	void aTurningProgramInSmallLettersIsTheSame(@ForAll Random random) {
		assertSame(MachineProfile.named("turning"), random, "U-3.", "W2.5", "G28 U0", "X20. C45.", "G99 G1 Z-5. F0.2");
	}

	@Property(tries = 60)
	void aMillingProgramInSmallLettersIsTheSame(@ForAll Random random) {
		assertSame(MachineProfile.generic(), random, "A90.", "X1. B-30.", "G2 X5. Y1. CR=4.", "G3 X2. Y2. R3. A5.", "G41 D1 X3.",
				"G40 Y1.");
	}

	private static void assertSame(MachineProfile profile, Random random, String... others) {
		List<String> lines = new ArrayList<>(List.of("G21 G90", "G0 X50. Z5.", "G1 Z-1. F0.3"));
		String[] common = {"G91", "G90", "G0", "G1", "F0.1", "M8", "G20", "G21", "G55", "G54", "G52 X1.", "G52 X0", "X#5",
				"G2 X9. Z-2. R4.", "G81 Z-9. R1.", "G80", "G18", "G17", "G4 P100", "/ X7.", "N5"};
		for (int i = 0; i < 150; i++) {
			lines.add(switch (random.nextInt(8)) {
				case 0 -> common[random.nextInt(common.length)];
				case 1 -> others[random.nextInt(others.length)];
				default -> move(random);
			});
		}
		Followed straight = Followed.on(profile, lines.toArray(String[]::new));
		Followed wordByWord = Followed.on(profile, lines.stream().map(line -> line.toLowerCase(Locale.ROOT)).toArray(String[]::new));
		assertThat(said(straight)).isEqualTo(said(wordByWord));
	}

	private static String feed(Setting feed) {
		return feed.value() + feed.word().map(word -> " " + word.block().line() + " " + word.span() + " " + word.decimals() + word.literal()
				+ word.written().toUpperCase(Locale.ROOT)).orElse("");
	}

	private static String move(Random random) {
		String code = random.nextInt(4) == 0 ? "G" + random.nextInt(2) + " " : "";
		String[] axes = {"X", "Z", "XZ", "XYZ", "Y"};
		StringBuilder line = new StringBuilder(code + (random.nextInt(6) == 0 ? "F0." + random.nextInt(9) + " " : ""));
		for (char axis : axes[random.nextInt(axes.length)].toCharArray()) {
			line.append(axis).append(random.nextInt(60) - 20).append(random.nextBoolean() ? "." : ".125").append(' ');
		}
		return line.toString().strip();
	}

	/** All that is said of the steps but the text of their blocks. */
	private static List<String> said(Followed run) {
		return run.steps().stream().map(step -> step.getClass().getSimpleName() + " " + step.block().line() + " " + step.modal().rotary()
				+ " " + feed(step.modal().feed()) + " " + step.modal().unit() + (step instanceof Step.Move move ? " " + move.rapid() + " "
				+ Followed.text(move.from()) + " " + Followed.text(move.to()) + " " + move.resolution() : step instanceof Step.Arc arc
				? " " + Followed.text(arc.from()) + " " + Followed.text(arc.to()) + arc.centre() + arc.sweep() + arc.resolution() : ""))
				.toList();
	}
}
