package truelead.editor.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.ViewPart;
import truelead.checker.lesson.Exercise;
import truelead.checker.lesson.Filled;
import truelead.checker.lesson.Lesson;
import truelead.checker.lesson.Lessons;
import truelead.checker.lesson.Outcome;
import truelead.checker.lesson.Plot;
import truelead.checker.lesson.Reading;
import truelead.checker.lesson.Values;

/** A lesson: its numbers at the left, what comes of them at the right, its exercises above. */
public final class LessonView extends ViewPart {

	/** Its id in plugin.xml. */
	public static final String ID = "truelead.editor.lesson.view";

	/** Width that sentences ask for, pixels; a wider view gives them more. */
	private static final int WORDS = 180;

	/** A view that is not as wide has no room for numbers and plots side by side. */
	private static final int NARROW = 520;

	private final List<PlotCanvas> plots = new ArrayList<>();
	private Filled filled = of(Lessons.ALL.get(0));
	private Optional<Practice> practice = Optional.empty();
	private Combo lessons;
	private Combo exercises;
	private Label state;
	private Composite content;
	private SashForm halves;
	private Text said;
	private Table readings;

	/** Opens the view with a lesson's numbers. */
	public static void show(Filled filled) {
		try {
			((LessonView) PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(ID)).fill(filled);
		} catch (PartInitException cannotOpen) {
			ILog.of(LessonView.class).log(cannotOpen.getStatus());
		}
	}

	/** Opens the view with a lesson's usual numbers. */
	public static void show(Lesson lesson) {
		show(of(lesson));
	}

	private static Filled of(Lesson lesson) {
		return new Filled(lesson, Values.usual(lesson), "");
	}

	@Override
	public void createPartControl(Composite parent) {
		GridLayoutFactory.fillDefaults().numColumns(2).margins(4, 4).applyTo(parent);
		lessons = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
		Lessons.ALL.forEach(lesson -> lessons.add(lesson.title()));
		lessons.addListener(SWT.Selection, event -> fill(of(Lessons.ALL.get(lessons.getSelectionIndex()))));
		exercises = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
		exercises.addListener(SWT.Selection, event -> practise(exercises.getSelectionIndex()));
		state = new Label(parent, SWT.WRAP);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).hint(WORDS, SWT.DEFAULT).applyTo(state);
		content = new Composite(parent, SWT.NONE);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, true).applyTo(content);
		content.addListener(SWT.Resize, event -> turn());
		GridLayoutFactory.fillDefaults().applyTo(content);
		fill(filled);
	}

	private void fill(Filled changed) {
		filled = changed;
		Lesson lesson = changed.lesson();
		lessons.select(Lessons.ALL.indexOf(lesson));
		exercises.removeAll();
		exercises.add("Exercises\u2026");
		Exercise.of(lesson.name()).forEach(exercise -> exercises.add("Exercise " + exercise.number()));
		exercises.select(0);
		say(changed.about().isEmpty() ? lesson.introduction() : changed.about());
		for (org.eclipse.swt.widgets.Control old : content.getChildren()) {
			old.dispose();
		}
		plots.clear();
		halves = new SashForm(content, orientation());
		GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
		controls(scrolled(halves), lesson);
		results(scrolled(halves), lesson);
		halves.setWeights(4, 6);
		content.getParent().layout(true, true);
		show();
	}

	private static Composite scrolled(Composite parent) {
		ScrolledComposite scrolled = new ScrolledComposite(parent, SWT.V_SCROLL);
		scrolled.setExpandHorizontal(true);
		scrolled.setExpandVertical(true);
		scrolled.setShowFocusedControl(true);
		Composite inner = new Composite(scrolled, SWT.NONE);
		scrolled.addListener(SWT.Resize, event -> scrolled.setMinHeight(inner.computeSize(scrolled.getClientArea().width, SWT.DEFAULT).y));
		GridLayoutFactory.fillDefaults().margins(4, 4).applyTo(inner);
		scrolled.setContent(inner);
		return inner;
	}

	/** Side by side where there is room for it, else one above the other. */
	private int orientation() {
		return content.getSize().x > 0 && content.getSize().x < NARROW ? SWT.VERTICAL : SWT.HORIZONTAL;
	}

	private void turn() {
		if (halves != null && !halves.isDisposed() && halves.getOrientation() != orientation()) {
			halves.setOrientation(orientation());
		}
	}

	private void controls(Composite parent, Lesson lesson) {
		GridLayoutFactory.fillDefaults().numColumns(2).margins(4, 4).applyTo(parent);
		lesson.controls().forEach(control -> ControlRow.into(parent, control, filled.values().of(control.name()),
				value -> move(control.name(), value)));
	}

	private void results(Composite parent, Lesson lesson) {
		said = new Text(parent, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
		GridDataFactory.fillDefaults().grab(true, false).hint(WORDS, 7 * said.getLineHeight()).applyTo(said);
		Outcome outcome = lesson.outcome(filled.values());
		for (Plot plot : lesson.plots()) {
			PlotCanvas canvas = new PlotCanvas(parent, plot, outcome);
			GridDataFactory.fillDefaults().grab(true, false).applyTo(canvas);
			plots.add(canvas);
		}
		readings = new Table(parent, SWT.FULL_SELECTION);
		new TableColumn(readings, SWT.LEFT);
		new TableColumn(readings, SWT.RIGHT);
		lesson.readings().forEach(reading -> new TableItem(readings, SWT.NONE).setText(0, reading.label()));
		// by itself it would be as wide as its words, and with it all that stands above
		GridDataFactory.fillDefaults().grab(true, false).hint(WORDS, SWT.DEFAULT).applyTo(readings);
		Label grounds = new Label(parent, SWT.WRAP);
		grounds.setText(("What it rests on: " + String.join(" ", lesson.grounds()) + " A model for learning, not for choosing a feed.")
				.replace("&", "&&"));
		GridDataFactory.fillDefaults().grab(true, false).hint(WORDS, SWT.DEFAULT).applyTo(grounds);
	}

	private void move(String name, double value) {
		filled = new Filled(filled.lesson(), filled.values().with(name, value), filled.about());
		show();
	}

	private void show() {
		Outcome outcome = filled.lesson().outcome(filled.values());
		said.setText(String.join("\n", filled.lesson().said(outcome)));
		plots.forEach(plot -> plot.show(outcome));
		List<Reading> shown = filled.lesson().readings();
		for (int i = 0; i < shown.size(); i++) {
			readings.getItem(i).setText(1, shown.get(i).said(outcome.number(shown.get(i).name())));
		}
		for (TableColumn column : readings.getColumns()) {
			column.pack();
		}
	}

	private void practise(int number) {
		Optional<Exercise> chosen = Exercise.of(filled.lesson().name(), number);
		chosen.ifPresent(exercise -> {
			say(exercise.task());
			practice.ifPresent(Practice::end);
			practice = Optional.of(new Practice(exercise, this::say));
			practice.get().open(getSite().getPage());
		});
	}

	@Override
	public void dispose() {
		practice.ifPresent(Practice::end);
		super.dispose();
	}

	private void say(String words) {
		if (!state.isDisposed()) {
			state.setText(words.replace("&", "&&"));
			state.setToolTipText(words);
			state.getParent().layout(true, true);
		}
	}

	@Override
	public void setFocus() {
		lessons.setFocus();
	}
}
