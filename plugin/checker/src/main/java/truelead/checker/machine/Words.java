package truelead.checker.machine;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import truelead.checker.arithmetic.Evaluator;
import truelead.checker.arithmetic.Value;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Reason;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.Span;

/** The words of the block being executed, by address, with their values worked out; filled anew for every block. */
final class Words {

	/** From the sign of a polar radius over the letters to the sign of a polar angle. */
	private static final char FIRST = '@';
	private static final char LAST = '^';
	private static final int SLOTS = LAST - FIRST + 1;

	private final Evaluator evaluator;
	private final double[] values = new double[SLOTS];
	private final Element.Word[] written = new Element.Word[SLOTS];
	private final Reason[] whys = new Reason[SLOTS];
	private final int[] given = new int[SLOTS];
	private int[] gCodes = new int[8];
	private Element.Word[] gWords = new Element.Word[8];
	private int[] mCodes = new int[8];
	private Element.Word[] mWords = new Element.Word[8];
	private int gCount;
	private int mCount;
	private int present;
	private int repeated;
	private int incremental;
	private int absolute;
	private boolean synchronous;
	private boolean machineAxes;
	private boolean pole;
	private double turns;
	/** Where the pass of a thread starts, by name, degrees; null where the block does not say it. */
	private Double startAngle;
	/** Text in quotation marks or angle brackets; null where there is none. */
	private String named;
	private Setting nextTool = Setting.NONE;
	private BlockRef block;
	private String text;

	Words(Evaluator evaluator) {
		this.evaluator = evaluator;
	}

	/** Takes the words among some elements of a block. */
	void load(BlockRef ref, String blockText, List<? extends Element> elements) {
		block = ref;
		text = blockText;
		gCount = 0;
		mCount = 0;
		present = 0;
		repeated = 0;
		incremental = 0;
		absolute = 0;
		synchronous = false;
		machineAxes = false;
		pole = false;
		turns = 0;
		startAngle = null;
		named = null;
		nextTool = Setting.NONE;
		for (Element element : elements) {
			if (element instanceof Element.Word word) {
				load(word);
			} else if (element instanceof Element.Comment comment) {
				named = comment.mark().names() && named == null ? comment.text().strip() : named;
			} else if (element instanceof Element.Corner corner) {
				synchronous |= corner.address() == 'R' && corner.value() instanceof Expression.Number number && number.value() == 1;
			} else if (element instanceof Element.Assignment given && given.target() instanceof Expression.NamedVariable name) {
				load(given, name.name());
			}
		}
	}

	/** Words of more than one letter: the turns of an arc, its radius, {@code CR=8}, and where a thread starts. */
	private void load(Element.Assignment given, String name) {
		if (name.equalsIgnoreCase("TURN")) {
			turns = evaluator.value(given.value()).number();
		} else if (name.equalsIgnoreCase("AP") || name.equalsIgnoreCase("RP")) {
			pole = true;
			load(new Element.Word(name.equalsIgnoreCase("AP") ? '^' : '@', -1, given.value(), given.span()));
		} else if (name.equalsIgnoreCase(StartAngle.BY_NAME)) {
			startAngle = evaluator.value(given.value()).number();
		} else if (name.equalsIgnoreCase("CR")) {
			load(new Element.Word('R', -1, given.value(), given.span()));
		}
	}

	/**
	 * The second T word of the block: beside a tool change the tool that is made ready for the next one (from memory); NONE where there is
	 * none.
	 */
	Setting nextTool() {
		return nextTool;
	}

	/**
	 * Whether {@code ,R1} stands in the block, which in a tapping cycle of some controls asks for synchronous tapping with the lead as F.
	 */
	boolean synchronous() {
		return synchronous;
	}

	/** Whether the block leads to an angle or a radius about a pole, {@code AP=90 RP=30}: the words of RS-274 for them stand for both. */
	boolean aboutPole() {
		return pole;
	}

	/** Whether an axis is named with its number, {@code X1=0}, as those of the machine are. */
	boolean machineAxes() {
		return machineAxes;
	}

	/** Whole turns beyond the arc of the block, {@code TURN=4}; NaN where not known. */
	double turns() {
		return turns;
	}

	private void load(Element.Word word) {
		char address = word.address();
		if (address < FIRST || address > LAST || word.value() instanceof Expression.Missing || word.extension() > 1 && address != 'G'
				&& !FurtherSpindles.speaksTo(word)) {
			return;
		}
		Value value = word.value() instanceof Expression.Number number ? null : evaluator.ofWord(word.value());
		if (value != null && value.vacant()) {
			return;
		}
		machineAxes |= word.extension() == 1 && address >= 'X';
		double number = value == null ? ((Expression.Number) word.value()).value() : value.number();
		if (address == 'G') {
			addG(word.extension() < 0 ? MachineProfile.tenfold(number) : ModalGroup.code(word.extension(), number), word);
		} else if (address == 'M') {
			addM(FurtherSpindles.code(word, number), word);
		} else if (address == 'T' && has('T')) {
			nextTool = new Setting(number, Optional.of(ref(word)), value == null ? Reason.NONE : value.why());
		} else {
			int index = address - FIRST;
			repeated |= present & 1 << index;
			present |= 1 << index;
			values[index] = number;
			written[index] = word;
			whys[index] = value == null ? Reason.NONE : value.why();
			given[index] = value == null ? ((Expression.Number) word.value()).decimals() : value.decimals();
			if (word.value() instanceof Expression.Function function) {
				incremental |= function.name().equals("IC") ? 1 << index : 0;
				absolute |= function.name().equals("AC") ? 1 << index : 0;
			}
		}
	}

	private void addG(int code, Element.Word word) {
		if (gCount == gCodes.length) {
			gCodes = Arrays.copyOf(gCodes, gCount * 2);
			gWords = Arrays.copyOf(gWords, gCount * 2);
		}
		gCodes[gCount] = code;
		gWords[gCount++] = word;
	}

	private void addM(int code, Element.Word word) {
		if (mCount == mCodes.length) {
			mCodes = Arrays.copyOf(mCodes, mCount * 2);
			mWords = Arrays.copyOf(mWords, mCount * 2);
		}
		mCodes[mCount] = code;
		mWords[mCount++] = word;
	}

	/** Adds the code, times ten, of a pattern of holes that is called by name. */
	void addPattern(int code, Span name) {
		addG(code, new Element.Word('G', -1, new Expression.Missing(name), name));
	}

	/** Takes an M behind the last G for a letter like any other, as a macro call does: there it is an argument and no code. */
	void takeMBehindG() {
		int last = mCount - 1;
		if (last >= 0 && gCount > 0 && mWords[last].span().start() > gWords[gCount - 1].span().start()) {
			Value value = evaluator.ofWord(mWords[last].value());
			int index = 'M' - FIRST;
			present |= 1 << index;
			values[index] = value.number();
			written[index] = mWords[last];
			whys[index] = value.why();
			given[index] = value.decimals();
			mCount = last;
		}
	}

	BlockRef block() {
		return block;
	}

	/** Whether nothing but G codes of a motion and axis and feed words may be there. */
	boolean has(char address) {
		return (present & 1 << address - FIRST) != 0;
	}

	/** Whether any of these addresses is there. */
	boolean any(int mask) {
		return (present & mask) != 0;
	}

	/** Whether any of these addresses is there more than once. */
	boolean repeats(int mask) {
		return (repeated & mask) != 0;
	}

	/** Whether a word with a whole number is all there is but a count P. */
	boolean onlyNumber(char address) {
		boolean alone = present != 0 && (present & ~(1 << address - FIRST | 1 << 'P' - FIRST | 1 << 'N' - FIRST)) == 0 && gCount == 0
				&& mCount == 0;
		return alone && has(address) && withoutPoint(address) && value(address) >= 0;
	}

	/** A mask for {@link #any}. */
	static int mask(String addresses) {
		return addresses.chars().map(address -> 1 << address - FIRST).reduce(0, (a, b) -> a | b);
	}

	/** Hides words that belong to another code of the block; gives what {@link #show} takes to bring them back. */
	int hide(int mask) {
		int hidden = present & mask;
		present &= ~mask;
		return hidden;
	}

	/** Brings hidden words back. */
	void show(int hidden) {
		present |= hidden;
	}

	/** The value of a word that is there, in program units; NaN where not known. */
	double value(char address) {
		return values[address - FIRST];
	}

	/** What the words come to that are no plain numbers, by their letters, the angle by name as Q; NaN where that is not known. */
	Map<Character, Double> computed() {
		Map<Character, Double> computed = new TreeMap<>();
		if (startAngle != null) {
			computed.put('Q', startAngle);
		}
		for (char letter = 'A'; letter <= 'Z'; letter++) {
			if (has(letter) && !(written[letter - FIRST].value() instanceof Expression.Number)) {
				computed.put(letter, value(letter));
			}
		}
		return computed;
	}

	/** Why the value of a word is not known. */
	Reason why(char address) {
		return whys[address - FIRST];
	}

	/** Whether the word says by itself that it is an increment, or that it is not. */
	boolean incremental(char address, boolean otherwise) {
		int bit = 1 << address - FIRST;
		return (incremental & bit) != 0 || otherwise && (absolute & bit) == 0;
	}

	/** Decimals written, -1 where the value is no plain number; 0 for a whole one. */
	int decimals(char address) {
		return written[address - FIRST].value() instanceof Expression.Number number ? number.decimals() : -1;
	}

	/** Whether the value is a number without a decimal point. */
	boolean withoutPoint(char address) {
		return written[address - FIRST].value() instanceof Expression.Number number && !number.point();
	}

	/** A text in quotation marks as the value of a word. */
	Optional<String> name(char address) {
		return has(address) && written[address - FIRST].value() instanceof Expression.Text name ? Optional.of(name.text())
				: Optional.empty();
	}

	/** The name of the program that a call says in place of a number: {@code M98 P"HOLES"}, {@code G65 "HOLES.NC"}, {@code M98 <HOLES>}. */
	Optional<String> calledName() {
		return name('P').or(() -> Optional.ofNullable(named).filter(name -> !name.isEmpty()));
	}

	/** Digits the number is written with, leading zeros included; 0 where it is an expression. */
	int digits(char address) {
		Element.Word word = written[address - FIRST];
		return word.value() instanceof Expression.Number number ? (int) text.substring(number.span().start(), number.span().end()).chars()
				.filter(Character::isDigit).count() : 0;
	}

	WordRef ref(char address) {
		return WordRef.of(block, written[address - FIRST], given(address), text);
	}

	/** Decimals that the value is written with, here or where the variable was given it; -1 where it was worked out. */
	int given(char address) {
		return given[address - FIRST];
	}

	Setting setting(char address) {
		return new Setting(value(address), Optional.of(ref(address)), why(address));
	}

	int gCount() {
		return gCount;
	}

	/** Code times ten. */
	int gCode(int index) {
		return gCodes[index];
	}

	WordRef gRef(int index) {
		return ref(gWords[index]);
	}

	int mCount() {
		return mCount;
	}

	/** Code times ten. */
	int mCode(int index) {
		return mCodes[index];
	}

	WordRef mRef(int index) {
		return ref(mWords[index]);
	}

	private WordRef ref(Element.Word word) {
		return WordRef.of(block, word, text);
	}
}
