package truelead.checker.callout;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.Hand;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;

/**
 * Makes the callout of a thread that a comment asks for, with what is said apart from its size: hand, starts, class, pitch, depth, end and
 * number of holes.
 */
final class CalledThread {
	/**
	 * Nobody calls out a whole number of inches for a thread deeper than this, in diameters: X 6 counts holes (common practice, no source).
	 */
	private static final double DEEP_IN_INCHES = 4;
	/** Nobody calls out a metric thread less deep than this, in diameters: M20 X4 counts holes (common practice, no source). */
	private static final double SHALLOW = 0.3;

	private final PartRow row;
	private final List<Part> parts;
	private final Set<Meaning> said;
	private final boolean threadWords;

	/** @param said the meanings of the whole comment's words */
	CalledThread(PartRow row, Set<Meaning> said) {
		this.row = row;
		this.parts = row.parts();
		this.said = said;
		this.threadWords = said.stream().anyMatch(Meaning::threading);
	}

	/** The callout of the thread at a place. */
	Callout of(int i, Part.Thread t, boolean certain) {
		ThreadDraft draft = t.draft();
		List<Part> own = OwnParts.of(parts, i);
		PartRow its = new PartRow(own);
		Set<Meaning> ofIt = its.said();
		ThreadSpec pitched = withPitchBehind(i, draft);
		ThreadSpec handed = pitched.hand() == Hand.LEFT ? pitched : hand(own).map(pitched::withHand).orElse(pitched);
		ThreadSpec started = handed.starts() > 1 ? handed : handed.withStarts(SaidStarts.of(its));
		ThreadSpec spec = started.system().metric() && started.threadClass().isEmpty()
				? classBehind(own).map(started::withClass).orElse(started) : started;
		// in 3 5/16-18 TAP the 3 may be the tool's number
		boolean counted = draft.count().isPresent() && (said.contains(Meaning.HOLE) || said.contains(Meaning.PLACES));
		OptionalInt written = counted ? draft.count() : t.count();
		boolean pieces = pieces(i, draft);
		boolean deep = draft.extent().isPresent() && !pieces || own.stream().anyMatch(CalledDepth::is);
		Optional<HoleEnd> end = end(ofIt).or(() -> deep ? Optional.empty() : end(said));
		Optional<Dimension> wall = new WallWords(own).wall(spec).or(() -> deep ? Optional.empty() : new WallWords(parts).wall(spec));
		OptionalInt count = written.isPresent() ? written : pieces && draft.extent().get().value() > 1
				? OptionalInt.of((int) draft.extent().get().value()) : count(its);
		boolean ofTap = threading(Meaning.TAP, Meaning.FORM_TAP) && !threading(Meaning.THREAD, Meaning.TAPPED) && !FullThread.said(parts)
				&& spec.threadClass().isEmpty() && count.isEmpty();
		return new Callout(spec, t.start(), t.end(), pitched == draft.spec() ? draft.assumed() : List.of(),
				depth(i, draft, pieces, own, end(ofIt)), ofTap,
				CalledHole.drilled(row, i) && spec.threadClass().isEmpty(), end, wall, count, ofIt.contains(Meaning.WIRE_INSERT)
				|| insert(its), certain);
	}

	private boolean threading(Meaning... words) {
		return Stream.of(words).anyMatch(said::contains);
	}

	private static Optional<HoleEnd> end(Set<Meaning> said) {
		boolean through = said.contains(Meaning.THROUGH);
		return through == said.contains(Meaning.BLIND) ? Optional.empty() : Optional.of(through ? HoleEnd.THROUGH : HoleEnd.BLIND);
	}

	/** M6 TAP 6H: the class apart from the size, where one alone is said. */
	private static Optional<String> classBehind(List<Part> own) {
		List<String> classes = own.stream().filter(p -> p instanceof Part.Other o && o.text().length() == 2
				&& "456789".indexOf(o.text().charAt(0)) >= 0 && "HG".indexOf(o.text().charAt(1)) >= 0).map(p -> ((Part.Other) p).text())
				.distinct().toList();
		return classes.size() == 1 ? Optional.of(classes.get(0)) : Optional.empty();
	}

	/** LH TAPS M6, M8: what stands before the first thread is said of all of them. */
	private Optional<Hand> hand(List<Part> own) {
		return new HandWords(own).hand().or(() -> new HandWords(parts.subList(0, OwnParts.first(parts) + 1)).hand());
	}

	/** M12 FINE 1.25: whether a size has its pitch behind that word. */
	static boolean finePitch(PartRow row, int size) {
		return row.is(size + 1, Meaning.FINE) && size + 2 < row.parts().size() && row.parts().get(size + 2) instanceof Part.Amount a
				&& a.role() == Part.Role.PLAIN;
	}

	/** M8 1.0 TAP, where the X was left out, M12 FINE 1.25, and M8 TAP PITCH 1.0: the number is a pitch of that size. */
	private ThreadSpec withPitchBehind(int i, ThreadDraft draft) {
		if (!draft.bare() || !draft.spec().system().metric()) {
			return draft.spec();
		}
		for (int j = 0; j < parts.size(); j++) {
			if (parts.get(j) instanceof Part.Amount a && a.dimension().unit().isEmpty()
					&& ((j == i + 1 || j == i + 2 && finePitch(row, i)) && a.role() == Part.Role.PLAIN || new SaidPitch(row).at(j))) {
				ThreadSpec s = draft.spec();
				ThreadSpec pitched = new ThreadSpec(s.system(), s.series(), s.size(), s.diameter(), a.dimension().value(), 0, 1, s.hand(),
						s.threadClass());
				if (ThreadTable.standard().isStandard(pitched)) {
					return pitched;
				}
			}
		}
		return draft.spec();
	}

	/** 3/8-16 X 6, 3/4-16 X 3 PLACES, M20 X4: so many of them, for no depth suits in either unit; 1/4-20 X 12 may be 12 mm deep. */
	private boolean pieces(int i, ThreadDraft draft) {
		ThreadSpec spec = draft.spec();
		return draft.extent().filter(said -> said.unit().isEmpty() && said.value() == Math.rint(said.value())
				&& !row.is(i + 1, Meaning.DEPTH) && (spec.system().metric() ? said.value() < SHALLOW * spec.diameter()
						: row.is(i + 1, Meaning.PLACES) || row.is(i + 1, Meaning.HOLE) || tooDeep(said.value(), spec))).isPresent();
	}

	/**
	 * Whether so many inches are no depth of a thread, and so many millimetres none either; of a pipe thread even its diameter is too much.
	 */
	private static boolean tooDeep(double number, ThreadSpec spec) {
		double deepest = (spec.taperOnDiameter() > 0 ? 1 : DEEP_IN_INCHES) * spec.diameter();
		return number * LengthUnit.INCH.mm() > deepest && number <= spec.diameter();
	}

	private Optional<Dimension> depth(int i, ThreadDraft draft, boolean pieces, List<Part> own, Optional<HoleEnd> end) {
		boolean extent = !pieces && draft.extent().isPresent() && (!draft.bare() || draft.named() || threadWords
				|| row.is(i + 1, Meaning.DEPTH));
		return extent ? draft.extent() : new CalledDepth(parts, own).of(i, end.equals(Optional.of(HoleEnd.THROUGH)));
	}

	/** INSERT TAP M8, TAP M8 FOR WIRE INSERTS: not the inserts of a cutter. */
	private static boolean insert(PartRow own) {
		for (int i = 0; i < own.parts().size(); i++) {
			if (own.is(i, Meaning.INSERT) && (own.is(i + 1, Meaning.TAP) || own.is(i - 1, Meaning.FOR) || own.is(i - 1, Meaning.INSERT)
					|| own.is(i - 1, Meaning.TAPPED) || own.is(i - 1, Meaning.THREAD))) {
				return true;
			}
		}
		return false;
	}

	/** 4 HOLES, 6 PLCS; not EVERY 200 HOLES, nor NEMA23 HOLES. */
	private static OptionalInt count(PartRow own) {
		for (int i = 0; i + 1 < own.parts().size(); i++) {
			if (own.parts().get(i) instanceof Part.Amount a && a.role() == Part.Role.PLAIN && a.dimension().unit().isEmpty()
					&& a.dimension().value() == Math.rint(a.dimension().value()) && a.dimension().value() <= 999
					&& !own.is(i - 1, Meaning.RATE) && !(i > 0 && own.parts().get(i - 1) instanceof Part.Other name
							&& Character.isLetter(name.text().codePointAt(0)) && name.end() == a.start())
					&& (own.is(i + 1, Meaning.HOLE) || own.is(i + 1, Meaning.PLACES) || own.is(i + 1, Meaning.TIMES))) {
				return OptionalInt.of((int) a.dimension().value());
			}
		}
		return OptionalInt.empty();
	}
}
