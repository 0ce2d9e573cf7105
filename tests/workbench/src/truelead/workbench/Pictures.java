package truelead.workbench;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.WorkbenchException;
import org.eclipse.ui.dialogs.PreferencesUtil;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.navigator.CommonNavigator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** No test: pictures of every screen, to be looked at. {@code sh feature/workbench/look} takes them, in both themes; nothing else does. */
class Pictures {

	private static final String WALK = "truelead.editor.walk.view";
	private static final String THREAD = "truelead.editor.thread.view";
	private static final String AUDIT = "truelead.editor.audit.view";
	private static final String LESSON = "truelead.editor.lesson.view";
	private static final String GUIDE = "truelead.editor.guide.view";
	private static final String PROBLEMS = "org.eclipse.ui.views.ProblemView";

	private final Camera camera = new Camera(Path.of(Optional.ofNullable(System.getenv("LOOK_INTO")).orElse("screenshots")),
			Optional.ofNullable(System.getenv("LOOK_THEME")).orElse("light"));

	@BeforeEach
	void desk() throws WorkbenchException, CommandException {
		IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
		PlatformUI.getWorkbench().showPerspective("truelead.editor.perspective", window);
		window.getActivePage().resetPerspective();
		window.getShell().setBounds(Display.getCurrent().getClientArea());
		lineNumbers();
		Screen.toFront();
		PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand("truelead.editor.walk", null);
		Screen.settle();
		follow("Open ");
		Screen.waitUntil("the demo program", () -> page().getActiveEditor() != null);
		demo("bearing-cap-faults.nc").waitFor("F500");
	}

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void workbench() throws CoreException {
		camera.take("walk");
		IViewPart problems = page().showView(PROBLEMS);
		Screen.idle(1500);
		((TreeViewer) problems.getSite().getSelectionProvider()).expandAll();
		camera.take("problems");
		OpenProgram mill = demo("gland-thread-mill.nc");
		Screen.idle(1500);
		mill.caretBehind("Z-16.875 I2.01");
		Screen.press(0, SWT.ARROW_RIGHT);
		camera.take("helix");
		page().toggleZoom(page().findViewReference(THREAD));
		camera.take("helix-alone");
		page().zoomOut();
		OpenProgram.closeAll();
		camera.take("no-program");
	}

	@Test
	void editor() {
		OpenProgram program = faults();
		Screen.press(SWT.CTRL | SWT.SHIFT, SWT.KEYPAD_DIVIDE, '/');
		camera.take("folded");
		Screen.press(SWT.CTRL, SWT.KEYPAD_MULTIPLY, '*');
		Screen.idle(500);
		OpenProgram.file("all-kinds.nc",
				"%\nO7 (EVERY KIND OF WORD)\nN10 G17 G21 G90 G94 G54\nN20 #101=[2.*6.+SQRT[9.]] (DEPTH)\nT3 M6 (M6X1 TAP)\n"
				+ "N30 G0 X#101 Y20. S520 M3\n"
				+ "/N40 G43 Z25. H3 M8\nG99 G84 Z-14.5 R5. F520\nIF [#101 LT 3.] GOTO 20\nG80\nG0 Z25. ?! M9\n(CLEAR OF CLAMPS)\nM30\n%\n");
		OpenProgram kinds = OpenProgram.open(shop().getFile("all-kinds.nc"));
		Screen.idle(1500);
		kinds.caretBehind("N20 #10");
		camera.take("kinds");
		Mouse.rest(kinds, "[2.*6.");
		camera.take("hover-expression");
		Mouse.away(kinds);
		program = faults();
		Mouse.rest(program, "F500");
		camera.take("hover-finding");
		Mouse.away(program);
		Mouse.rest(program, "G83 Z-14");
		camera.take("hover-word");
		Mouse.away(program);
		Mouse.rest(program, "M6X1-6H TAP");
		camera.take("hover-callout");
		Mouse.away(program);
		OpenProgram edited = program;
		program.caretBehind("R5. F5");
		Screen.chord(SWT.CTRL, '1');
		camera.take("quick-fix");
		closeLists();
		program.focus();
		Screen.press(0, SWT.F2);
		camera.take("finding-by-key");
		closeLists();
		edited.focus();
		edited.caretBehind("M29 S520");
		Screen.press(0, SWT.CR, '\r');
		Screen.idle(800);
		Screen.chord(SWT.CTRL, ' ');
		camera.take("completion");
		closeLists();
		edited.focus();
		Screen.type("(M");
		Screen.idle(800);
		Screen.chord(SWT.CTRL, ' ');
		camera.take("completion-thread");
		closeLists();
		edited.focus();
		Screen.chord(SWT.CTRL, 'o');
		camera.take("quick-outline");
		closeLists();
		edited.focus();
		edited.caretBehind("G99 G84 Z-14.5");
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		Screen.type("h");
		camera.take("blocks-at-hole");
		closeLists();
		edited.focus();
		edited.caretBehind("G99 G84 Z-14.5");
		Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
		Screen.type("f");
		camera.take("blocks-of-finding");
		closeLists();
		edited.focus();
		Screen.press(SWT.ALT, 0, 'g');
		camera.take("menu");
		Screen.press(0, SWT.ESC, SWT.ESC);
		Screen.press(0, SWT.ESC, SWT.ESC);
	}

	@Test
	void guideAndLesson() throws CoreException {
		OpenProgram program = faults();
		program.caretBehind("R5. F5");
		Screen.press(0, SWT.F1);
		Screen.waitUntil("the guide", () -> page().findView(GUIDE) != null);
		camera.take("guide-rule");
		page().toggleZoom(page().findViewReference(GUIDE));
		camera.take("guide-alone");
		page().zoomOut();
		page().hideView(page().findView(GUIDE));
		page().showView(LESSON);
		camera.take("lesson");
		page().toggleZoom(page().findViewReference(LESSON));
		for (String lesson : List.of("feed", "depth", "helix", "passes")) {
			org.eclipse.swt.widgets.Combo list = Dialogs.find(window(), org.eclipse.swt.widgets.Combo.class).get(0);
			list.select(List.of("feed", "depth", "helix", "passes").indexOf(lesson));
			list.notifyListeners(SWT.Selection, new Event());
			camera.take("lesson-" + lesson);
		}
		page().zoomOut();
		page().hideView(page().findView(LESSON));
	}

	@Test
	void wizard() {
		closeLists();
		OpenProgram program = faults();
		program.caretBehind("(BEARING CAP LM-2041");
		inWizard('p', "Plan a Thread", program, () -> {
			camera.take("plan-empty");
			Screen.chord(SWT.ALT, 't');
			Screen.chord(SWT.CTRL, 'a');
			Screen.type("M8");
			Screen.chord(SWT.ALT, 'd');
			Screen.chord(SWT.CTRL, 'a');
			Screen.type("12");
			camera.take("plan-wanted");
			Screen.chord(SWT.ALT, 'n');
			camera.take("plan-ways");
			Screen.chord(SWT.ALT, 'n');
			camera.take("plan-blocks");
			Screen.press(0, SWT.ESC, SWT.ESC);
		});
		program.caretBehind("G99 G84 Z-14.5");
		inWizard('w', "What Else Could Make This Thread?", program, () -> {
			camera.take("what-else");
			Screen.press(0, SWT.ESC, SWT.ESC);
		});
		Dialogs.inDialog("Renumber Blocks", () -> {
			camera.take("renumber");
			Screen.press(0, SWT.ESC, SWT.ESC);
		}, () -> {
			program.focus();
			Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
			Screen.type("n");
		});
	}

	@Test
	void settings() throws CoreException {
		IProject demo = demoProject();
		OpenProgram.file("shop-tools.csv", "TOOL,KIND,THREAD,DIAMETER,LEAD\n1,DRILL,,5.0,\n3,TAP,M6X1,,FORM C\n4,TAP,thick,,\n")
				.copy(demo.getFullPath().append("shop-tools.csv"), true, null);
		faults();
		for (String page : List.of("settings", "machine", "severities", "templatesPage")) {
			Dialogs.inDialog("Preferences", () -> {
				Dialogs.shell("Preferences").setSize(1100, 760);
				camera.take("preferences-" + page);
				if (page.equals("machine")) {
					Screen.chord(SWT.ALT, 'e');
					camera.take("preferences-machine-own");
				}
				Screen.press(0, SWT.ESC, SWT.ESC);
			}, () -> PreferencesUtil.createPreferenceDialogOn(window(), "truelead.editor." + page, null, null).open());
		}
		for (String page : List.of("project", "project.machine", "project.tools", "project.accepted", "project.severities")) {
			Dialogs.inDialog("Properties for " + demo.getName(), () -> {
				Dialogs.shell("Properties for " + demo.getName()).setSize(1100, 760);
				camera.take("properties-" + page.replace('.', '-'));
				if (page.equals("project.tools")) {
					Screen.chord(SWT.ALT, 'l');
					Screen.type("shop-tools.csv");
					camera.take("properties-project-tools-list");
				}
				if (page.equals("project.machine") || page.equals("project.severities")) {
					Screen.chord(SWT.ALT, 'e');
					camera.take("properties-" + page.replace('.', '-') + "-own");
				}
				Screen.press(0, SWT.ESC, SWT.ESC);
			}, () -> PreferencesUtil.createPropertyDialogOn(window(), demo, "truelead.editor." + page, null, null).open());
		}
		demo.getFile("shop-tools.csv").delete(true, null);
	}

	@Test
	void audit() throws CoreException {
		page().showView(AUDIT);
		camera.take("audit-empty");
		CommonNavigator explorer = (CommonNavigator) page().showView("org.eclipse.ui.navigator.ProjectExplorer");
		explorer.getCommonViewer().setSelection(new StructuredSelection(demoProject()), true);
		explorer.getCommonViewer().getControl().setFocus();
		Screen.idle(300);
		Screen.chord(SWT.CTRL | SWT.ALT, 'a');
		Screen.idle(3000);
		Tree tree = (Tree) ((TreeViewer) page().findView(AUDIT).getViewSite().getSelectionProvider()).getControl();
		((TreeViewer) page().findView(AUDIT).getViewSite().getSelectionProvider()).expandAll();
		camera.take("audit");
		tree.setSelection(tree.getItem(0).getItemCount() > 0 ? tree.getItem(0).getItem(0).getItem(0) : tree.getItem(0));
		Event chosen = new Event();
		chosen.item = tree.getSelection()[0];
		tree.notifyListeners(SWT.Selection, chosen);
		for (String dialog : List.of("Accept", "Write Report")) {
			Dialogs.inDialog(dialog, () -> {
				camera.take(dialog.toLowerCase(java.util.Locale.ROOT).replace(' ', '-'));
				Screen.press(0, SWT.ESC, SWT.ESC);
			}, () -> press(dialog));
		}
		page().hideView(page().findView(AUDIT));
	}

	private void inWizard(char key, String title, OpenProgram program, Runnable inside) {
		Dialogs.inDialog(title, inside, () -> {
			program.focus();
			Screen.chord(SWT.CTRL | SWT.SHIFT, 'n');
			Screen.type(String.valueOf(key));
			Screen.idle(2500);
			Screen.waitUntil("the end of the wizard", () -> Dialogs.shell(title) == null);
		});
	}

	/** Closes what stands open over the window: a picture of one list is not to show another. */
	private static void closeLists() {
		for (Shell shell : Display.getCurrent().getShells()) {
			if (shell != window() && shell.isVisible()) {
				shell.close();
			}
		}
		Screen.settle();
	}

	private static void press(String words) {
		ToolItem item = Dialogs.find(window(), ToolBar.class).stream().flatMap(bar -> Arrays.stream(bar.getItems()))
				.filter(one -> one.getText().startsWith(words)).findFirst().orElseThrow();
		item.notifyListeners(SWT.Selection, new Event());
	}

	private static void follow(String words) {
		page().bringToTop(page().findView(WALK));
		Link link = Dialogs.find(window(), Link.class).stream().filter(found -> found.getText().replace("<a>", "").startsWith(words))
				.findFirst().orElseThrow();
		link.notifyListeners(SWT.Selection, new Event());
		Screen.settle();
	}

	private static OpenProgram faults() {
		OpenProgram program = demo("bearing-cap-faults.nc");
		program.waitFor("F500");
		return program;
	}

	private static OpenProgram demo(String name) {
		return OpenProgram.open(demoProject().getFile(name));
	}

	/** Line numbers stand beside the program in the workbench as it is shipped. */
	private static void lineNumbers() {
		InstanceScope.INSTANCE.getNode("org.eclipse.ui.editors").putBoolean("lineNumberRuler", true);
	}

	private static IProject demoProject() {
		return ResourcesPlugin.getWorkspace().getRoot().getProject("truelead-demo");
	}

	private static IProject shop() {
		return ResourcesPlugin.getWorkspace().getRoot().getProject("shop");
	}

	private static Shell window() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
	}

	private static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
	}
}
