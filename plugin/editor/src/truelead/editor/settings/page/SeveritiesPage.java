package truelead.editor.settings.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import truelead.checker.rule.RulePage;
import truelead.checker.rulebook.Rules;
import truelead.editor.settings.CheckSettings;

/** The severity of every rule, for the workspace or for one project. */
public final class SeveritiesPage extends ScopedPage {

	private static final List<String> WORDS = List.of("", "error", "warning", "information", CheckSettings.OFF);

	private final Map<String, String> chosen = new LinkedHashMap<>();
	private Sheet<RulePage> rules;
	private Combo severity;

	public SeveritiesPage() {
		super("truelead.editor.severities");
	}

	@Override
	protected Optional<String> ownSettings() {
		return project().map(project -> "&Enable project settings, rule by rule");
	}

	@Override
	protected boolean hasOwn() {
		return settings().severitiesCount();
	}

	@Override
	protected void fill(Composite page) {
		Rules.pages().forEach(rule -> chosen.put(rule.name(), settings().severityOf(rule.name())));
		rules = new Sheet<>(page, "&Rules:", RulePage.class);
		rules.column("Rule", 190, RulePage::name).column("Severity", 220, rule -> word(rule, chosen.get(rule.name())))
				.column("Group", 200, RulePage::group).column("What it finds", 560, RulePage::summary)
				.strong(rule -> !chosen.get(rule.name()).isEmpty()).tell(rule -> rule.name() + ": " + rule.summary())
				.onSelect(this::showSeverity);
		rules.rows(Rules.pages(), RulePage::name);
		Composite line = Layouts.columns(page, 2);
		new Label(line, SWT.NONE).setText("Se&verity of the chosen rules:");
		severity = new Combo(line, SWT.READ_ONLY);
		WORDS.forEach(word -> severity.add(word.isEmpty() ? byDefault() : word));
		severity.addSelectionListener(SelectionListener.widgetSelectedAdapter(pressed -> choose()));
		rules.select(rule -> true);
		showSeverity();
	}

	private void showSeverity() {
		if (severity != null) {
			List<String> words = rules.selected().stream().map(rule -> chosen.get(rule.name())).distinct().toList();
			severity.setEnabled(own() && !words.isEmpty());
			severity.select(words.size() == 1 ? WORDS.indexOf(words.get(0)) : -1);
		}
	}

	private void choose() {
		rules.selected().forEach(rule -> chosen.put(rule.name(), WORDS.get(severity.getSelectionIndex())));
		rules.refresh();
	}

	@Override
	protected void ownChanged() {
		super.ownChanged();
		showSeverity();
	}

	/** A severity that is set stands alone; one that is not, with what holds instead. */
	private String word(RulePage rule, String word) {
		if (!word.isEmpty()) {
			return word;
		}
		String workspace = project().isPresent() ? CheckSettings.ofWorkspace().severityOf(rule.name()) : "";
		return workspace.isEmpty() ? rule.reportedAs() : workspace + " (workspace)";
	}

	private String byDefault() {
		return project().isPresent() ? "as in the workspace" : "as the rule says";
	}

	@Override
	protected boolean save(boolean counts) {
		CheckSettings settings = settings();
		chosen.forEach(settings::severityOf);
		if (project().isPresent()) {
			settings.severitiesCount(counts);
		}
		settings.save();
		return true;
	}

	@Override
	protected void performDefaults() {
		chosen.replaceAll((rule, word) -> "");
		own(false);
		rules.refresh();
		showSeverity();
		super.performDefaults();
	}
}
