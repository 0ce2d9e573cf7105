package truelead.forms;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.CheckResult;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.LengthUnit;
import truelead.checker.rule.Finding;

/**
 * A program that forms are tried on, on the machine it is for, and what is found in it.
 *
 * @param name  where it comes from
 * @param found rule and severity of each finding
 */
record Sample(String name, MachineProfile machine, Program program, List<String> found) {

	/** What became of a sample in a form: declined for a reason, untouched where all is empty, or written anew with what is found in it. */
	record Tried(Optional<String> declined, String text, List<String> onlyBefore, List<String> onlyNow) {

		boolean rewritten() {
			return !text.isEmpty();
		}

		/** Whether it is of the form's kind and yet cannot be written so. */
		boolean refused() {
			return declined.isPresent() && !declined.get().equals(Program.FOR_A_LATHE) && !declined.get().equals(Program.FOR_A_MILL);
		}

		boolean differs() {
			return !onlyBefore.isEmpty() || !onlyNow.isEmpty();
		}
	}

	static Sample of(String name, String text, MachineProfile machine) {
		CheckResult result = Checked.text(text, machine);
		boolean inch = result.work().shop().unit().value() == LengthUnit.INCH;
		MachineProfile taken = result.work().shop().profile();
		return new Sample(name, machine, Program.of(text, taken.isLathe(), inch, taken.is(ProfileKey.NUMBERS_WITHOUT_POINT, "as-written")),
				said(result));
	}

	/** Writes it in a form and checks that. */
	Tried in(Form form) {
		Optional<String> declined = form.declines(program);
		List<String> lines = declined.isPresent() ? program.lines() : form.rewrite(program);
		if (lines.equals(program.lines())) {
			return new Tried(declined, "", List.of(), List.of());
		}
		String text = String.join("\n", lines);
		List<String> now = said(Checked.text(text, machine));
		List<String> gone = without(form, found, now);
		gone.removeIf(said -> form.mayFallSilent().contains(rule(said)));
		return new Tried(Optional.empty(), text, gone, without(form, now, found));
	}

	/** What stands in one list more often than in another, but for the rules that judge the form itself. */
	private static List<String> without(Form form, List<String> all, List<String> out) {
		List<String> left = new ArrayList<>(all);
		if (form.multiplies()) {
			left.removeAll(out);
		} else {
			out.forEach(left::remove);
		}
		left.removeIf(said -> form.judgedByIt().contains(rule(said)));
		return left;
	}

	private static String rule(String said) {
		return said.substring(0, said.indexOf(' '));
	}

	private static List<String> said(CheckResult result) {
		return result.findings().stream().filter(finding -> finding.accepted().isEmpty()).map(Sample::said).sorted().toList();
	}

	private static String said(Finding finding) {
		return finding.rule() + " " + finding.severity();
	}
}
