package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.ILogListener;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A rule of ours that breaks is a finding and an entry in the log; all other rules go on, and so does the editor. */
class BrokenRuleTest {

	private static final String SAYS = "this rule failed on this program";

	private final List<IStatus> logged = Collections.synchronizedList(new ArrayList<>());
	private final ILogListener log = (status, bundle) -> logged.add(status);

	@BeforeEach
	void listen() {
		Platform.addLogListener(log);
	}

	@AfterEach
	void close() {
		OpenProgram.closeAll();
		Platform.removeLogListener(log);
	}

	@Test
	void itsFailureIsAFindingAndLoggedAndTheOthersGoOn() {
		IFile file = OpenProgram.file("broken-rule.nc", Programs.WRONG_FEED);
		try (BrokenRule broken = BrokenRule.inPlaceOf("hole-missing")) {
			OpenProgram program = OpenProgram.open(file);
			assertThat(program.waitFor(SAYS).type()).isEqualTo("warning");
			assertThat(program.waitFor("F500").type()).isEqualTo("error");
			Screen.waitUntil("it is in Problems too",
					() -> OpenProgram.markers(file, "truelead.editor.finding").stream().anyMatch(message -> message.startsWith(SAYS)));
			assertThat(logged).as("the log says which rule, on what, and where in it").anySatisfy(entry -> assertThat(entry.getMessage())
					.contains("broken-rule.nc: " + broken.name(), "IllegalStateException", "BrokenRule.check"));
			program.caretBehind("R5. F5");
			Proposals.at(SWT.CTRL, '1');
			Proposals.take("F520");
			program.waitGone("F500");
			assertThat(program.document().get()).isEqualTo(Programs.GOOD);
			assertThat(program.findings()).anyMatch(finding -> finding.message().startsWith(SAYS));
		}
	}

	@Test
	void onceItIsWholeAgainTheNextKeyTakesTheFindingAway() {
		OpenProgram program;
		try (BrokenRule broken = BrokenRule.inPlaceOf("hole-missing")) {
			program = OpenProgram.open(OpenProgram.file("whole-rule.nc", Programs.GOOD));
			program.waitFor(SAYS);
		}
		program.caretBehind("M30");
		Screen.type(" ");
		program.waitGone(SAYS);
	}
}
