package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ProjectScope;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.ide.IDE;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.osgi.service.prefs.BackingStoreException;

/** Findings are removed by a key, and by the Problems view. */
class FixesTest {

	private static final String OURS = "truelead.editor.finding";

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void theQuickFixKeyCorrectsTheFeedAndOneUndoTakesItBack() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("fix.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		program.caretBehind("R5. F5");
		Screen.chord(SWT.CTRL, '1');
		Screen.waitUntil("proposals", () -> proposals() != null);
		assertThat(Arrays.stream(proposals().getItems()).map(item -> item.getText())).anyMatch(text -> text.contains("F520"));
		take("F520");
		program.waitGone("F500");
		assertThat(program.document().get()).isEqualTo(Programs.GOOD);
		Screen.chord(SWT.CTRL, 'z');
		program.waitFor("F500");
		assertThat(program.document().get()).isEqualTo(Programs.WRONG_FEED);
	}

	@Test
	void theProblemsViewOffersTheSameFix() throws CoreException {
		IFile file = OpenProgram.file("problem.nc", Programs.WRONG_FEED);
		OpenProgram program = OpenProgram.open(file);
		program.waitFor("F500");
		Screen.waitUntil("a marker", () -> OpenProgram.markers(file, OURS).stream().anyMatch(message -> message.contains("F500")));
		IMarker marker = Arrays.stream(file.findMarkers(OURS, true, IResource.DEPTH_ZERO))
				.filter(found -> found.getAttribute(IMarker.MESSAGE, "").contains("F500")).findFirst().orElseThrow();
		IMarkerResolution fix = Arrays.stream(IDE.getMarkerHelpRegistry().getResolutions(marker)).filter(found -> found.getLabel().contains("F520"))
				.findFirst().orElseThrow();
		fix.run(marker);
		program.waitGone("F500");
		assertThat(program.document().get()).isEqualTo(Programs.GOOD);
		assertThat(program.editor().isDirty()).as("saving is left to the person").isTrue();
	}

	@Test
	void theRuleOfAFindingIsToldToSpeakSofterInThisProject() throws BackingStoreException {
		IFile file = OpenProgram.file("softer.nc", Programs.WRONG_FEED);
		OpenProgram program = OpenProgram.open(file);
		program.waitFor("F500");
		program.caretBehind("R5. F5");
		Screen.chord(SWT.CTRL, '1');
		Screen.waitUntil("proposals", () -> proposals() != null);
		take("Report feed-off-pitch as information in this project");
		Screen.waitUntil("information", () -> program.waitFor("F500").type().equals("information"));
		IEclipsePreferences ofProject = new ProjectScope(file.getProject()).getNode("truelead.editor");
		ofProject.clear();
		ofProject.flush();
		Screen.waitUntil("an error again", () -> program.waitFor("F500").type().equals("error"));
	}

	/** Double-clicks the proposal that says the words. */
	private static void take(String words) {
		Table table = proposals();
		TableItem item = Arrays.stream(table.getItems()).filter(found -> found.getText().contains(words)).findFirst().orElseThrow();
		table.setSelection(item);
		Event doubleClick = new Event();
		doubleClick.item = item;
		table.notifyListeners(SWT.Selection, doubleClick);
		table.notifyListeners(SWT.DefaultSelection, doubleClick);
		Screen.settle();
	}

	/** The list of proposals that stands open; null where none does. */
	private static Table proposals() {
		return Arrays.stream(Display.getCurrent().getShells()).filter(shell -> shell.isVisible()).flatMap(shell -> Arrays.stream(shell.getChildren()))
				.filter(Table.class::isInstance).map(Table.class::cast).filter(Control::isVisible).filter(table -> table.getItemCount() > 0)
				.findFirst().orElse(null);
	}
}
