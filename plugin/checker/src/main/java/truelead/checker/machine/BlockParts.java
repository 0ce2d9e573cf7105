package truelead.checker.machine;

import java.util.List;
import java.util.Set;
import truelead.checker.profile.ProfileKey;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.ProgramText;

/** Executes a block that is more than words: assignments, conditions, jumps, statements of richer languages. */
final class BlockParts {

	private final Flow flow;
	private final MachineState state;
	private final BlockExecutor executor;
	private final Assignments assignments;
	private final Words words;
	private final OWords oWords;
	private final RicherStatements richer;
	private final Controls controls;
	private final boolean assignAfterBlock;
	private final Set<Integer> skipLevels;

	BlockParts(Flow flow, MachineState state, BlockExecutor executor, Calls calls, Assignments assignments, Words words) {
		this.flow = flow;
		this.state = state;
		this.executor = executor;
		this.assignments = assignments;
		this.words = words;
		this.oWords = new OWords(flow, calls);
		this.richer = new RicherStatements(flow, calls, state);
		this.controls = new Controls(flow, flow.doubts());
		this.assignAfterBlock = state.profile.is(ProfileKey.ASSIGNMENT, "after-block");
		this.skipLevels = state.profile.blockDelete();
	}

	/** A block that is more than words: its parts in order; one that goes elsewhere ends it, and so does a switched-on block delete. */
	void execute(CallFrame frame, Block read, List<Element> elements) {
		int last = elements.size();
		boolean machine = false;
		for (int i = 0; i < last; i++) {
			Element element = elements.get(i);
			if (element instanceof Element.BlockDelete delete && skipLevels.contains(delete.level())) {
				last = i;
			} else if (element instanceof Element.Conditional conditional) {
				List<Element> behind = elements.subList(i + 1, last);
				if (commentsOnly(behind) && controls.statement(frame, conditional)) {
					return;
				}
				if (assignments.forgets(conditional, behind) || !flow.holds(conditional.condition())) {
					last = i;
				}
			} else if (element instanceof Element.Assignment assignment && !assignAfterBlock) {
				assignments.assign(assignment);
			} else if (goesElsewhere(frame, element)) {
				return;
			} else if (!forTheOperator(elements, i) && !pattern(element, read.text())) {
				richer.follow(frame, element, read.text());
				machine |= RicherStatements.machineCoordinates(element);
			}
		}
		executor.machineCoordinates(machine);
		flow.words(read, elements.subList(0, last));
		executor.machineCoordinates(false);
		if (assignAfterBlock) {
			for (Element element : elements.subList(0, last)) {
				if (element instanceof Element.Assignment assignment) {
					assignments.assign(assignment);
				}
			}
		}
	}

	/** Makes the holes of a pattern that is called by name under a cycle; false where it is none. */
	private boolean pattern(Element element, String text) {
		if (!(element instanceof Element.Opaque named) || !executor.onCycle() || HolePattern.code(named.name()) == 0) {
			return false;
		}
		int behind = named.span().start() + named.name().length();
		words.load(flow.block(), text, ProgramText.of(" ".repeat(behind) + text.substring(behind, named.span().end())).block(0).elements());
		words.addPattern(HolePattern.code(named.name()), named.span());
		return executor.pattern(words);
	}

	/** Text right behind an M word is shown to the operator. */
	private static boolean forTheOperator(List<Element> elements, int index) {
		return index > 0 && elements.get(index) instanceof Element.Opaque && elements.get(index - 1) instanceof Element.Word word
				&& word.address() == 'M';
	}

	private static boolean commentsOnly(List<Element> elements) {
		return elements.stream().allMatch(element -> element instanceof Element.Comment);
	}

	private boolean goesElsewhere(CallFrame frame, Element element) {
		if (element instanceof Element.Jump jump) {
			Jumps.jump(flow, frame, jump, state.profile);
		} else if (element instanceof Element.LoopStart loop) {
			MacroLoops.start(flow, frame, loop);
		} else if (element instanceof Element.LoopEnd end) {
			MacroLoops.end(flow, frame, end);
		} else if (element instanceof Element.OStatement statement) {
			oWords.statement(frame, statement);
		} else if (element instanceof Element.Choice choice) {
			Jumps.choose(flow, frame, choice, state.profile);
		} else {
			return controls.statement(frame, element);
		}
		return true;
	}
}
