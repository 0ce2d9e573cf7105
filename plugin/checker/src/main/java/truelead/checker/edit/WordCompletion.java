package truelead.checker.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import truelead.checker.machine.Budget;
import truelead.checker.machine.Modal;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.FeedMode;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.Figures;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.Work;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.ProgramText;

/**
 * What may be typed as a word of a block: the values in force, the codes of the machine profile, addresses with what they say here, places
 * to jump to.
 */
final class WordCompletion {

	private static final int CODES = 10_000;
	private static final int MOST_TARGETS = 100;
	private static final int DECIMALS = 4;
	/** Addresses whose value is offered anew whatever is written behind them. */
	private static final String VALUES = "FSTH";
	private static final String ADDRESSES = "XYZRQPIJKFSTHDABC";

	private final ProgramText text;
	private final ProgramFolder folder;
	private final Work work;
	private final int line;
	private final Budget budget;
	private final Map<String, Proposal> proposals = new LinkedHashMap<>();
	private String written;
	private int offset;
	private int length;
	private String behind = "";

	WordCompletion(ProgramText text, ProgramFolder folder, Work work, int line, Budget budget) {
		this.text = text;
		this.folder = folder;
		this.work = work;
		this.line = line;
		this.budget = budget;
	}

	List<Proposal> proposals(Block block, String partial, int from, int replaced) {
		written = partial;
		offset = from;
		length = replaced;
		int column = from + replaced - text.lineStart(line);
		behind = partial.isEmpty() && column < block.text().length() && block.text().charAt(column) > ' ' ? " " : "";
		if (jump(block, from + replaced - text.lineStart(line))) {
			targets(partial);
			return List.copyOf(proposals.values());
		}
		if (partial.startsWith("#")) {
			variables();
			return List.copyOf(proposals.values());
		}
		Situation situation = Probe.at(new ProgramFile(work.shop().program().name(), text), folder, machine(), line, List.of(), budget);
		situation.before().ifPresent(this::values);
		addresses(situation.motionBefore());
		codes('G');
		codes('M');
		return List.copyOf(proposals.values());
	}

	private MachineProfile machine() {
		return work.shop().profile();
	}

	private void values(Modal modal) {
		Optional<ToolUse> tool = tool();
		Optional<ThreadSpec> thread = tool.flatMap(this::thread);
		if (thread.isPresent() && modal.speed().known()) {
			boolean perTurn = modal.feedMode() == FeedMode.PER_REVOLUTION;
			double lead = thread.get().lead() / modal.unit().mm();
			String speed = Figures.number(modal.speed().value(), DECIMALS);
			String feed = Figures.number(perTurn ? lead : modal.speed().value() * lead, DECIMALS);
			add("F" + feed, perTurn ? "pitch of " + thread.get().designation() : "S" + speed + " × " + Figures.number(lead, DECIMALS + 1)
					+ " for " + thread.get().designation());
		}
		if (modal.feed().known()) {
			add("F" + Figures.number(modal.feed().value(), DECIMALS), "feed in force");
		}
		if (modal.speed().known()) {
			add("S" + Figures.number(modal.speed().value(), DECIMALS), "speed in force");
		}
		tool.filter(use -> use.number() >= 0).ifPresent(use -> add("H" + use.number(), "length offset of the tool in the spindle"));
		for (ToolUse use : work.tools()) {
			if (use.number() >= 0) {
				String kind = use.facts().kind().map(fact -> fact.value().toString().toLowerCase(Locale.ROOT).replace('_', ' '))
						.orElse("a tool of this program");
				add("T" + use.number(), kind + use.facts().thread().map(fact -> " " + fact.value().designation()).orElse(""));
			}
		}
	}

	/** The tool whose change stands last before the line. */
	private Optional<ToolUse> tool() {
		return work.tools().stream().filter(use -> use.change().filter(block -> block.file().name().equals(work.shop().program().name())
				&& block.line() < line).isPresent())
				.reduce((first, second) -> second.change().orElseThrow().line() >= first.change().orElseThrow().line() ? second : first);
	}

	private Optional<ThreadSpec> thread(ToolUse tool) {
		return tool.facts().thread().map(fact -> fact.value())
				.or(() -> work.operations().stream().filter(operation -> operation.tool().index() == tool.index())
						.flatMap(operation -> operation.wanted().thread().filter(fact -> fact.stated()).map(fact -> fact.value())
								.stream()).findFirst())
				.or(() -> work.course().singlePoints().stream().filter(turned -> turned.tool().index() == tool.index())
						.flatMap(turned -> turned.thread().filter(fact -> fact.stated()).map(fact -> fact.value()).stream()).findFirst());
	}

	private void addresses(String motion) {
		for (char address : ADDRESSES.toCharArray()) {
			if (written.isEmpty()) {
				add(Character.toString(address), CodeText.role(address, motion));
			}
		}
	}

	private void codes(char letter) {
		if (!written.isEmpty() && written.charAt(0) != letter) {
			return;
		}
		for (int tenfold = 0; tenfold < CODES; tenfold++) {
			String meaning = CodeText.meaning(machine(), letter, tenfold);
			if (!meaning.isEmpty() && (written.length() > 1 || !meaning.equals(CodeText.NO_CONCERN))) {
				add(CodeText.code(letter, tenfold), meaning);
			}
		}
	}

	/** Whether what stands before a column, or is being typed there, is a jump whose target is not finished. */
	private static boolean jump(Block block, int column) {
		return block.elements().stream().filter(element -> element.span().start() < column).reduce((first, second) -> second)
				.filter(last -> last instanceof Element.Jump jump && (jump.target() instanceof Expression.Missing
						|| jump.span().end() >= column)).isPresent();
	}

	private void targets(String partial) {
		int digits = partial.length();
		while (digits > 0 && Character.isDigit(partial.charAt(digits - 1))) {
			digits--;
		}
		offset += digits;
		length -= digits;
		written = partial.substring(digits);
		for (Name name : new Places(text, machine()).defined(line, MOST_TARGETS)) {
			add(name.key(), name.kind() == Name.Kind.LABEL ? "label" : "block N" + name.key());
		}
	}

	private void variables() {
		new Places(text, machine()).variables(MOST_TARGETS).forEach(variable -> add(variable, "set in this program"));
	}

	private void add(String word, String what) {
		if (word.startsWith(written) || VALUES.indexOf(word.charAt(0)) >= 0 && !written.isEmpty() && written.charAt(0) == word.charAt(0)
				&& word.length() > 1) {
			proposals.putIfAbsent(word, new Proposal(offset, length, word + behind, word + " — " + what, ""));
		}
	}
}
