package truelead.editor.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import truelead.checker.plan.Existing;
import truelead.checker.plan.Plan;
import truelead.checker.plan.Weighing;
import truelead.checker.rule.Evidence;

/**
 * The ways to make the thread, one a row, each with what speaks for it, what against, and what rules it out; one is recommended, any
 * possible one can be taken.
 */
final class WaysPage extends WizardPage {

	private static final String[] HEADS = { "Way", "For", "Against", "Ruled out", "In this program" };
	private static final int LEAST = 110;
	private static final int NUMBERS = 6;

	private final PlanWizard wizard;
	private final List<Label> sentences = new ArrayList<>();
	private final List<Button> buttons = new ArrayList<>();
	private Table numbers;
	private ScrolledComposite scroll;
	private Composite grid;
	private Optional<Plan> shown = Optional.empty();

	WaysPage(PlanWizard wizard) {
		super("ways", "The ways to make it", null);
		this.wizard = wizard;
	}

	@Override
	public void createControl(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().margins(10, 10).applyTo(area);
		if (wizard.question().existing().isPresent()) {
			numbers(area);
		}
		scroll = new ScrolledComposite(area, SWT.V_SCROLL | SWT.BORDER);
		scroll.setExpandHorizontal(true);
		scroll.setExpandVertical(true);
		scroll.setShowFocusedControl(true);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(scroll);
		scroll.addListener(SWT.Resize, resized -> fit());
		setControl(area);
	}

	/** What the program says of the thread it makes, and who says so. */
	private void numbers(Composite area) {
		numbers = new Table(area, SWT.BORDER | SWT.FULL_SELECTION | SWT.V_SCROLL);
		numbers.setHeaderVisible(true);
		int[] widths = { 130, 230, 560 };
		String[] heads = { "In the program", "Is", "Says who" };
		for (int i = 0; i < heads.length; i++) {
			TableColumn column = new TableColumn(numbers, SWT.NONE);
			column.setText(heads[i]);
			column.setWidth(widths[i]);
		}
		GridDataFactory.fillDefaults().grab(true, false).hint(SWT.DEFAULT, numbers.getHeaderHeight() + NUMBERS * numbers.getItemHeight())
				.applyTo(numbers);
	}

	@Override
	public void setVisible(boolean visible) {
		if (visible) {
			fill();
		}
		super.setVisible(visible);
		if (visible) {
			fit();
			buttons.stream().filter(Button::getSelection).findFirst().or(() -> buttons.stream().findFirst()).ifPresent(Button::setFocus);
			// The heads of the columns come first, wherever the recommended way stands.
			scroll.setOrigin(0, 0);
		}
	}

	/** Shows the plan of what is asked for now; a way that was chosen stays chosen while nothing is changed. */
	void fill() {
		Optional<Plan> plan = wizard.plan();
		if (plan.isEmpty() || plan.equals(shown)) {
			return;
		}
		shown = plan;
		wizard.existing().ifPresent(this::fill);
		if (grid != null) {
			grid.dispose();
		}
		sentences.clear();
		buttons.clear();
		grid = new Composite(scroll, SWT.NONE);
		int columns = wizard.existing().isPresent() ? HEADS.length : HEADS.length - 1;
		GridLayoutFactory.swtDefaults().numColumns(columns).margins(8, 8).spacing(14, 10).applyTo(grid);
		for (int i = 0; i < columns; i++) {
			Label head = new Label(grid, SWT.NONE);
			head.setText(HEADS[i]);
			head.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
		}
		plan.get().weighings().forEach(weighing -> row(weighing, plan.get()));
		scroll.setContent(grid);
		setTitle("The ways to make " + plan.get().request().thread().designation());
		setMessage((plan.get().chosen().isPresent() ? "Recommended: " : "") + plan.get().why());
		choose(wizard.chosen());
		fit();
	}

	private void fill(Existing existing) {
		numbers.removeAll();
		for (Evidence number : existing.numbers()) {
			new TableItem(numbers, SWT.NONE).setText(new String[] { number.name(), number.value(), number.origin() });
		}
	}

	private void row(Weighing weighing, Plan plan) {
		boolean recommended = plan.chosen().filter(weighing::equals).isPresent();
		Button button = new Button(grid, SWT.RADIO | SWT.WRAP);
		button.setText(weighing.method().title() + (recommended ? "\n(recommended)" : weighing.possible() ? "" : "\n(ruled out)"));
		button.setEnabled(weighing.possible());
		button.setData(weighing);
		button.addListener(SWT.Selection, pressed -> {
			if (button.getSelection()) {
				choose(Optional.of(weighing));
			}
		});
		button.getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getDescription(AccessibleEvent event) {
				event.result = "for: " + String.join("; ", weighing.pros()) + ". against: " + String.join("; ", weighing.cons());
			}
		});
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.BEGINNING).applyTo(button);
		buttons.add(button);
		sentences(weighing.pros());
		sentences(weighing.cons());
		sentences(weighing.ruledOut());
		wizard.existing().ifPresent(existing -> sentences(existing.beside(weighing)));
	}

	private void sentences(List<String> reasons) {
		Label label = new Label(grid, SWT.WRAP);
		label.setText(reasons.isEmpty() ? "\u2013" : "\u2022 " + String.join("\n\u2022 ", reasons).replace("&", "&&"));
		GridDataFactory.fillDefaults().align(SWT.FILL, SWT.BEGINNING).grab(true, false).applyTo(label);
		sentences.add(label);
	}

	private void choose(Optional<Weighing> weighing) {
		wizard.choose(weighing);
		buttons.forEach(button -> button.setSelection(weighing.filter(button.getData()::equals).isPresent()));
		setPageComplete(weighing.isPresent());
	}

	/** Gives the sentences the width there is, and the scroll bar the height that they then take. */
	private void fit() {
		Rectangle room = scroll.getClientArea();
		if (grid == null || grid.isDisposed() || room.width <= 0) {
			return;
		}
		int columns = wizard.existing().isPresent() ? HEADS.length - 1 : HEADS.length - 2;
		int first = buttons.stream().mapToInt(button -> button.computeSize(SWT.DEFAULT, SWT.DEFAULT).x).max().orElse(0);
		int width = Math.max(LEAST, (room.width - first - 16 - 14 * columns - scroll.getVerticalBar().getSize().x) / columns);
		sentences.forEach(label -> ((GridData) label.getLayoutData()).widthHint = width);
		grid.layout(true, true);
		scroll.setMinSize(grid.computeSize(room.width, SWT.DEFAULT));
	}
}
