package truelead.checker.job;

import java.util.Optional;
import java.util.function.Supplier;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.Token;
import truelead.checker.machine.LengthUnit;

/**
 * What a thread mill's name says of its teeth: {@code COMB THREAD MILL P1.5}, {@code SINGLE POINT THREAD MILL}.
 *
 * @param comb  several rows of teeth (true) or one (false)
 * @param pitch distance of its rows, mm
 * @param teeth number of flutes: 4 FLUTE, 3FL
 * @param toothFeed feed a tooth, mm: FZ 0.05
 */
record MillWords(Optional<Boolean> comb, Optional<Double> pitch, Optional<Integer> teeth, Optional<Double> toothFeed) {

	private static final int MOST_TEETH = 20;

	/** Reads a name; lengths without a unit are in the one given. */
	static MillWords read(String name, LengthUnit unit) {
		NoteLexer lexer = new NoteLexer(CharStreams.fromString(name));
		lexer.removeErrorListeners();
		CommonTokenStream tokens = new CommonTokenStream(lexer);
		tokens.fill();
		Optional<Boolean> comb = Optional.empty();
		Optional<Double> pitch = Optional.empty();
		Optional<Integer> teeth = Optional.empty();
		Optional<Double> toothFeed = Optional.empty();
		for (int i = 0; i < tokens.size(); i++) {
			Token token = tokens.get(i);
			if (token.getType() == NoteLexer.COMB || several(tokens, i)) {
				comb = Optional.of(true);
			} else if (token.getType() == NoteLexer.SINGLE) {
				comb = Optional.of(false);
			} else if (isPitch(token) && !follows(tokens, i)) {
				pitch = length(tokens, i + 1, unit).or(previous(pitch));
			} else if (token.getType() == NoteLexer.WORD && token.getText().equalsIgnoreCase("TPI") && pitch.isEmpty()) {
				pitch = perInch(tokens, i - 1);
			} else if (token.getType() == NoteLexer.FLUTES || token.getType() == NoteLexer.TEETH) {
				teeth = teeth.or(count(tokens, i - 1));
			} else if (token.getType() == NoteLexer.Z && i + 1 < tokens.size() && unsigned(tokens.get(i + 1))) {
				teeth = teeth.or(count(tokens, i + 1));
			} else if (token.getType() == NoteLexer.FZ) {
				toothFeed = length(tokens, i + 1, unit);
			}
		}
		return new MillWords(comb, pitch, teeth, toothFeed);
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

	/** MULTI TOOTH, MULTI-FORM. */
	private static boolean several(CommonTokenStream tokens, int at) {
		return tokens.get(at).getType() == NoteLexer.WORD && tokens.get(at).getText().equalsIgnoreCase("MULTI");
	}

	/** The pitch of 12 TPI; the 12 of a callout, 1-12 TPI or 1X12, belongs to the thread. */
	private static Optional<Double> perInch(CommonTokenStream tokens, int at) {
		if (at < 0 || tokens.get(at).getType() != NoteLexer.NUMBER) {
			return Optional.empty();
		}
		boolean callout = at > 0 && (tokens.get(at - 1).getType() == NoteLexer.X || tokens.get(at - 1).getText().equals("-"));
		double tpi = Double.parseDouble(tokens.get(at).getText());
		return !callout && tpi >= 1 && tpi <= 100 ? Optional.of(LengthUnit.INCH.mm() / tpi) : Optional.empty();
	}

	private static Supplier<Optional<Double>> previous(Optional<Double> pitch) {
		return () -> pitch;
	}

	private static boolean isPitch(Token token) {
		return token.getType() == NoteLexer.PITCH || token.getType() == NoteLexer.WORD && token.getText().equalsIgnoreCase("P");
	}

	/** The P of M20x4P2 stands right behind a number. */
	private static boolean follows(CommonTokenStream tokens, int at) {
		return at > 0 && tokens.get(at - 1).getType() == NoteLexer.NUMBER && tokens.get(at - 1).getStopIndex() + 1 == tokens.get(at).getStartIndex();
	}

	private static Optional<Double> length(CommonTokenStream tokens, int at, LengthUnit unit) {
		int number = tokens.get(at).getType() == NoteLexer.EQUALS ? at + 1 : at;
		if (number >= tokens.size() || tokens.get(number).getType() != NoteLexer.NUMBER) {
			return Optional.empty();
		}
		int behind = number + 1 < tokens.size() ? tokens.get(number + 1).getType() : Token.EOF;
		LengthUnit stated = behind == NoteLexer.MM ? LengthUnit.MM : behind == NoteLexer.INCH ? LengthUnit.INCH : unit;
		double value = Double.parseDouble(tokens.get(number).getText()) * stated.mm();
		return value > 0 && value < 20 ? Optional.of(value) : Optional.empty();
	}
}
