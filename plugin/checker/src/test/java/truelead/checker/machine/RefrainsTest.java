package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.grammar.ProgramText;

/** What comes again and again is followed in one step, and makes the steps that it makes block by block. */
class RefrainsTest {

	private static final List<String> THREAD = List.of("G0 X%d. Y0.", "G1 Z-12.75 F800.", "G41 D4 X%d.5", "G3 X%d.75 Z-12. I1.5 J0. F150.",
			"G3 Z-10.5 I-4. J0.", "G40 G1 X%d.", "G0 Z25.");

	/** The first thread of the program is followed by itself too: what comes before the first arc of a chunk is not looked at. */
	@Test
	void aHelixAtPlaceAfterPlaceIsOneStepButForTheFirstTwoAndTheLast() {
		Steps steps = run(threads(20, ""), true);
		assertThat(steps.again).singleElement().satisfies(again -> {
			assertThat(again.copies().count()).isEqualTo(16);
			assertThat(again.copies().stepsEach()).isEqualTo(7);
			assertThat(again.copies().x(0)).isEqualTo(3);
			assertThat(again.copies().steps(3)).allSatisfy(step -> assertThat(step.block().line()).isBetween(43, 49));
			assertThat(again.block().line()).isEqualTo(133);
		});
		assertSame(threads(20, ""));
	}

	@Test
	void aFeedSetInATurnNamesTheWordOfThatTurn() {
		Step.Again again = run(threads(20, ""), true).again.get(0);
		List<Step> steps = again.copies().steps(5);
		assertThat(steps.get(6).modal().feed().word().orElseThrow().block().line()).isEqualTo(1 + 8 * 7 + 3);
	}

	@Test
	void whatStopsInBetweenIsNotPassedOver() {
		assertThat(run(threads(20, "M0"), true).again).isEmpty();
		assertThat(run(threads(20, "G68 R10."), true).again).isEmpty();
	}

	@Test
	void aRefrainThatBeginsInIncrementsIsFollowedBlockByBlock() {
		List<String> lines = threads(20, "");
		lines.set(0, "G21 G91 G17");
		assertThat(run(lines, true).again).isEmpty();
	}

	@Test
	void aTurnThatIsNotMovedAsAWholeEndsTheRefrain() {
		List<String> lines = threads(20, "");
		lines.set(1 + 7 * 10 + 5, "G40 G1 X11.");
		assertThat(run(lines, true).again).extracting(again -> again.copies().count()).containsExactly(6, 6);
	}

	@Property(tries = 150)
	void theStepsAreThoseOfEachBlock(@ForAll Random random) {
		assertSame(HelixPrograms.of(random, 10 + random.nextInt(60)));
	}

	private static void assertSame(List<String> lines) {
		ProgramFile program = program(lines);
		List<Step> single = run(program, false).all;
		List<Step> together = run(program, true).all;
		assertThat(together).hasSameSizeAs(single);
		for (int i = 0; i < single.size(); i++) {
			assertThat(together.get(i)).isEqualTo(single.get(i));
		}
	}

	private static List<String> threads(int count, String between) {
		List<String> lines = new ArrayList<>(List.of("G21 G90 G17 G40"));
		for (int i = 0; i < count; i++) {
			for (String block : THREAD) {
				lines.add(block.replace("%d", Integer.toString(i)));
			}
			lines.addAll(between.isEmpty() ? List.of() : Collections.nCopies(1, between));
		}
		return lines;
	}

	private static ProgramFile program(List<String> lines) {
		return new ProgramFile("A.NC", ProgramText.of(String.join("\n", lines)));
	}

	private static Steps run(List<String> lines, boolean together) {
		return run(program(lines), together);
	}

	private static Steps run(ProgramFile program, boolean together) {
		Steps steps = new Steps(together);
		Interpreter.run(program, ProgramFolder.EMPTY, MachineProfile.generic(), steps);
		return steps;
	}

	/** All steps, those that come again one by one. */
	private static final class Steps implements StepSink {

		private final List<Step> all = new ArrayList<>();
		private final List<Step.Again> again = new ArrayList<>();
		private final boolean together;

		Steps(boolean together) {
			this.together = together;
		}

		@Override
		public void accept(Step step) {
			if (step instanceof Step.Again copies) {
				again.add(copies);
				for (int i = 0; i < copies.copies().count(); i++) {
					all.addAll(copies.copies().steps(i));
				}
			} else {
				all.add(step);
			}
		}

		@Override
		public boolean takesCopies() {
			return together;
		}
	}
}
