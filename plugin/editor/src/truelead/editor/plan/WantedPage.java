package truelead.editor.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import truelead.audit.plan.PlanText;
import truelead.checker.plan.Request;
import truelead.checker.plan.Wish;
import truelead.checker.plan.Wish.Field;
import truelead.checker.profile.MachineProfile;

/** What is to be made: thread, stock, depth, hole, number of holes, machine. Says at once what cannot be used. */
final class WantedPage extends WizardPage {

	private static final String[] STOCKS = { "STEEL", "STAINLESS", "CAST IRON", "ALUMINIUM", "BRASS", "BRONZE", "COPPER", "TITANIUM",
			"NICKEL", "MAGNESIUM", "ZINC", "PLASTIC" };

	private final Question question;
	private final Map<Field, Text> texts = new EnumMap<>(Field.class);
	private final List<MachineProfile> machines = new ArrayList<>();
	private Combo stock;
	private Combo machine;
	private Button blind;
	private Button through;
	private Optional<Request> request = Optional.empty();

	WantedPage(Question question) {
		super("wanted", "What is to be made", null);
		this.question = question;
	}

	@Override
	public void createControl(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().numColumns(3).margins(10, 10).spacing(10, 6).applyTo(area);
		text(area, Field.CALLOUT, "&Thread:", "as drawings write it: M8, M8x1-6H, 1/4-20 UNC-2B");
		new Label(area, SWT.NONE).setText("&Stock:");
		stock = new Combo(area, SWT.DROP_DOWN);
		stock.setItems(STOCKS);
		stock.setText(question.fields().getOrDefault(Field.STOCK, ""));
		GridDataFactory.fillDefaults().grab(true, false).applyTo(stock);
		hint(area, "what the part is cut from");
		text(area, Field.HARDNESS, "H&ardness:", "28HRC, 220HB or 230HV");
		text(area, Field.DEPTH, "&Depth of full thread:", "12, 12mm or 0.5in; 1.5 diameters when left empty");
		new Label(area, SWT.NONE).setText("Hole:");
		Composite hole = new Composite(area, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(15, 0).applyTo(hole);
		GridDataFactory.fillDefaults().span(2, 1).applyTo(hole);
		blind = choice(hole, "B&lind", !question.through());
		through = choice(hole, "Thr&ough", question.through());
		text(area, Field.BOTTOM, "D&eepest point:", "that any tool may reach, the drill's point too; empty for no limit");
		text(area, Field.THROUGH, "&Wall:", "that the hole goes through");
		text(area, Field.COUNT, "N&umber of holes:", "in a row along X from X0 Y0, 3 diameters apart");
		machines(area);
		stock.addModifyListener(changed -> check());
		texts.values().forEach(text -> text.addModifyListener(changed -> check()));
		setControl(area);
		check();
	}

	private void text(Composite area, Field field, String label, String hint) {
		new Label(area, SWT.NONE).setText(label);
		Text text = new Text(area, SWT.BORDER);
		text.setText(question.fields().getOrDefault(field, field == Field.COUNT ? "1" : ""));
		text.setTextLimit(200);
		GridDataFactory.fillDefaults().grab(true, false).hint(convertWidthInCharsToPixels(24), SWT.DEFAULT).applyTo(text);
		hint(area, hint);
		texts.put(field, text);
	}

	private static void hint(Composite area, String words) {
		Label hint = new Label(area, SWT.NONE);
		hint.setText(words);
		GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).applyTo(hint);
	}

	private Button choice(Composite area, String label, boolean chosen) {
		Button button = new Button(area, SWT.RADIO);
		button.setText(label);
		button.setSelection(chosen);
		button.addListener(SWT.Selection, pressed -> check());
		return button;
	}

	/** The program's machine first, then those that come with us. */
	private void machines(Composite area) {
		new Label(area, SWT.NONE).setText("&Machine:");
		machine = new Combo(area, SWT.READ_ONLY);
		Map<String, MachineProfile> known = new LinkedHashMap<>();
		known.put(question.machine().name(), question.machine());
		MachineProfile.shipped().forEach(name -> known.putIfAbsent(name, MachineProfile.named(name)));
		known.forEach((name, profile) -> {
			machine.add(name);
			machines.add(profile);
		});
		machine.select(0);
		machine.addListener(SWT.Selection, chosen -> check());
		GridDataFactory.fillDefaults().grab(true, false).applyTo(machine);
		hint(area, "the program's own stands first");
	}

	private void check() {
		if (machine == null) {
			return;
		}
		texts.get(Field.BOTTOM).setEnabled(blind.getSelection());
		texts.get(Field.THROUGH).setEnabled(through.getSelection());
		Map<Field, String> typed = new EnumMap<>(Field.class);
		texts.forEach((field, text) -> {
			if (text.isEnabled()) {
				typed.put(field, text.getText());
			}
		});
		typed.put(Field.STOCK, stock.getText());
		Wish.Understood understood = question.read(typed, machines.get(machine.getSelectionIndex()));
		boolean wall = through.getSelection() && typed.get(Field.THROUGH).isBlank();
		boolean empty = typed.get(Field.CALLOUT).isBlank() && question.existing().isEmpty();
		Optional<String> problem = understood.problems().entrySet().stream().map(entry -> title(entry.getKey()) + entry.getValue())
				.findFirst().or(() -> wall ? Optional.of("Wall: how thick is it?") : Optional.empty());
		request = problem.isPresent() ? Optional.empty() : understood.request();
		// An empty page is no fault of the person's yet.
		setErrorMessage(empty ? null : problem.orElse(null));
		setMessage(request.map(PlanText::asked).orElse("Name the thread; what is left empty is taken as usual."));
		setPageComplete(request.isPresent());
	}

	private static String title(Field field) {
		return switch (field) {
			case CALLOUT -> "Thread: ";
			case STOCK -> "Stock: ";
			case HARDNESS -> "Hardness: ";
			case DEPTH -> "Depth: ";
			case BOTTOM -> "Deepest point: ";
			case THROUGH -> "Wall: ";
			case COUNT -> "Number of holes: ";
		};
	}

	/** What is asked for now; empty where something cannot be used. */
	Optional<Request> request() {
		return request;
	}
}
