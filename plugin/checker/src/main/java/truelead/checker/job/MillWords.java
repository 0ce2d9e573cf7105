package truelead.checker.job;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.Token;
import truelead.checker.callout.CutterHand;
import truelead.checker.callout.CutterTeeth;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.Remembered;

/**
 * What a thread mill's name says of its teeth: {@code COMB THREAD MILL P1.5}, {@code SINGLE POINT THREAD MILL}.
 *
 * @param comb  several rows of teeth (true) or one (false)
 * @param left  whether it is ground to cut turning counter-clockwise: LEFT HAND CUTTING
 * @param pitch distance of its rows, mm
 * @param teeth number of flutes: 4 FLUTE, 3FL
 * @param toothFeed feed a tooth, mm: FZ 0.05
 * @param cutting length of its cutting part, mm: CUT LENGTH 26, 20 LOC, 12 LONG
 */
record MillWords(Optional<Boolean> comb, boolean left, Optional<Double> pitch, Optional<Integer> teeth, Optional<Double> toothFeed,
		Optional<Double> cutting) {

	private record Name(String text, LengthUnit unit) {
	}

	private static final int MOST_TEETH = 20;
	/** Longer names are read each time. */
	private static final int SHORT = 200;
	private static final Remembered<Name, MillWords> READ = new Remembered<>(1000, MillWords::readFresh);
	private static final Set<String> SPANS = Set.of("..", "...", "~", "\u2013", "\u2026", "/", "-", "\u00F7", "BIS", "A");
	private static final Set<String> LIMITS = Set.of("MAX", "MIN", "MAXIMUM", "UP", "BIS");
	/** Words for the cutting part's length; LENGTH alone is that of the tool, CUT LENGTH and FLUTE LENGTH are not. */
	private static final Set<String> LENGTHS = Set.of("LOC", "CL", "SCHNEIDLAENGE", "SCHNEIDENLAENGE", "SCHNEIDLÄNGE", "SCHNEIDENLÄNGE",
			"GEWINDELAENGE", "GEWINDELÄNGE");
	private static final Set<String> LENGTH = Set.of("LENGTH", "LEN", "LG");
	private static final Set<String> CUTS = Set.of("CUT", "CUTTING");
	private static final Set<String> LONG = Set.of("LONG", "LANG");
	private static final Set<String> PITCHES = Set.of("P", "STEIGUNG", "PASSO", "PASO", "PAS");
	private static final Set<String> LEFT = Set.of("LEFT", "LH", "LINKS");
	private static final Set<String> CUTS_LEFT = Set.of("LINKSSCHNEIDEND", "LINKSDREHEND", "LINKSLAUFEND", "LINKSLAUF");
	/** No thread mill cuts longer than this, mm (common practice, no source). */
	private static final double LONGEST = 150;
	/**
	 * A bare pitch in an inch program that would be longer in inches, mm, is in mm: no thread mill is coarser than 3 threads an inch
	 * (common practice, no source).
	 */
	private static final double COARSEST = 8.5;
	private static final double LONGEST_PITCH = 20;
	private static final Set<Double> PIPE = Set.of(27.0, 18.0, 14.0, 11.5);

	/** Reads a name; lengths without a unit are in the one given. */
	static MillWords read(String name, LengthUnit unit) {
		Name asked = new Name(name, unit);
		return name.length() <= SHORT ? READ.of(asked) : readFresh(asked);
	}

	private static MillWords readFresh(Name name) {
		LengthUnit unit = name.unit();
		NoteLexer lexer = new NoteLexer(CharStreams.fromString(name.text()));
		lexer.removeErrorListeners();
		CommonTokenStream tokens = new CommonTokenStream(lexer);
		tokens.fill();
		Optional<Boolean> comb = Optional.empty();
		boolean left = false;
		Optional<Double> pitch = Optional.empty();
		Optional<Integer> teeth = Optional.empty();
		Optional<Double> toothFeed = Optional.empty();
		Optional<Double> cutting = Optional.empty();
		for (int i = 0; i < tokens.size(); i++) {
			Token token = tokens.get(i);
			int at = i;
			if (CutterTeeth.several(token.getText())) {
				comb = Optional.of(true);
			} else if (CutterTeeth.one(token.getText()) || oneTooth(tokens, i)) {
				comb = Optional.of(false);
			} else if (isPitch(token) && !follows(tokens, i)) {
				Optional<Double> behind = countsTeeth(tokens, i + 2) ? Optional.empty() : pitch(tokens, i + 1, unit);
				boolean said = number(tokens, i + 1) && !countsTeeth(tokens, i + 2) || type(tokens, i + 1) == NoteLexer.EQUALS;
				pitch = behind.or(() -> said ? Optional.empty() : before(tokens, at, unit)).or(previous(pitch));
			} else if (token.getType() == NoteLexer.WORD && token.getText().equalsIgnoreCase("TPI") && pitch.isEmpty()) {
				pitch = perInch(tokens, i - 1);
			} else if (token.getType() == NoteLexer.WORD && token.getText().toUpperCase(Locale.ROOT).startsWith("NPT") && pitch.isEmpty()) {
				pitch = pipe(tokens, i - 1);
			} else if (token.getType() == NoteLexer.FLUTES || token.getType() == NoteLexer.TEETH) {
				teeth = teeth.or(count(tokens, i - 1));
			} else if (token.getType() == NoteLexer.Z && i + 1 < tokens.size() && unsigned(tokens.get(i + 1))) {
				teeth = teeth.or(count(tokens, i + 1));
			} else if (says(token, LENGTHS)
					|| says(token, LENGTH) && (i > 0 && (type(tokens, i - 1) == NoteLexer.FLUTES || says(tokens.get(i - 1), CUTS)))) {
				boolean flute = type(tokens, i - 1) == NoteLexer.FLUTES || i > 0 && says(tokens.get(i - 1), CUTS);
				Optional<Double> ahead = ofThePitch(tokens, i + 2) ? Optional.empty() : lengthUpTo(tokens, i + 1, unit, LONGEST);
				Optional<Double> before = ahead.isPresent() ? ahead : lengthBefore(tokens, flute ? i - 2 : i - 1, unit);
				cutting = before.isPresent() ? before : cutting;
			} else if (says(token, LONG)) {
				cutting = cutting.isPresent() ? cutting : lengthBefore(tokens, at - 1, unit);
			} else if (cutsLeft(tokens, i)) {
				left = true;
			} else if (token.getType() == NoteLexer.FZ) {
				toothFeed = length(tokens, i + 1, unit);
			}
		}
		return new MillWords(comb, left, pitch, teeth, toothFeed, cutting);
	}

	/** Z4 is four teeth, Z-4 a depth. */
	private static boolean unsigned(Token token) {
		return token.getType() == NoteLexer.NUMBER && Character.isDigit(token.getText().charAt(0));
	}

	/** The whole number before FLUTE or behind Z. */
	private static Supplier<Optional<Integer>> count(CommonTokenStream tokens, int at) {
		double value = at >= 0 && tokens.get(at).getType() == NoteLexer.NUMBER ? Double.parseDouble(tokens.get(at).getText()) : 0;
		return () -> value >= 1 && value <= MOST_TEETH && value == Math.rint(value) ? Optional.of((int) value) : Optional.empty();
	}

	/** ONE TOOTH, 1-ZAHN. */
	private static boolean oneTooth(CommonTokenStream tokens, int at) {
		int before = at > 1 && tokens.get(at - 1).getText().equals("-") ? at - 2 : at - 1;
		return before >= 0 && CutterTeeth.one(tokens.get(before).getText(), tokens.get(at).getText());
	}

	/** LEFT HAND CUTTING, LINKSSCHNEIDEND: of the cutter, not of the thread. */
	private static boolean cutsLeft(CommonTokenStream tokens, int at) {
		return says(tokens.get(at), CUTS_LEFT)
				|| says(tokens.get(at), LEFT) && CutterHand.meant(tokens.getTokens().stream().skip(at + 1).map(Token::getText).iterator());
	}

	/** The pitch of 12 TPI; the 12 of a callout, 1-12 TPI or 1X12, belongs to the thread. */
	private static Optional<Double> perInch(CommonTokenStream tokens, int at) {
		if (at < 0 || tokens.get(at).getType() != NoteLexer.NUMBER) {
			return Optional.empty();
		}
		// .375 DIA X 18 TPI: no size right before the X
		boolean callout = range(tokens, at) || at > 0 && (tokens.get(at - 1).getType() == NoteLexer.X && !diameter(tokens, at - 2)
				|| tokens.get(at - 1).getText().equals("-"));
		double tpi = Double.parseDouble(tokens.get(at).getText());
		return !callout && tpi >= 1 && tpi <= 100 ? Optional.of(LengthUnit.INCH.mm() / tpi) : Optional.empty();
	}

	/** The pitch of 14 NPT. */
	private static Optional<Double> pipe(CommonTokenStream tokens, int at) {
		boolean number = at >= 0 && tokens.get(at).getType() == NoteLexer.NUMBER
				&& PIPE.contains(Double.parseDouble(tokens.get(at).getText()));
		return number ? perInch(tokens, at) : Optional.empty();
	}

	/** 16 PITCH in an inch program are threads an inch, .0625 PITCH a length, and 1.5 PITCH millimetres. */
	private static Optional<Double> before(CommonTokenStream tokens, int at, LengthUnit unit) {
		if (at == 0 || tokens.get(at - 1).getType() != NoteLexer.NUMBER || range(tokens, at - 1)) {
			return Optional.empty();
		}
		double value = Double.parseDouble(tokens.get(at - 1).getText());
		boolean perInch = unit == LengthUnit.INCH && value >= 3;
		double pitch = perInch ? LengthUnit.INCH.mm() / value : bare(value, unit);
		return value > 0 && pitch < COARSEST ? Optional.of(pitch) : Optional.empty();
	}

	/**
	 * A pitch without a unit, mm: one in an inch program that no cutter has in inches is in mm, as P0.75 for M20x0.75 (common practice, no
	 * source).
	 */
	private static double bare(double value, LengthUnit unit) {
		return value * unit.mm() < COARSEST ? value * unit.mm() : value;
	}

	private static boolean countsTeeth(CommonTokenStream tokens, int at) {
		return at < tokens.size() && (tokens.get(at).getType() == NoteLexer.FLUTES || tokens.get(at).getType() == NoteLexer.TEETH);
	}

	private static Supplier<Optional<Double>> previous(Optional<Double> pitch) {
		return () -> pitch;
	}

	private static boolean isPitch(Token token) {
		return token.getType() == NoteLexer.PITCH || token.getType() == NoteLexer.WORD && says(token, PITCHES);
	}

	/** The P of M20x4P2 stands right behind a number and before another one; 16P alone is a pitch. */
	private static boolean follows(CommonTokenStream tokens, int at) {
		return number(tokens, at + 1) && at > 0 && tokens.get(at - 1).getType() == NoteLexer.NUMBER && tokens.get(at - 1).getStopIndex()
				+ 1 == tokens.get(at).getStartIndex();
	}

	/** PITCH 0.5-1.5, 1.0 TO 2.0 PITCH, MAX PITCH 2: what a cutter can make, not what it has. */
	private static boolean range(CommonTokenStream tokens, int number) {
		int behind = unit(tokens, number + 1) ? number + 2 : number + 1;
		int before = unit(tokens, number - 1) ? number - 2 : number - 1;
		return joined(tokens, before, number) || joined(tokens, number, behind)
				|| spans(tokens, number - 1) && number(tokens, unit(tokens, number - 2) ? number - 3 : number - 2) && !diameter(tokens,
						number - 3) || spans(tokens, behind) && number(tokens, behind + 1) && ends(tokens, behind + 2)
				|| limit(tokens, behind) || limit(tokens, number - 1) || limit(tokens, number - 2);
	}

	/** 0.5-1.5: two numbers, the second of which seems to have a sign. */
	private static boolean joined(CommonTokenStream tokens, int first, int second) {
		return number(tokens, first) && number(tokens, second) && tokens.get(second).getText().startsWith("-")
				&& tokens.get(second).getStartIndex() == tokens.get(second - 1).getStopIndex() + 1 && !spans(tokens, second + 1)
				&& !number(tokens, second + 1);
	}

	/** What may stand behind a range whose dash stands apart: in P1.058 - 3/8-24 UNF a thread does, in P1.0 - 3 FLUTE a number of teeth. */
	private static boolean ends(CommonTokenStream tokens, int at) {
		int type = type(tokens, at);
		return type == Token.EOF || type == NoteLexer.MM || type == NoteLexer.INCH || type == NoteLexer.COMMA || type == NoteLexer.PITCH
				|| type == NoteLexer.WORD && tokens.get(at).getText().equalsIgnoreCase("TPI");
	}

	private static boolean number(CommonTokenStream tokens, int at) {
		return type(tokens, at) == NoteLexer.NUMBER;
	}

	private static boolean unit(CommonTokenStream tokens, int at) {
		return type(tokens, at) == NoteLexer.MM || type(tokens, at) == NoteLexer.INCH;
	}

	private static boolean diameter(CommonTokenStream tokens, int at) {
		return type(tokens, at) == NoteLexer.D || type(tokens, at) == NoteLexer.DIAMETER || type(tokens, at) == NoteLexer.EQUALS;
	}

	private static int type(CommonTokenStream tokens, int at) {
		return at >= 0 && at < tokens.size() ? tokens.get(at).getType() : Token.EOF;
	}

	private static boolean spans(CommonTokenStream tokens, int at) {
		return type(tokens, at) == NoteLexer.TO || type(tokens, at) != Token.EOF && SPANS.contains(tokens.get(at).getText()
				.toUpperCase(Locale.ROOT));
	}

	private static boolean limit(CommonTokenStream tokens, int at) {
		return type(tokens, at) == NoteLexer.WORD && LIMITS.contains(tokens.get(at).getText().toUpperCase(Locale.ROOT));
	}

	/** 1.0 LOC 16 PITCH, .75 CL 20TPI: the number behind is the pitch. */
	private static boolean ofThePitch(CommonTokenStream tokens, int at) {
		return at < tokens.size() && (isPitch(tokens.get(at)) || says(tokens.get(at), Set.of("TPI")));
	}

	private static boolean says(Token token, Set<String> words) {
		return token.getType() != Token.EOF && words.contains(token.getText().toUpperCase(Locale.ROOT));
	}

	/** The length before 20 LOC, 12 LONG, .75 IN CL; the 5 of 5XD LONG and the size of M12 LONG are none. */
	private static Optional<Double> lengthBefore(CommonTokenStream tokens, int at, LengthUnit unit) {
		int number = unit(tokens, at) ? at - 1 : at;
		boolean glued = number > 0 && tokens.get(number - 1).getStopIndex() + 1 == tokens.get(number).getStartIndex()
				&& type(tokens, number - 1) == NoteLexer.WORD;
		return number(tokens, number) && !glued ? lengthUpTo(tokens, number, unit, LONGEST) : Optional.empty();
	}

	private static Optional<Double> length(CommonTokenStream tokens, int at, LengthUnit unit) {
		return lengthUpTo(tokens, at, unit, LONGEST_PITCH);
	}

	/** The pitch behind P or PITCH, mm. */
	private static Optional<Double> pitch(CommonTokenStream tokens, int at, LengthUnit unit) {
		int number = type(tokens, at) == NoteLexer.EQUALS ? at + 1 : at;
		boolean bare = number(tokens, number) && !unit(tokens, number + 1);
		if (number + 1 < tokens.size() && says(tokens.get(number + 1), Set.of("TPI"))) {
			// PITCH 14 TPI
			return perInch(tokens, number);
		}
		return lengthUpTo(tokens, at, bare ? LengthUnit.MM : unit, LONGEST_PITCH).map(value -> bare ? bare(value, unit) : value);
	}

	private static Optional<Double> lengthUpTo(CommonTokenStream tokens, int at, LengthUnit unit, double most) {
		int number = tokens.get(at).getType() == NoteLexer.EQUALS ? at + 1 : at;
		if (number >= tokens.size() || tokens.get(number).getType() != NoteLexer.NUMBER) {
			return Optional.empty();
		}
		int behind = number + 1 < tokens.size() ? tokens.get(number + 1).getType() : Token.EOF;
		LengthUnit stated = behind == NoteLexer.MM ? LengthUnit.MM : behind == NoteLexer.INCH ? LengthUnit.INCH : unit;
		if (range(tokens, number)) {
			return Optional.empty();
		}
		double value = Double.parseDouble(tokens.get(number).getText()) * stated.mm();
		return value > 0 && value < most ? Optional.of(value) : Optional.empty();
	}
}
