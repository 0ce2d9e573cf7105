package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** The mouse at the ruler: what is found in a line is told, and neither over the line nor over the fixes that a click offers. */
class RulerTest {

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void whatIsFoundIsToldBelowItsLine() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("told-at-ruler.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		Mouse.restAtRuler(program, "G99 G84");
		Screen.waitUntil("what is found", () -> !tips().isEmpty());
		int offset = program.widget().getText().indexOf("G99 G84");
		int line = program.widget().toDisplay(program.widget().getLocationAtOffset(offset)).y;
		assertThat(tips()).singleElement().satisfies(tip -> assertThat(tip.getBounds().y)
				.isGreaterThanOrEqualTo(line + program.widget().getLineHeight()));
		Mouse.away(program);
	}

	@Test
	void nothingIsToldWhileFixesAreOffered() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("offered-at-ruler.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		Mouse.clickRuler(program, "G99 G84", 0);
		Screen.waitUntil("proposals", () -> Proposals.shown().contains("Change F500 to F520"));
		Point at = Display.getCurrent().getCursorLocation();
		for (int step = 0; step < 3; step++) {
			Mouse.move(at.x + step % 2, at.y);
			Screen.idle(50);
		}
		Screen.idle(1200);
		assertThat(Proposals.shown()).contains("Change F500 to F520");
		assertThat(tips()).isEmpty();
		Proposals.take("F520");
		program.waitGone("F500");
	}

	/** Windows that tell of the finding and nothing else; beside a fix its reason stands too. */
	private static List<Shell> tips() {
		return Arrays.stream(Display.getCurrent().getShells()).filter(shell -> shell.isVisible()
				&& shell != PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell())
				.filter(shell -> Dialogs.find(shell, StyledText.class).stream().map(text -> text.getText().replace('\n', ' '))
						.anyMatch(text -> text.startsWith("F500 at S520") && text.endsWith("F520"))).toList();
	}
}
