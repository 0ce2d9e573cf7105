package truelead.checker;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import truelead.checker.hole.Hole;
import truelead.checker.job.Job;
import truelead.checker.machine.Budget;
import truelead.checker.pass.MillPass;
import truelead.checker.pass.MillPasses;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.RuleSettings;
import truelead.checker.work.Tapping;
import truelead.grammar.ProgramText;

/** A program that is being edited is checked with what was known of it before; the answer is always that of a check from scratch. */
class EditedProgramTest {

	private static final String[] TYPED = {"X1.5", "Z-3.", " ", "\n", "G91\n", "G0 Z5.\n", "G80\n", "F77.", "(M6X1 TAP)", "G20\n",
			"G84 X3. Y3. Z-9. R2. F500.\n", "M98 P9\n", "#1=2\n", "X#1", "G16\n", "7", ".", "-", "M30\n", "O5\n", "%\n", "/", "(",
			"G3 X2. Y2. I1. J0\n"};

	@Property(tries = 8)
	void theAnswerIsThatOfACheckFromScratch(@ForAll Random random) {
		ProgramText text = ProgramText.of(program(random));
		for (int i = 0; i < 4; i++) {
			text = edited(text, random);
			assertThat(answer(text)).isEqualTo(answer(ProgramText.of(text.toString())));
		}
	}

	@Test
	void anEditInALongContourChangesNoHole() {
		ProgramText text = ProgramText.of(program(new Random(3)));
		String before = answer(text);
		assertThat(before).contains("tapping").contains("hole");
		int line = 700;
		while (text.line(line).charAt(0) != 'X' || text.line(line).contains("Y")) {
			line++;
		}
		String after = answer(text.edit(text.lineStart(line), text.line(line).length(), "X4.25"));
		assertThat(after.replaceAll("@\\d+", "")).isEqualTo(before.replaceAll("@\\d+", ""));
	}

	private static ProgramText edited(ProgramText text, Random random) {
		int at = random.nextInt(text.length() + 1);
		int length = Math.min(random.nextInt(3) == 0 ? random.nextInt(40) : random.nextInt(2), text.length() - at);
		return text.edit(at, length, TYPED[random.nextInt(TYPED.length)]);
	}

	/** Seeds that have been tried: {@code -Dedits.programs=3000} takes some minutes. */
	@Test
	void anOpenProgramIsAnsweredAsOneNeverSeenBefore() {
		open(Integer.getInteger("edits.programs", 12), ShopPrograms::of, (now, right, random) -> ShopPrograms.edited(now, random));
	}

	/** The same of long programs: {@code -Dedits.long=100} takes some minutes. */
	@Test
	void anOpenProgramOfFewToolsIsAnsweredAsOneNeverSeenBefore() {
		open(Integer.getInteger("edits.long", 1), ShopPrograms::ofFewTools, (now, right, random) -> ShopPrograms.edited(now, random));
	}

	/** More edits than texts are kept for; {@code -Dedits.many=100} takes some minutes. */
	@Test
	void aProgramIsAnsweredAsOneNeverSeenBeforeAfterManyEdits() {
		long first = Long.getLong("edits.first", 1);
		for (long seed = first; seed < first + Integer.getInteger("edits.many", 1); seed++) {
			Random random = new Random(seed);
			EditedProgram open = new EditedProgram();
			String right = ShopPrograms.ofManyParts(random);
			ProgramText text = ProgramText.of(right);
			for (int edit = 0; edit < 700; edit++) {
				CheckResult known = check(open, text);
				if (random.nextInt(20) == 0) {
					assertThat(differences(answer(known), answer(ProgramText.of(text.toString()))))
							.as("seed %d, edit %d", seed, edit).isEmpty();
				}
				String now = text.toString();
				text = text.changedTo(now.equals(right) || random.nextInt(8) == 0 ? ShopPrograms.retyped(now, random) : right);
			}
		}
	}

	/** The same of milled threads, most edits being of numbers alone: {@code -Dedits.milled=100} takes some minutes. */
	@Test
	void anOpenProgramOfMilledThreadsIsAnsweredAsOneNeverSeenBefore() {
		open(Integer.getInteger("edits.milled", 1), ShopPrograms::ofMilledThreads,
				(now, right, random) -> random.nextInt(25) == 0 ? ShopPrograms.edited(now, random) : ShopPrograms.retyped(now, random));
	}

	/** The same of programs with slips whose findings stand while other parts are edited: {@code -Dedits.faulty=300} takes some minutes. */
	@Test
	void anOpenProgramWithSlipsIsAnsweredAsOneNeverSeenBefore() {
		assertThat(open(Integer.getInteger("edits.faulty", 60), FaultyPrograms::of, FaultyPrograms::edited))
				.containsAll(FaultyPrograms.rules());
	}

	/** The same of programs that say it in other words, and turn rotary axes: {@code -Dedits.reworded=100} takes some minutes. */
	@Test
	void anOpenProgramInOtherWordsIsAnsweredAsOneNeverSeenBefore() {
		open(Integer.getInteger("edits.reworded", 4), random -> inOtherWords(random.nextBoolean() ? ShopPrograms.of(random)
				: ShopPrograms.ofMilledThreads(random), random), (now, right, random) -> random.nextInt(4) == 0
				? ShopPrograms.edited(now, random) : ShopPrograms.retyped(now, random));
	}

	/** Some places with an equals sign or a rotary axis beside them, some arcs by words of several letters. */
	private static String inOtherWords(String program, Random random) {
		return program.lines().map(line -> {
			int other = random.nextInt(6);
			boolean place = line.matches("(N\\d+ ?)?(G0?[01] ?)?X-?[\\d.]+ ?Y-?[\\d.]+");
			boolean arc = line.matches("(N\\d+ ?)?G0?[23] ?X[^;(]*");
			return place && other == 0 ? line + " A" + random.nextInt(180) + "." : place && other == 1 ? line.replace("X", "X=")
					: place && other == 2 ? line + " A3=0.1 B3=0 C3=0.99" : arc && other < 3 ? line.replace(" R", " CR=")
					: arc && other < 5 ? line + " TURN=0" : line;
		}).collect(Collectors.joining("\n"));
	}

	/** How a text is edited next, that of the program as it was first being at hand. */
	private interface Typing {
		String edited(String now, String right, Random random);
	}

	/** Opens programs and edits each; the rules that have found something. */
	private static Set<String> open(int programs, Function<Random, String> maker, Typing typing) {
		Set<String> found = new HashSet<>();
		long first = Long.getLong("edits.first", 1);
		for (long seed = first; seed < first + programs; seed++) {
			Random random = new Random(seed);
			EditedProgram open = new EditedProgram();
			String right = maker.apply(random);
			ProgramText text = ProgramText.of(right);
			for (int edit = 0; edit < 25; edit++) {
				CheckResult known = check(open, text);
				known.findings().forEach(finding -> found.add(finding.rule()));
				assertThat(differences(answer(known), answer(ProgramText.of(text.toString()))))
						.as("seed %d, edit %d", seed, edit).isEmpty();
				text = text.changedTo(typing.edited(text.toString(), right, random));
			}
		}
		return found;
	}

	/** The lines that stand in one answer alone. */
	private static List<String> differences(String known, String fresh) {
		List<String> differences = new ArrayList<>();
		if (known.equals(fresh)) {
			return List.of();
		}
		List<String> all = List.of(fresh.split("\n"));
		known.lines().filter(line -> !all.contains(line)).forEach(line -> differences.add("- " + line));
		List<String> said = known.lines().toList();
		all.stream().filter(line -> !said.contains(line)).forEach(line -> differences.add("+ " + line));
		return differences.isEmpty() ? List.of("in another order") : differences;
	}

	private static CheckResult check(EditedProgram open, ProgramText text) {
		MachineProfile machine = MachineProfile.generic();
		return open.check(new ProgramFile("A.NC", text), ProgramFolder.EMPTY, Job.EMPTY, machine, RuleSettings.DEFAULT, Budget.of(machine));
	}

	/** What a check from scratch says, written out. */
	private static String answer(ProgramText text) {
		return answer(Checker.check(new ProgramFile("A.NC", text), ProgramFolder.EMPTY, Job.EMPTY, MachineProfile.generic(),
				RuleSettings.DEFAULT));
	}

	private static String answer(CheckResult result) {
		List<String> lines = new ArrayList<>();
		result.findings().forEach(f -> lines.add(f.rule() + " " + f.severity() + " " + at(f.at()) + " op " + f.operation() + " "
				+ f.message() + f.accepted() + f.related().stream().map(r -> at(r.at()) + r.what()).toList()
				+ f.fixes().stream().map(x -> x.title() + x.safe() + x.why() + x.edits().stream().map(e -> at(e.at()) + e.text()).toList())
				.toList() + f.evidence().stream().map(e -> e.name() + e.value() + e.origin()
						+ e.at().map(EditedProgramTest::at)).toList()));
		for (Hole hole : result.work().holes()) {
			lines.add("hole " + hole.place() + " " + hole.cuts().stream().map(cut -> cut.kind() + " " + cut.block().line() + " " + cut.tip()
					+ " " + cut.tool().name()).toList());
		}
		for (Tapping tapping : result.work().tappings()) {
			lines.add("tapping " + tapping.index() + " " + tapping.block().line() + " " + tapping.strokes().size() + " "
					+ tapping.strays().size() + " " + tapping.holes().stream().map(Hole::place).toList() + tapping.wanted()
					+ tapping.leftOn().size());
		}
		result.work().threadMillings().forEach(milling -> lines.add("thread milling " + milling.index() + " " + milling.block().line() + " "
				+ milling.holes().stream().map(Hole::place).toList() + milling.wanted() + passes(milling.passes())
				+ passes(milling.firstPasses()) + passes(milling.allFinishing()) + milling.cutAtOnce().size()));
		result.work().tools().forEach(tool -> lines.add("tool " + tool.index() + " " + tool.name() + " " + tool.summary() + tool.facts()));
		result.work().unthreaded().forEach(hole -> lines.add("unthreaded " + hole.place()));
		result.work().trouble().notFollowed().forEach(lost -> lines.add("lost " + lost.why().words()));
		result.work().trouble().problems().forEach(problem -> lines.add("problem " + problem.at().line() + problem.at().span()
				+ problem.message()));
		result.work().trouble().openArcs().forEach(arc -> lines.add("open arc " + arc.block().line()));
		result.work().course().compensation().forEach(change -> lines.add("compensation " + change.step().block().line() + change.after()));
		result.work().course().events().forEach(event -> lines.add("event " + event.event().block().line() + event.event().kind()));
		lines.add(result.blocks() + " blocks " + result.operations() + " operations " + result.notFollowed() + result.assumptions());
		return String.join("\n", lines);
	}

	/** How many passes there are, and the first of each kind. */
	private static String passes(MillPasses passes) {
		List<String> kinds = new ArrayList<>();
		for (int kind = 0; kind < passes.typical().size(); kind++) {
			MillPass first = passes.typical().get(kind);
			kinds.add(passes.count(kind) + " as in line " + first.block().line() + " by " + first.radius() + " in " + first.hole().place());
		}
		return " " + passes.size() + " passes " + kinds;
	}

	private static String at(Location place) {
		return place.file().name() + ":" + place.line() + ":" + place.span().start() + "-" + place.span().end() + "@" + place.offset();
	}

	/** Some thousand blocks: contours with retracts, holes drilled and tapped, helices. */
	private static String program(Random random) {
		StringBuilder text = new StringBuilder("G21 G90 G54\nT1 M6 (END MILL 6)\nS3000 M3\nG43 H1 Z20.\n");
		double x = 0;
		for (int i = 0; i < 4500; i++) {
			x += random.nextDouble() - 0.4;
			switch (random.nextInt(120)) {
				case 0 -> text.append(String.format(Locale.ROOT, "G0 Z5.\nG0 X%.3f Y%.3f\nG1 Z-2. F300.\n", x, x + 1));
				case 1 -> text.append(String.format(Locale.ROOT, "G0 X%.3f Y0 Z5.\nG1 Z-6.\nG3 I-5. Z-5. F100.\nG3 I-5. Z-4.\nG0 Z5.\nG1\n",
						x));
				default -> text.append(String.format(Locale.ROOT, i % 3 == 0 ? "X%.3f Y%.3f\n" : i % 3 == 1 ? "Y%.3f Z-%.3f\n" : i % 50 == 2
						? "X%.3f F%.0f\n" : "X%.3f\n", x, random.nextDouble()));
			}
		}
		text.append("G0 Z20.\nT2 M6 (DRILL 5.0)\nS2000 M3\nG43 H2 Z20.\nG81 X5. Y5. Z-15. R2. F200.\nX25.\nX45.\nG80\n");
		text.append("T3 M6 (M6X1 TAP)\nS500 M3\nG43 H3 Z20.\nG84 X5. Y5. Z-12. R3. F500.\nX25.\nX45.\nG80\nM30\n");
		return text.toString();
	}
}
