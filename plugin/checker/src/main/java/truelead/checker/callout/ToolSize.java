package truelead.checker.callout;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.Decimals;
import truelead.checker.thread.DrillSizes;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ToolKind;

/** Finds the number in a comment that is a tool's diameter: DRILL 5.0, 13/64 DRILL, LETTER F, END MILL 10 DIA. */
final class ToolSize {
	private static final int REACH = 3;
	/** 3/8 SINGLE POINT THREAD MILL: as many words may stand between. */
	private static final int FAR = 5;
	private static final int LARGEST_SCREW = 12;
	/** A drill for a thread takes away no more than that much of its pitch on the diameter. */
	private static final double MOST_OF_PITCH = 1.3;

	private final List<Part> parts;
	private final PartRow row;

	ToolSize(List<Part> parts) {
		this.parts = parts;
		this.row = new PartRow(parts);
	}

	/** The diameter of the tool named at a part; empty where none is said. */
	Optional<Dimension> of(ToolKind kind, int at) {
		Optional<Dimension> said = nearest(at, kind != ToolKind.CENTRE_DRILL && !kind.tap());
		if (said.isPresent()) {
			return said;
		}
		if (kind.tap()) {
			boolean named = parts.stream().anyMatch(Part.Thread.class::isInstance);
			return named ? Optional.empty() : screw(at).or(() -> beside(at, -1, false)).or(() -> beside(at, 1, false));
		}
		Optional<Dimension> letter = kind == ToolKind.DRILL ? letter(at).filter(gauge -> beside(at, 1, indexable(at)).isEmpty())
				: Optional.empty();
		return letter.or(() -> beside(at, -1, false)).or(() -> beside(at, 1, false)).or(() -> beside(at, -1, true))
				.or(() -> beside(at, 1, true)).or(() -> kind == ToolKind.DRILL ? core() : Optional.empty());
	}

	/** TAP DRILL FOR M8 (6.8): the only length that is left, where it may be the core of the thread named. */
	private Optional<Dimension> core() {
		List<Dimension> plain = parts.stream().filter(part -> part instanceof Part.Amount a && a.role() == Part.Role.PLAIN)
				.map(part -> ((Part.Amount) part).dimension()).toList();
		Optional<ThreadSpec> thread = parts.stream().filter(Part.Thread.class::isInstance)
				.map(part -> ((Part.Thread) part).draft().spec()).findFirst();
		if (plain.size() != 1 || thread.isEmpty()) {
			return Optional.empty();
		}
		ThreadSpec spec = thread.get();
		return plain.stream().filter(size -> size.mm(spec.unit()) < spec.diameter()
				&& size.mm(spec.unit()) > spec.diameter() - MOST_OF_PITCH * spec.pitch()).findFirst();
	}

	/** A length marked as diameter, or a gauge number, nearest to the word; the numbers of centre drills are no gauge numbers. */
	private Optional<Dimension> nearest(int at, boolean gauges) {
		Optional<Dimension> best = Optional.empty();
		int distance = Integer.MAX_VALUE;
		for (int i = 0; i < parts.size(); i++) {
			if (parts.get(i) instanceof Part.Amount a && (a.role() == Part.Role.DIAMETER || a.role() == Part.Role.LETTER_GAUGE
					|| gauges && a.role() == Part.Role.GAUGE && !place(i))
					&& Math.abs(i - at) < distance) {
				best = Optional.of(a.dimension());
				distance = Math.abs(i - at);
			}
		}
		return best;
	}

	/**
	 * NO.5 .201 DRILL, DRILL #1 8.5: the number of a line or of a variable, where a size that is not that of the gauge stands behind it,
	 * first or last of all.
	 */
	private boolean place(int i) {
		boolean end = i == 0 || i + 2 == parts.size();
		return end && i + 1 < parts.size() && parts.get(i) instanceof Part.Amount gauge && parts.get(i + 1) instanceof Part.Amount size
				&& size.role() == Part.Role.PLAIN && size.dimension().unit().isEmpty()
				&& !same(size.dimension().value(), gauge.dimension().value());
	}

	private static boolean same(double size, double gauge) {
		return Math.abs(size - gauge) <= 0.0005 || Math.abs(size - gauge * LengthUnit.INCH.mm()) <= 0.005;
	}

	/** The number of a screw beside the tap that cuts its thread, as in #10 TAP: 0.06 in and 0.013 in for each (ASME B1.1). */
	private Optional<Dimension> screw(int at) {
		return Stream.of(at - 1, at + 1).flatMap(i -> screwNumber(parts, i).stream()).findFirst()
				.map(number -> Dimension.of((60 + 13 * number) / 1000.0, LengthUnit.INCH));
	}

	/** DRILL 10.2 CENTER, FORET D4.2 CENTRE: behind the size stands the place. */
	static boolean beforeCentre(List<Part> parts, int i) {
		return i + 1 < parts.size() && parts.get(i) instanceof Part.Amount size && (size.role() == Part.Role.PLAIN
				|| size.role() == Part.Role.DIAMETER) && parts.get(i + 1) instanceof Part.Word place
				&& place.meaning() == Meaning.CENTRE;
	}

	/** The number of #10, where it is one of a screw. */
	static Optional<Integer> screwNumber(List<Part> parts, int i) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Amount gauge && gauge.role() == Part.Role.GAUGE
				? IntStream.rangeClosed(0, LARGEST_SCREW).boxed().filter(n -> DrillSizes.gauge("#" + n)
						.equals(OptionalDouble.of(gauge.dimension().value()))).findFirst() : Optional.empty();
	}

	private Optional<Dimension> beside(int at, int step, boolean wholeNumbers) {
		boolean threadMill = step < 0 && !wholeNumbers && row.is(at, Meaning.MILL);
		int reach = threadMill ? FAR : REACH;
		for (int i = at + step, gone = 0; i >= 0 && i < parts.size() && gone < reach; i += step, gone++) {
			Part part = parts.get(i);
			if (part instanceof Part.Amount a && a.role() == Part.Role.PLAIN) {
				boolean whole = a.dimension().unit().isEmpty() && a.dimension().value() == Math.rint(a.dimension().value())
						&& a.end() - a.start() == Decimals.plain(a.dimension().value(), 0).length();
				if (counts(i) || pitch(i) || timesDiameter(i) || step < 0 && numbered(i, at)) {
					continue;
				}
				return (!whole || wholeNumbers && !label(i)) ? Optional.of(smaller(i, a.dimension())) : Optional.empty();
			}
			// the other half of TAP DRILL, SPOT DRILL, CHAMFER MILL, FRESA ROSCA
			boolean compound = i == at - 1 && row.is(i, Meaning.TAP) || i == at + 1 && (row.is(i, Meaning.DRILL) || row.is(i, Meaning.MILL)
					|| row.is(i, Meaning.THREAD) && row.is(at, Meaning.MILL));
			// the fit of a reamer: 8H7
			boolean fit = part instanceof Part.Code c && c.letter().equalsIgnoreCase("H");
			boolean variable = part instanceof Part.Amount a && a.role() == Part.Role.GAUGE && place(i);
			if (threadMill && row.is(i, Meaning.THREAD) || compound || variable) {
				continue;
			}
			// the border of a column: | 02 | DRILL 10.2
			boolean border = part instanceof Part.Other o && o.text().equals("|");
			if (border || !fit && !(part instanceof Part.Angle) && !(part instanceof Part.Other) && !(part instanceof Part.Word w
					&& !ends(w.meaning()) && !(step > 0 && ofTheHole(w.meaning())))) {
				return Optional.empty();
			}
		}
		return Optional.empty();
	}

	/** STEP DRILL 5.0/6.6: the smaller diameter goes before. */
	private Dimension smaller(int i, Dimension size) {
		boolean pair = i + 2 < parts.size() && parts.get(i + 1) instanceof Part.Other o && o.text().equals("/")
				&& parts.get(i + 2) instanceof Part.Amount;
		boolean second = i > 1 && parts.get(i - 1) instanceof Part.Other o && o.text().equals("/")
				&& parts.get(i - 2) instanceof Part.Amount;
		Optional<Dimension> other = pair || second ? Optional.of(((Part.Amount) parts.get(pair ? i + 2 : i - 2)).dimension())
				: Optional.empty();
		return other.filter(o -> o.value() < size.value()).orElse(size);
	}

	/** Another tool, or what the hole is for: numbers beyond belong to that. */
	private static boolean ends(Meaning meaning) {
		return switch (meaning) {
			case FOR, TAP, FORM_TAP, THREAD_MILL, DRILL, TAP_DRILL, FLAT_DRILL, CENTRE_DRILL, REAM, BORE, CHAMFER, COUNTERBORE, MILL, SPOT,
					THREAD -> true;
			default -> false;
		};
	}

	/** THREAD MILL, THROUGH 20: what follows is the wall or the depth. */
	private static boolean ofTheHole(Meaning meaning) {
		return meaning == Meaning.WALL || meaning == Meaning.THROUGH || meaning == Meaning.BLIND || meaning == Meaning.DEPTH;
	}

	/** 4 FLUTE, 4-FLUTE, 6 HOLES, 4X, 25%: a number of something. */
	private boolean counts(int i) {
		boolean dash = i + 2 < parts.size() && parts.get(i + 1) instanceof Part.Other o && o.text().equals("-")
				&& parts.get(i + 2) instanceof Part.Word flutes && flutes.meaning() == Meaning.FLUTE;
		boolean teeth = whole(i) && i + 1 < parts.size() && CutterTeeth.counted(parts.get(i + 1) instanceof Part.Word w ? w.text()
				: parts.get(i + 1) instanceof Part.Other o ? o.text() : "");
		return teeth || dash && whole(i) || times(i) || things(i) || i + 1 < parts.size() && parts.get(i + 1) instanceof Part.Other o
				&& o.text().equals("%") || i + 1 < parts.size() && parts.get(i + 1) instanceof Part.Word w
				&& (w.meaning() == Meaning.FLUTE && whole(i) || w.meaning() == Meaning.HOLE || w.meaning() == Meaning.PLACES
						|| w.meaning() == Meaning.DEG);
	}

	/** DRILL 3 PORTS, SPOT 4 CORNERS: a whole number before several of something. */
	private boolean things(int i) {
		boolean counted = i + 1 < parts.size() && (parts.get(i + 1) instanceof Part.Other o && CountedThings.several(o.text())
				|| parts.get(i + 1) instanceof Part.Word w && w.meaning() == Meaning.BORE && CountedThings.several(w.text()));
		return counted && whole(i) && parts.get(i) instanceof Part.Amount a && a.dimension().unit().isEmpty()
				&& a.dimension().value() > 1 && a.end() - a.start() == Decimals.plain(a.dimension().value(), 0).length();
	}

	/** DRILL HOLES 4X: a whole number with the sign right behind it, and no other one behind that. */
	private boolean times(int i) {
		boolean sign = i + 1 < parts.size() && parts.get(i + 1).start() == parts.get(i).end()
				&& (row.is(i + 1, Meaning.TIMES) || parts.get(i + 1) instanceof Part.Other o && o.text().equalsIgnoreCase("X"));
		return sign && whole(i) && !(i + 2 < parts.size() && parts.get(i + 2) instanceof Part.Amount);
	}

	private boolean whole(int i) {
		return parts.get(i) instanceof Part.Amount a && a.dimension().value() == Math.rint(a.dimension().value());
	}

	/** 1. DRILL 5.0: the number of a step, where another number is the size. */
	private boolean numbered(int i, int at) {
		boolean whole = i == 0 && parts.get(i) instanceof Part.Amount a && a.dimension().value() == Math.rint(a.dimension().value())
				&& a.dimension().unit().isEmpty();
		return whole && at + 1 < parts.size() && parts.get(at + 1) instanceof Part.Amount size && size.role() == Part.Role.PLAIN;
	}

	/** 5XD: how long the drill is. */
	private boolean timesDiameter(int i) {
		return i + 1 < parts.size() && parts.get(i + 1) instanceof Part.Other o && o.text().equalsIgnoreCase("XD");
	}

	/** 1.5 PITCH, PITCH 1.5, 20 TPI: of the thread. */
	private boolean pitch(int i) {
		return row.is(i + 1, Meaning.P) || row.is(i + 1, Meaning.TPI) || row.is(i - 1, Meaning.P);
	}

	/** OP 10, TOOL 5: the number of something; in DRILL2 that of the operation. */
	private boolean label(int i) {
		boolean other = i > 0 && parts.get(i - 1) instanceof Part.Other o && Character.isLetter(o.text().codePointAt(0));
		return other || i > 0 && parts.get(i - 1) instanceof Part.Word w && (w.end() == parts.get(i).start()
				|| w.meaning() == Meaning.PLATE);
	}

	/** F DRILL; the letter A is left out, for it is a word in too many languages. */
	private Optional<Dimension> letter(int at) {
		Optional<Dimension> before = at > 0 ? letterAt(at - 1) : Optional.empty();
		return before.isPresent() || at + 2 != parts.size() ? before : letterAt(at + 1);
	}

	/** U DRILL 20 is a drill with inserts of 20 mm; U DRILL alone is the letter's size. */
	private boolean indexable(int at) {
		return at > 0 && parts.get(at - 1) instanceof Part.Other o && o.text().equalsIgnoreCase("U");
	}

	private Optional<Dimension> letterAt(int i) {
		String text = parts.get(i) instanceof Part.Other o ? o.text() : parts.get(i) instanceof Part.Word w ? w.text() : "";
		return text.length() == 1 && !text.equals("A") && DrillSizes.gauge(text).isPresent()
				? Optional.of(Dimension.of(DrillSizes.gauge(text).getAsDouble(), LengthUnit.INCH)) : Optional.empty();
	}
}
