package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.Setting;

class ContoursTest {

	/** A program whose blocks go round a square spiral, all aside. */
	private static List<String> spiral(int blocks) {
		List<String> lines = new ArrayList<>(List.of("G21 G90 G0 X0 Y0 Z5.", "G1 Z-1. F300."));
		for (int i = 1; i <= blocks; i++) {
			lines.add(String.format(Locale.ROOT, i % 2 == 0 ? "X%.3f" : "Y%.3f", i * 0.25));
		}
		return lines;
	}

	@Test
	void aLongContourIsOneStepBetweenEightMovesOnEitherSide() {
		List<String> lines = spiral(100);
		lines.add("G0 Z5.");
		Followed run = Followed.milling(lines.toArray(String[]::new));
		Step.Contour contour = run.all(Step.Contour.class).get(0);
		assertThat(run.all(Step.Contour.class)).hasSize(1);
		assertThat(contour.moves() + run.moves().size()).isEqualTo(103);
		assertThat(contour.cutting()).extracting(modal -> modal.feed().value()).containsExactly(300.0);
		assertThat(contour.levels()).isFalse();
		assertThat(run.end().z()).isEqualTo(5);
		assertThat(run.end().x()).isEqualTo(25);
	}

	@Test
	void flatArcsArePartOfAContour() {
		List<String> lines = new ArrayList<>(spiral(40));
		for (int pass = 0; pass < 20; pass++) {
			lines.addAll(List.of("G1 X0 Y" + pass + ".", "X50.", "G2 Y" + pass + ".5 I0 J0.25", "G1 X2.", "G3 X1. Y" + (pass + 1)
					+ ".5 R1.", "X0 Y" + (pass + 2) + ".5 I0. J1."));
		}
		lines.add("G1 X7. Y3.");
		lines.addAll(spiral(40).subList(2, 42));
		Followed run = Followed.milling(lines.toArray(String[]::new));
		assertThat(run.all(Step.Contour.class)).hasSize(1);
		assertThat(run.arcs()).isEmpty();
	}

	@Test
	void whatMayMakeAHoleOrDoesNotCloseIsFollowedByItself() {
		for (String arc : List.of("G3 X20. Y20. I5. J0", "G3 I5. J0", "G3 X25. Y25. Z-2. I5. J0", "G3 X25. Y25. R-5.", "G3 X40. Y20. R5.",
				"G3 X25. Y25.01 I5. J0", "G2 X20. Y20.5 I-5. J0", "G2 X30. I5. J0 P2")) {
			List<String> lines = new ArrayList<>(spiral(40));
			lines.addAll(List.of("G1 X20. Y20.", arc));
			lines.addAll(List.of("G1 X7. Y3."));
			lines.addAll(spiral(40).subList(2, 42));
			Followed run = Followed.milling(lines.toArray(String[]::new));
			assertThat(run.arcs()).as(arc).hasSize(1);
			assertThat(run.all(Step.Contour.class)).as(arc).hasSize(2);
		}
	}

	@Test
	void fourQuartersAreACircle() {
		List<String> lines = new ArrayList<>(spiral(40));
		lines.addAll(List.of("G1 X20. Y20.", "G2 X25. Y25. I5.", "X30. Y20. J-5.", "X25. Y15. I-5.", "X20. Y20. J5.", "G1 X7. Y3."));
		lines.addAll(spiral(40).subList(2, 42));
		assertThat(Followed.milling(lines.toArray(String[]::new)).arcs()).hasSize(4);
	}

	@Test
	void aPlungeThatComesBackOutIsNeverPartOfAContour() {
		List<String> lines = spiral(60);
		lines.addAll(List.of("Z-3.", "Z5."));
		lines.addAll(spiral(60).subList(2, 62));
		Followed run = Followed.milling(lines.toArray(String[]::new));
		assertThat(run.moves()).filteredOn(move -> move.to().z() == -3 && move.from().z() == -1).hasSize(1);
		assertThat(run.moves()).filteredOn(move -> move.to().z() == 5 && move.from().z() == -3).hasSize(1);
	}

	/** As pockets are cut: the tool is fed down in two steps, goes round, and is fed out a little before it is pulled out. */
	@Test
	void pocketsOneBesideTheOtherAreOneContour() {
		List<String> lines = new ArrayList<>(spiral(40));
		for (int pocket = 0; pocket < 9; pocket++) {
			lines.addAll(List.of("G0 Z5.", "X" + pocket + "0. Y50.", "Z1.", "G1 Z0 F200.", "Z-3. F90.", "G3 Y55. I0 J2.5 F300.",
					"G1 Y50.", "Z-2.5"));
		}
		lines.add("G0 Z5.");
		lines.addAll(spiral(40).subList(2, 42));
		assertStandForTheirMoves(lines.toArray(String[]::new));
		assertThat(Followed.milling(lines.toArray(String[]::new)).all(Step.Contour.class)).hasSize(1);
	}

	/** The second time round the places are rapids as far as the block that says G1 once more. */
	@Test
	void aContourThatIsJumpedIntoIsUnderTheCodeOfTheJump() {
		List<String> lines = spiral(40);
		lines.add("M8");
		for (int i = 0; i < 40; i++) {
			lines.add((i == 8 ? "N100 " : i == 20 ? "G1 " : "") + (i % 2 == 0 ? "X" : "Y") + (60 - i) + "." + (i == 30 ? " G1 F200." : ""));
		}
		lines.addAll(List.of("#1=#1+1", "G0 Z5.", "IF [#1 LT 2] GOTO 100", "M30"));
		lines.add(0, "#1=0");
		assertStandForTheirMoves(lines.toArray(String[]::new));
		assertThat(Followed.milling(lines.toArray(String[]::new)).all(Step.Contour.class)).hasSize(3);
	}

	@Test
	void aFeedUpFromWhereARapidHasLedAndBackIsNeverPartOfAContour() {
		List<String> lines = spiral(60);
		lines.addAll(List.of("G0 Z-20.", "G1 Z-12.", "Z-20."));
		lines.addAll(spiral(60).subList(2, 62));
		assertStandForTheirMoves(lines.toArray(String[]::new));
		assertThat(Followed.milling(lines.toArray(String[]::new)).moves()).filteredOn(move -> move.to().z() == -12).hasSize(1);
	}

	@Test
	void passesOneBesideTheOtherAreOneContour() {
		List<String> lines = new ArrayList<>(spiral(40));
		for (int pass = 1; pass < 6; pass++) {
			lines.addAll(List.of("G0 Z5.", "X" + pass + ".125 Y50.", "G1 Z-2. F" + pass + "00."));
			lines.addAll(spiral(40).subList(2, 42));
		}
		lines.add("M5");
		Step.Contour contour = Followed.milling(lines.toArray(String[]::new)).all(Step.Contour.class).get(0);
		assertThat(contour.moves()).isGreaterThan(200);
		assertThat(contour.cutting()).extracting(modal -> modal.feed().value()).containsExactly(300.0, 100.0, 500.0);
		assertThat(contour.levels()).isTrue();
	}

	@Test
	void incrementalContoursAreFollowedBlockByBlock() {
		List<String> lines = spiral(60);
		lines.add(2, "G91");
		assertThat(Followed.milling(lines.toArray(String[]::new)).all(Step.Contour.class)).isEmpty();
	}

	@Test
	void underACycleEveryBlockIsAHole() {
		List<String> lines = spiral(60);
		lines.set(1, "G81 Z-1. R1. F300.");
		assertThat(Followed.milling(lines.toArray(String[]::new)).strokes()).hasSize(61);
	}

	@Test
	void everyStrokeOfARowStandsInItsOwnLine() {
		List<String> lines = new ArrayList<>(List.of("G21 G17 G90 G54 G0 X0 Y0 Z50.", "S500 M3", "G99 G81 X0 Y0 Z-15. R5. F100."));
		IntStream.rangeClosed(1, 30).forEach(i -> lines.add("X" + 10 * i + ". Y5."));
		Followed run = Followed.milling(lines.toArray(String[]::new));
		Step.Row row = run.all(Step.Row.class).get(0);
		int first = row.stroke(0).block().line();

		assertThat(IntStream.range(0, row.count()).map(i -> row.stroke(i).block().line()).toArray())
				.isEqualTo(IntStream.range(first, first + row.count()).toArray());
		assertThat(row.block().line()).as("the last line").isEqualTo(first + row.count() - 1).isEqualTo(lines.size() - 1);
		assertThat(row.x(row.count() - 1)).isEqualTo(300);
		assertThat(row.head(3).block().line()).isEqualTo(first + 2);
	}

	@Test
	void blocksThatSayNothingButPlacesAreOneRow() {
		List<String> lines = new ArrayList<>(List.of("G21 G90 G0 X0 Y0 Z20.", "G98 G83 X10. Y5. Z-12. R2. Q3. F90."));
		for (int i = 0; i < 30; i++) {
			lines.add(i % 3 == 0 ? "X" + (20 + i) + ".5 Y7." : i % 3 == 1 ? "N" + i + " Y" + i + ".125 (HOLE)" : "X" + i);
		}
		lines.addAll(List.of("G80", "G0 X0"));
		assertStandForTheirMoves(lines.toArray(String[]::new));
		Followed run = Followed.milling(lines.toArray(String[]::new));
		assertThat(run.all(Step.Row.class)).extracting(Step.Row::count).containsExactly(30);
		assertThat(run.moves()).last().extracting(move -> Followed.text(move.from())).isEqualTo("29,28.125,20");
	}

	/**
	 * Whatever the program: with its contours taken together, and plain motions made straight from the text, it makes the same other steps,
	 * ends and numbers of moves.
	 */
	@Property(tries = 150)
	void contoursStandForTheirMoves(@ForAll Random random) {
		assertStandForTheirMoves(random(random, 400).toArray(String[]::new));
	}

	/** The same where a program is longer than one chunk of text. */
	@Property(tries = 6)
	void contoursOfLongProgramsStandForTheirMoves(@ForAll Random random) {
		assertStandForTheirMoves(random(random, 7000).toArray(String[]::new));
	}

	private static void assertStandForTheirMoves(String[] program) {
		Followed together = Followed.milling(program);
		Followed single = Followed.on(MachineProfile.generic().with("incremental-words", "yes"), program);
		assertThat(single.all(Step.Contour.class)).isEmpty();
		assertThat(expanded(together.steps(), single.steps())).isTrue();
	}

	/** What Z says under a cycle is a depth and no level of the tool. */
	@Test
	void aLevelSaidUnderACycleIsNoPlace() {
		List<String> lines = new ArrayList<>(List.of("G0 X0 Y0 Z4.", "F100", "G81 X3. Y3. Z-2. R1.", "X2.", "Z0.5"));
		for (int i = 0; i < 12; i++) {
			lines.add((i == 0 ? "G1 " : "") + "X" + (i + 10) + ".");
		}
		lines.addAll(List.of("Z0.5", "X40.", "X41.", "X42.", "X43.", "X44.", "X45.", "X46.", "X47.", "X48."));
		assertStandForTheirMoves(lines.toArray(String[]::new));
		assertThat(Followed.milling(lines.toArray(String[]::new)).all(Step.Contour.class)).isNotEmpty();
	}

	@Test
	void theRandomProgramsHaveContours() {
		assertThat(Followed.milling(random(new Random(1), 400).toArray(String[]::new)).all(Step.Contour.class)).hasSizeGreaterThan(2);
	}

	/** Whether the second list is the first with each contour's moves, and each row's strokes, in its place. */
	private static boolean expanded(List<Step> together, List<Step> single) {
		int at = 0;
		for (Step step : together) {
			if (step instanceof Step.Contour contour) {
				if (!standsFor(contour, single.subList(at, at + contour.moves()))) {
					return false;
				}
				at += contour.moves();
			} else if (step instanceof Step.Row row) {
				for (int i = 0; i < row.count(); i++) {
					if (!(single.get(at++) instanceof Step.Stroke stroke) || !row.stroke(i).toString().equals(stroke.toString())) {
						return false;
					}
				}
			} else if (at >= single.size() || !signature(step).equals(signature(single.get(at++)))) {
				return false;
			}
		}
		return at == single.size();
	}

	/** Whether places, blocks, levels and feeds of a contour are those of its moves, and no plunge among them comes back out. */
	private static boolean standsFor(Step.Contour contour, List<Step> steps) {
		if (!(steps.get(0) instanceof Step.Move) || !(steps.get(steps.size() - 1) instanceof Step.Move)
				|| !steps.stream().allMatch(step -> step instanceof Step.Move || step instanceof Step.Arc arc && harmless(arc))) {
			return false;
		}
		List<Step.Move> moves = steps.stream().map(step -> step instanceof Step.Arc arc ? chord(arc) : (Step.Move) step).toList();
		List<Step.Move> cuts = moves.stream().filter(move -> !move.rapid()).toList();
		Step.Move last = moves.get(moves.size() - 1);
		DoubleSummaryStatistics feeds = cuts.stream().map(move -> move.modal().feed()).filter(Setting::known).mapToDouble(Setting::value)
				.summaryStatistics();
		DoubleSummaryStatistics said = contour.cutting().stream().map(Modal::feed).filter(Setting::known).mapToDouble(Setting::value)
				.summaryStatistics();
		return !plunges(moves) && aside(moves.get(0)) && aside(last) && contour.rapid() == last.rapid()
				&& contour.block().line() == last.block().line() && Followed.text(moves.get(0).from()).equals(Followed.text(contour.from()))
				&& Followed.text(last.to()).equals(Followed.text(contour.to()))
				&& contour.levels() == cuts.stream().anyMatch(move -> Double.compare(move.from().z(), move.to().z()) != 0)
				&& contour.modal().rotary().equals(last.modal().rotary())
				&& written(contour.modal().feed()).equals(written(last.modal().feed())) && contour.cutting().isEmpty() == cuts.isEmpty()
				&& (cuts.isEmpty() || contour.first().line() == cuts.get(0).block().line()) && feeds.getMin() == said.getMin()
				&& feeds.getMax() == said.getMax();
	}

	/** Whether a feed down, or one up that a rapid has led below, is followed by a move the other way before one aside. */
	private static boolean plunges(List<Step.Move> moves) {
		for (int in = 0; in < moves.size(); in++) {
			Step.Move feed = moves.get(in);
			boolean into = !feed.rapid() && !aside(feed) && (rise(feed) < 0 || in == 0 || moves.get(in - 1).rapid());
			for (int out = in + 1; into && out < moves.size() && !aside(moves.get(out)); out++) {
				if (rise(feed) * rise(moves.get(out)) < 0) {
					return true;
				}
			}
		}
		return false;
	}

	private static double rise(Step.Move move) {
		return move.to().z() - move.from().z();
	}

	private static boolean harmless(Step.Arc arc) {
		return arc.rise() == 0 && Math.abs(arc.sweep()) < 0.95 * 2 * Math.PI && Math.abs(arc.startRadius() - arc.endRadius()) <= 0.005
				&& aside(chord(arc));
	}

	private static Step.Move chord(Step.Arc arc) {
		return new Step.Move(arc.block(), arc.modal(), false, arc.from(), arc.to(), arc.resolution());
	}

	private static String written(Setting setting) {
		return setting.word().map(word -> word.block().line() + " " + word.span() + " " + word.written()).orElse("never");
	}

	private static boolean aside(Step.Move move) {
		return Double.compare(move.from().x(), move.to().x()) != 0 || Double.compare(move.from().y(), move.to().y()) != 0;
	}

	private static String signature(Step step) {
		String what = step instanceof Step.Move move ? move.rapid() + " " + Followed.text(move.from()) + " " + Followed.text(move.to())
				+ " " + move.resolution() : step instanceof Step.Arc arc ? Followed.text(arc.from()) + " " + Followed.text(arc.to()) + " "
				+ arc.centre() + arc.sweep() + " " + arc.startRadius() + " " + arc.endRadius() + " " + arc.rise() + arc.byRadius()
				+ arc.resolution() : step instanceof Step.Stroke stroke ? Followed.text(stroke.place()) + " "
				+ Followed.number(stroke.bottom()) : "";
		return step.getClass().getSimpleName() + " " + step.block().line() + " " + what + " "
				+ Followed.number(step.modal().feed().value()) + " " + step.modal().rotary();
	}

	/** Long runs of plain moves, with something else in between now and then, and now and then another mode for a while. */
	private static List<String> random(Random random, int blocks) {
		String[] others = {"G2 X1. Y1. R5.", "G2", "G3", "G2 X1. Y1. Z-1. R9.", "G3 I2.", "I1. J1.", "F200.", "F150.", "G1 F400. X2.", "M8",
				"G0 Z5.", "G1 Z-2.", "Z-3. F90.", "(NOTE)", "", "#1=5", "X#1", "G0", "G1", "G28 Z0", "/X7.", "A90.", "G0 B-30. C10.5",
				"G1 A5. X2.5", "G2 X1. Y3. CR=6. A10.", "X3. Y2. Z-1. I2. TURN=0", "G3 X4. Y1. CR=3. TURN=1",
				"X3.5 Y2.5 A3=0.1 B3=-0.2 C3=0.97"};
		String[][] modes = {{"G91", "G90"}, {"G81 X3. Y3. Z-2. R1.", "G80"}, {"G16", "G15"}, {"G18", "G17"}, {"G20", "G21"},
				{"G52 X5.", "G52 X0"}, {"G55", "G54"}, {"G90.1", "G91.1"}};
		List<String> lines = new ArrayList<>(List.of("G0 X0 Y0 Z0", "F100"));
		String[] mode = null;
		for (int i = 0; i < blocks; i++) {
			if (mode != null && random.nextInt(30) == 0) {
				lines.add(mode[1]);
				lines.add("G1");
				mode = null;
			} else if (mode == null && random.nextInt(120) == 0) {
				mode = modes[random.nextInt(modes.length)];
				lines.add(mode[0]);
			} else {
				lines.add(random.nextInt(50) == 0 ? others[random.nextInt(others.length)] : move(random));
			}
		}
		return lines;
	}

	/** A whole or half number. */
	private static String number(Random random) {
		return random.nextInt(5) + (random.nextBoolean() ? ".5" : ".");
	}

	private static String arc(Random random) {
		String code = random.nextInt(4) == 0 ? "" : random.nextBoolean() ? "G2 " : "G3 ";
		String end = (random.nextInt(5) == 0 ? "" : "X" + number(random)) + (random.nextInt(5) == 0 ? "" : "Y" + number(random));
		return code + end + (random.nextInt(3) == 0 ? (random.nextBoolean() ? "R" : " CR=") + number(random)
				: "I" + (random.nextBoolean() ? "-" : "") + number(random) + "J" + number(random));
	}

	/** A straight block; now and then an arc, most of them between two known places on a half circle. */
	private static String move(Random random) {
		if (random.nextInt(12) == 0) {
			return arc(random);
		} else if (random.nextInt(8) == 0) {
			int radius = 1 + random.nextInt(3);
			int x = random.nextInt(5);
			return "G1 X" + x + ".Y1.\nG" + (2 + random.nextInt(2)) + "X" + (x + 2 * radius) + "." + (random.nextBoolean() ? "I" : "R")
					+ radius + ".\nG1 X9." + random.nextInt(9);
		}
		StringBuilder line = new StringBuilder(random.nextInt(15) == 0 ? "G" + random.nextInt(2) + " " : "");
		String[] axes = {"X", "Y", "XY", "XZ", "XYZ", "Z", "ZF", "XF", "XYA", "XYZBC"};
		for (char axis : axes[Math.min(random.nextInt(60), random.nextInt(10))].toCharArray()) {
			line.append(axis).append(random.nextInt(5)).append(".5");
		}
		return line.toString();
	}
}
