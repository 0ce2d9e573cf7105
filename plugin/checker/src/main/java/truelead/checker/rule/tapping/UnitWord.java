package truelead.checker.rule.tapping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.pass.MillPass;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.Meaning;
import truelead.checker.program.BlockRef;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/**
 * The unit word of the program is the wrong one, G20 for G21 or the reverse: every thread that a person named fits in the other unit and
 * none in this one, by its feed or helix, and by how far the tap goes or how wide the helix is. One finding then speaks for all that is
 * 25.4 times off.
 */
final class UnitWord {
	/** No tap goes less far than this, in pitches, or further than this, in diameters (common practice, no source). */
	private static final double LEAST_PITCHES = 1.5;
	private static final double MOST_DIAMETERS = 12;
	/** What a helix may be off its lead, as a part of it, to count as the same. */
	private static final double NEAR = 0.04;
	/** Pitches within which the deepest pass of a lathe's thread is from its diameter. */
	private static final double WIDE = 2;
	/** How far into the program a unit word is looked for, lines. */
	private static final int LINES = 20_000;

	private final Rule rule;
	private final Work work;
	private final LengthUnit unit;
	private final double factor;
	private Optional<Fact<ThreadSpec>> first = Optional.empty();
	/** What that thread gets a turn, mm, and where. */
	private double gets = Double.NaN;
	private Optional<BlockRef> block = Optional.empty();

	private UnitWord(Rule rule, Work work, LengthUnit unit) {
		this.rule = rule;
		this.work = work;
		this.unit = unit;
		this.factor = unit == LengthUnit.MM ? LengthUnit.INCH.mm() : 1 / LengthUnit.INCH.mm();
	}

	/** The finding; empty where any thread fits as it is, or the program states no unit or both. */
	static Optional<Draft> wrong(Rule rule, Work work) {
		Fact<LengthUnit> said = work.shop().unit();
		if (!said.stated()) {
			return Optional.empty();
		}
		UnitWord word = new UnitWord(rule, work, said.value());
		boolean wrong = word.everyThreadFitsTheOther();
		if (wrong) {
			work.dependsOnAll();
		}
		return wrong ? word.draft() : Optional.empty();
	}

	private boolean everyThreadFitsTheOther() {
		for (ThreadingOperation operation : work.operationsOfProgram()) {
			Optional<Fact<ThreadSpec>> thread = operation.wanted().statedThread();
			if (thread.isPresent()) {
				boolean other = operation instanceof Tapping tapping ? tapping.method().taps() && !tapping.strokes().isEmpty()
						&& fits(tapping, thread.get().value()) : operation instanceof ThreadMilling milling && !milling.passes().isEmpty()
						&& fits(milling, thread.get().value());
				if (!other) {
					return false;
				}
				first = first.isPresent() ? first : thread;
				gets = Double.isNaN(gets) ? advance(operation) : gets;
				block = block.isPresent() ? block : Optional.of(operation.block());
			}
		}
		return turnedFitTheOther() && first.isPresent();
	}

	/** The same of threads that a lathe cuts by a single point. */
	private boolean turnedFitTheOther() {
		for (SinglePoint turned : work.course().singlePoints()) {
			Optional<Fact<ThreadSpec>> thread = turned.thread().filter(Fact::stated);
			if (thread.isPresent() && !fits(turned, thread.get().value())) {
				return false;
			}
			first = first.isPresent() ? first : thread;
			gets = Double.isNaN(gets) && thread.isPresent() ? turned.passes().get(0).lead() : gets;
			block = block.isPresent() ? block : thread.map(any -> turned.pass().block());
		}
		return true;
	}

	private boolean fits(SinglePoint turned, ThreadSpec thread) {
		double wide = 2 * turned.deepest().radius();
		double lead = turned.passes().get(0).lead();
		return turned.pass().modal().unit() == unit && Math.abs(lead * factor - thread.lead()) <= NEAR * thread.lead()
				&& Math.abs(wide * factor - thread.diameter()) <= WIDE * thread.pitch()
				&& Math.abs(wide - thread.diameter()) > WIDE * thread.pitch();
	}

	private boolean fits(Tapping tapping, ThreadSpec thread) {
		TapStroke stroke = tapping.strokes().get(0);
		Optional<TapFeed> feed = TapFeed.of(tapping, stroke);
		return feed.isPresent() && stroke.modal().unit() == unit && !feed.get().fits(thread.lead())
				&& feed.get().fitsTimes(factor, thread.lead()) && !sound(stroke.travel(), thread)
				&& sound(stroke.travel() * factor, thread);
	}

	private static double advance(ThreadingOperation operation) {
		return operation instanceof ThreadMilling milling ? Math.abs(milling.passes().get(0).lead())
				: TapFeed.of((Tapping) operation, ((Tapping) operation).strokes().get(0)).orElseThrow().advance();
	}

	private static boolean sound(double travel, ThreadSpec thread) {
		return travel >= LEAST_PITCHES * thread.pitch() && travel <= MOST_DIAMETERS * thread.diameter();
	}

	private boolean fits(ThreadMilling milling, ThreadSpec thread) {
		MillPass pass = milling.passes().get(0);
		double lead = Math.abs(pass.lead());
		double wide = 2 * pass.radius() / thread.diameter();
		return pass.modal().unit() == unit && Math.abs(lead * factor - thread.lead()) <= NEAR * thread.lead() && wide * factor <= 1.05
				&& wide * factor >= 0.05 && (wide > 1.05 || wide < 0.05);
	}

	private Optional<Draft> draft() {
		List<Location> words = words();
		if (words.isEmpty()) {
			return Optional.empty();
		}
		Figures figures = new Figures(unit);
		ThreadSpec thread = first.orElseThrow().value();
		String written = unit == LengthUnit.MM ? "G21" : "G20";
		String right = unit == LengthUnit.MM ? "G20" : "G21";
		String other = unit == LengthUnit.MM ? "inches" : "mm";
		String message = "lengths are read in " + (unit == LengthUnit.MM ? "mm" : "inches") + ", and every thread of the program fits in "
				+ other + ": " + thread.withoutClass().designation() + " needs " + figures.advance(thread.lead()) + " " + figures.symbol()
				+ " a turn and gets " + figures.advance(gets) + ", its depth and width are 25.4 times off too; " + right;
		Draft draft = Draft.of(rule, Severity.ERROR, words.get(0), message).known("the callout", thread.withoutClass().designation(),
				first.get()).from("one inch", "25.4 mm", "ISO 31-1, exact").related(block.orElseThrow(), "the threading block");
		words.stream().skip(1).limit(20).forEach(at -> draft.related(at, "the unit again"));
		boolean usual = words.stream().allMatch(at -> text(at).equalsIgnoreCase(written));
		if (usual) {
			draft.fix(new Fix("Change " + written + " to " + right, false, "see that every length of the program is meant in " + other,
					words.stream().map(at -> new Edit(at, right)).toList()));
		}
		return Optional.of(draft);
	}

	private static String text(Location at) {
		return at.file().text().line(at.line()).substring(at.span().start(), at.span().end());
	}

	/** The words that say the unit in force; none where the other stands in the program too. */
	private List<Location> words() {
		ProgramFile file = work.shop().program();
		List<Location> found = new ArrayList<>();
		for (int line = 0; line < Math.min(LINES, file.text().lineCount()); line++) {
			for (Element.Word word : file.text().block(line).words()) {
				if (word.address() == 'G' && word.value() instanceof Expression.Number number && unitOf(number.value()).isPresent()) {
					if (unitOf(number.value()).get() != unit) {
						return List.of();
					}
					found.add(new Location(file, line, word.span()));
				}
			}
		}
		return found;
	}

	/** What a G code says of the unit on this machine: G21 cuts a thread on some lathes. */
	private Optional<LengthUnit> unitOf(double code) {
		List<Meaning> does = work.shop().profile().gCode(MachineProfile.tenfold(code));
		return does.contains(Meaning.INCH) ? Optional.of(LengthUnit.INCH) : does.contains(Meaning.MILLIMETRE) ? Optional.of(LengthUnit.MM)
				: Optional.empty();
	}
}
