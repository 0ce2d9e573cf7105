package truelead.checker.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import truelead.checker.machine.Budget;
import truelead.checker.machine.Cycle;
import truelead.checker.machine.Interpreter;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Step;
import truelead.checker.machine.StepSink;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.Meaning;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.program.Setting;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.ProgramText;

/**
 * Finds out what holds at a block by running the program with dwells put in before and behind it: a dwell changes nothing, is a step that
 * carries the state, and its P word can be any expression. The text shares all chunks but one with the program, so only that one is read
 * anew.
 */
public final class Probe implements StepSink {

	private static final String DWELL = "G4 P0";
	private static final int DWELL_CODE = 40;

	private final String file;
	private final int line;
	private final List<Setting> values;
	private Optional<Modal> before = Optional.empty();
	private Optional<Modal> after = Optional.empty();
	private String motion = "";
	private String motionBefore = "";
	private String motionAfter = "";

	private Probe(String file, int line, int expressions) {
		this.file = file;
		this.line = line;
		this.values = new ArrayList<>(Collections.nCopies(expressions, Setting.NONE));
	}

	/**
	 * What holds at a line.
	 *
	 * @param expressions as written in that line
	 * @param budget      how far the program is followed; beyond it nothing is known
	 */
	public static Situation at(ProgramFile program, ProgramFolder folder, MachineProfile machine, int line, List<String> expressions,
			Budget budget) {
		Probe probe = new Probe(program.name(), line, expressions.size());
		if (machine.gCode(DWELL_CODE).contains(Meaning.DWELL) && line < program.text().lineCount()) {
			ProgramFile probed = new ProgramFile(program.name(), probe.with(program.text(), expressions));
			Interpreter.run(probed, folder, machine,
					new Budget(budget.blocks(), () -> probe.after.isPresent() || budget.cancelled().getAsBoolean()), probe);
		}
		return new Situation(probe.before, probe.after, probe.motionBefore, probe.motionAfter, probe.values);
	}

	private ProgramText with(ProgramText text, List<String> expressions) {
		StringBuilder probes = new StringBuilder(head(text.block(line)));
		for (String expression : expressions) {
			probes.append("G4 P").append(expression.indexOf('(') >= 0 ? "=" + expression : "[" + expression + "]").append('\n');
		}
		probes.append(DWELL).append('\n');
		int start = text.lineStart(line);
		return text.edit(start + text.line(line).length(), 0, "\n" + DWELL).edit(start, 0, probes.toString());
	}

	/** What a jump to the block looks for: said before the probes too, where it is found first. */
	private static String head(Block block) {
		for (Element element : block.elements()) {
			if (element instanceof Element.Label || element instanceof Element.Word word && word.address() == 'N') {
				return block.text().substring(element.span().start(), element.span().end()) + " ";
			}
		}
		return "";
	}

	@Override
	public void accept(Step step) {
		int probe = step.block().file().name().equals(file) ? step.block().line() - line : -1;
		boolean dwell = step instanceof Step.Event event && event.kind() == Step.EventKind.DWELL;
		if (dwell && probe >= 0 && probe < values.size()) {
			if (before.isEmpty()) {
				values.set(probe, ((Step.Event) step).value());
			}
		} else if (dwell && probe == values.size() && before.isEmpty()) {
			before = Optional.of(step.modal());
			motionBefore = motion;
		} else if (dwell && probe == values.size() + 2 && before.isPresent() && after.isEmpty()) {
			after = Optional.of(step.modal());
			motionAfter = motion;
		} else {
			motion = motionOf(step);
		}
	}

	private String motionOf(Step step) {
		if (step instanceof Step.Move move) {
			return move.rapid() ? "rapid move" : "straight move at feed";
		} else if (step instanceof Step.Contour contour) {
			return contour.rapid() ? "rapid move" : "straight move at feed";
		} else if (step instanceof Step.Arc) {
			return "arc";
		} else if (step instanceof Step.Synchronised) {
			return "move synchronised with the spindle";
		} else if (step instanceof Step.Stroke stroke) {
			return name(stroke.cycle());
		} else if (step instanceof Step.Row row) {
			return name(row.first().cycle());
		}
		return step instanceof Step.Event event && event.kind() == Step.EventKind.CYCLE_CANCELLED ? "" : motion;
	}

	private static String name(Cycle cycle) {
		return "cycle " + CodeText.code('G', cycle.code());
	}
}
