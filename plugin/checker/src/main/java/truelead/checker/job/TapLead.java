package truelead.checker.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.Token;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.LeadForm;

/**
 * The lead of a tap as somebody wrote it; one of the two is there.
 *
 * @param turns  threads
 * @param length mm
 */
record TapLead(Optional<Double> turns, Optional<Double> length) {

	/** No tap has more threads ground down than this (ASME B94.9 ends at 10), so that a bigger number is no lead; threads. */
	private static final double MOST_TURNS = 20;

	/** The same as a length, mm. */
	private static final double LONGEST = 200;

	/** Words that stand beside the form or the number and say nothing more. */
	private static final Set<String> BESIDE = Set.of("TAP", "TYPE", "STYLE", "CHAMFER", "DIN", "ISO", "ASME", "P", "XP", "TH", "THD",
			"THDS", "GANG", "G\u00c4NGE", "GAENGE", "ANSCHNITT");

	/** Further ways to write the names of the forms. */
	private static final Map<String, String> SPELLINGS = Map.of("BOTTOM", "BOTTOMING", "BTM", "BOTTOMING", "MOD", "MODIFIED",
			"SEMI", "MODIFIED");

	/** Reads a cell of a tool list; empty for what is no lead. */
	static Optional<TapLead> ofCell(String text, boolean forming) {
		NoteLexer lexer = new NoteLexer(CharStreams.fromString(withPoints(text)));
		lexer.removeErrorListeners();
		NoteParser parser = new NoteParser(new CommonTokenStream(lexer));
		parser.removeErrorListeners();
		NoteParser.LeadCellContext cell = parser.leadCell();
		return parser.getNumberOfSyntaxErrors() > 0 ? Optional.empty() : of(cell.lead(), forming);
	}

	/** A comma between digits is a decimal point, any other parts words. */
	private static String withPoints(String text) {
		StringBuilder points = new StringBuilder(text);
		for (int i = 0; i < text.length(); i++) {
			if (text.charAt(i) == ',') {
				boolean decimal = i > 0 && i + 1 < text.length() && Character.isDigit(text.charAt(i - 1))
						&& Character.isDigit(text.charAt(i + 1));
				points.setCharAt(i, decimal ? '.' : ' ');
			}
		}
		return points.toString();
	}

	/** What words and numbers say; a number goes before the form, of which it is a part; empty for what is no lead. */
	static Optional<TapLead> of(NoteParser.LeadContext given, boolean forming) {
		String name = name(given);
		Optional<LeadForm> form = LeadForm.of(name, forming).or(() -> LeadForm.of(name, !forming));
		List<NoteParser.LeadCountContext> counts = given.leadCount().stream().filter(count -> !behindDin(given, count)).toList();
		if (counts.size() > 1 || form.isEmpty() && (!name.isEmpty() || counts.isEmpty())) {
			return Optional.empty();
		}
		return counts.isEmpty() ? form.map(one -> new TapLead(Optional.of(one.typicalThreads()), Optional.empty())) : of(counts.get(0));
	}

	/** Of a range the middle. */
	private static Optional<TapLead> of(NoteParser.LeadCountContext count) {
		double middle = count.NUMBER().stream().mapToDouble(number -> Math.abs(NoteItems.number(number.getText()))).average().orElseThrow();
		if (count.unit() == null) {
			return middle > 0 && middle <= MOST_TURNS ? Optional.of(new TapLead(Optional.of(middle), Optional.empty())) : Optional.empty();
		}
		double length = middle * (count.unit().MM() != null ? LengthUnit.MM : LengthUnit.INCH).mm();
		return length > 0 && length <= LONGEST ? Optional.of(new TapLead(Optional.empty(), Optional.of(length))) : Optional.empty();
	}

	private static String name(NoteParser.LeadContext given) {
		List<String> words = new ArrayList<>();
		for (NoteParser.LeadWordContext word : given.leadWord()) {
			int type = word.getStart().getType();
			String text = word.getText().toUpperCase(Locale.ROOT);
			if ((type == NoteLexer.WORD || type == NoteLexer.D || type == NoteLexer.BOTTOM) && !BESIDE.contains(text)) {
				words.add(SPELLINGS.getOrDefault(text, text));
			}
		}
		return String.join(" ", words);
	}

	/** The number of a standard. */
	private static boolean behindDin(NoteParser.LeadContext given, NoteParser.LeadCountContext count) {
		int before = given.children.indexOf(count) - 1;
		Token word = before < 0 ? null : ((org.antlr.v4.runtime.ParserRuleContext) given.children.get(before)).getStart();
		return word != null && word.getText().equalsIgnoreCase("DIN");
	}
}
