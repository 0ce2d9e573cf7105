package truelead.grammar;

import java.util.BitSet;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.misc.Interval;

/**
 * What a run of letters and digits begins with. Controls do not care for spaces, so {@code GOTO100}, {@code GT3}, {@code THENM99} and
 * {@code XSIN[30]} are two tokens each, while {@code CYCLE800} is one name.
 *
 * @param type   the token type of the first part
 * @param length the number of characters of the first part
 */
record GluedName(int type, int length) {

	private static final Map<String, Integer> KEYWORDS = new HashMap<>();
	private static final Set<String> FUNCTIONS = Set.of("SIN", "COS", "TAN", "ASIN", "ACOS", "SQRT", "SQR", "ABS", "ROUND", "RND", "FIX",
			"FUP", "LN", "EXP", "BIN", "BCD", "ADP", "POW", "EXISTS");

	private static final BitSet LABELS = new BitSet();

	static {
		for (int type : new int[] { GCodeLexer.FOR, GCodeLexer.TO, GCodeLexer.OF, GCodeLexer.UNTIL, GCodeLexer.CASE, GCodeLexer.CALL,
				GCodeLexer.REPEAT, GCodeLexer.CONTROL, GCodeLexer.O_KEYWORD }) {
			LABELS.set(type);
		}
		KEYWORDS.put("IF", GCodeLexer.IF);
		KEYWORDS.put("THEN", GCodeLexer.THEN);
		KEYWORDS.put("WHILE", GCodeLexer.WHILE);
		KEYWORDS.put("DO", GCodeLexer.DO);
		KEYWORDS.put("END", GCodeLexer.END);
		KEYWORDS.put("MOD", GCodeLexer.MOD);
		KEYWORDS.put("NOT", GCodeLexer.NOT);
		KEYWORDS.put("ATAN", GCodeLexer.ATAN);
		for (String jump : new String[] { "GOTO", "GOTOF", "GOTOB", "GOTOC", "GOTOS" }) {
			KEYWORDS.put(jump, GCodeLexer.GOTO);
		}
		for (String comparison : new String[] { "EQ", "NE", "GT", "GE", "LT", "LE" }) {
			KEYWORDS.put(comparison, GCodeLexer.WORD_COMPARE);
		}
		for (String logic : new String[] { "AND", "OR", "XOR" }) {
			KEYWORDS.put(logic, GCodeLexer.LOGIC);
		}
		KEYWORDS.put("FOR", GCodeLexer.FOR);
		KEYWORDS.put("TO", GCodeLexer.TO);
		KEYWORDS.put("ELSEIF", GCodeLexer.ELSEIF);
		KEYWORDS.put("UNTIL", GCodeLexer.UNTIL);
		KEYWORDS.put("CASE", GCodeLexer.CASE);
		KEYWORDS.put("OF", GCodeLexer.OF);
		KEYWORDS.put("DEF", GCodeLexer.DEF);
		KEYWORDS.put("PROC", GCodeLexer.PROC);
		KEYWORDS.put("CALL", GCodeLexer.CALL);
		KEYWORDS.put("MCALL", GCodeLexer.MCALL);
		KEYWORDS.put("REPEAT", GCodeLexer.REPEAT);
		for (String control : new String[] { "LOOP", "ENDLOOP", "ENDFOR" }) {
			KEYWORDS.put(control, GCodeLexer.CONTROL);
		}
		for (Element.OKeyword keyword : Element.OKeyword.values()) {
			KEYWORDS.putIfAbsent(keyword.name(), GCodeLexer.O_KEYWORD);
		}
		for (String function : FUNCTIONS) {
			KEYWORDS.put(function, GCodeLexer.FUNCTION);
		}
	}

	/**
	 * Reads the run of letters and digits from {@code start} inclusive to {@code end} exclusive.
	 *
	 * @param variable whether the name of a variable or a label may stand here
	 */
	static GluedName of(CharStream line, int start, int end, boolean variable) {
		String run = line.getText(Interval.of(start, end - 1)).toUpperCase(Locale.ROOT);
		if (run.length() != end - start) {
			return new GluedName(GCodeLexer.NAME, end - start); // letters that grow in upper case: a foreign name
		}
		int next = next(line);
		boolean bracket = next == '[';
		int whole = type(run, next);
		if (whole != GCodeLexer.NAME) {
			return new GluedName(whole, run.length());
		}
		if (bracket && isFunction(run.substring(1))) {
			return new GluedName(run.charAt(0) == 'O' ? GCodeLexer.O : GCodeLexer.LETTER, 1);
		}
		int letters = letters(run);
		for (int cut = Math.min(5, run.length() - 1); cut >= 2; cut--) {
			int type = KEYWORDS.getOrDefault(run.substring(0, cut), GCodeLexer.NAME);
			if (cut <= letters && parts(type, run.substring(cut), cut == letters, bracket)) {
				return new GluedName(type, cut);
			}
		}
		if (!variable && letters == 2 && run.startsWith("ER") && twoAddresses(run, line)) {
			return new GluedName(GCodeParser.R_PLANE, 2);
		}
		if (!variable && letters == 2 && run.charAt(0) != 'E' && twoAddresses(run, line)) {
			return new GluedName(run.charAt(0) == 'O' ? GCodeLexer.O : GCodeLexer.LETTER, 1);
		}
		return new GluedName(GCodeLexer.NAME, run.length());
	}

	/**
	 * Two letters and a number are an address without its number and a word: {@code XY5}, {@code XZ-2.}; {@code CR=5} and {@code AB1:} are
	 * names, and so are the words of two letters that some controls begin with E: {@code EF0.5}.
	 */
	private static boolean twoAddresses(String run, CharStream line) {
		int after = line.LA(1);
		if (run.length() == 2) {
			return after == '.' || after == '-' || after == '+' || after == '#';
		}
		return run.substring(2).chars().allMatch(Character::isDigit) && !Damage.looksLikeWord(run) && "=:([".indexOf(next(line)) < 0;
	}

	/** Whether a keyword is one that programs take for a label or a variable too: {@code LOOP:}, {@code GOTOB REPEAT}. */
	static boolean mayNameLabel(int type) {
		return LABELS.get(type);
	}

	/** A function's name is one only where a value follows; {@code RND=2} and ROUND in prose are other names, and so is {@code LOOP:}. */
	private static int type(String run, int next) {
		int type = KEYWORDS.getOrDefault(run, GCodeLexer.NAME);
		boolean function = type == GCodeLexer.FUNCTION || type == GCodeLexer.ATAN;
		if (LABELS.get(type) && (next == ':' || next == '=')) {
			return GCodeLexer.NAME;
		}
		return function && "[(#+-.0123456789".indexOf(next) < 0 ? GCodeLexer.NAME : type;
	}

	private static int next(CharStream line) {
		int at = 1;
		while (line.LA(at) == ' ' || line.LA(at) == '\t') {
			at++;
		}
		return line.LA(at);
	}

	private static boolean isFunction(String name) {
		return FUNCTIONS.contains(name) || name.equals("ATAN");
	}

	/** Whether a keyword may be followed by the rest without a space between them. */
	private static boolean parts(int type, String rest, boolean digitNext, boolean bracket) {
		return switch (type) {
			case GCodeLexer.GOTO, GCodeLexer.DO, GCodeLexer.END -> digitNext;
			case GCodeLexer.WORD_COMPARE, GCodeLexer.LOGIC, GCodeLexer.MOD -> digitNext || rest.equals("NOT")
					|| bracket && isFunction(rest);
			case GCodeLexer.THEN -> rest.length() == 1 || Character.isDigit(rest.charAt(1)) || rest.startsWith("GOTO");
			default -> false;
		};
	}

	private static int letters(String run) {
		int count = 0;
		while (count < run.length() && run.charAt(count) >= 'A' && run.charAt(count) <= 'Z') {
			count++;
		}
		return count;
	}
}
