package truelead.editor.fix;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.graphics.Point;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;
import truelead.editor.check.CheckedText;

/** One way to remove a finding, wherever it is offered: at the quick fix key, the ruler, the hover or in the Problems view. */
public final class FixProposal extends PlainProposal {

	private final CheckedText checked;
	private final Finding finding;
	private final int choice;
	private final boolean everywhere;
	private Optional<Integer> changed = Optional.empty();

	/**
	 * @param checked    the text that the finding was found in
	 * @param choice     which of the finding's fixes
	 * @param everywhere whether all findings of this rule in the program are fixed the same way
	 */
	public FixProposal(CheckedText checked, Finding finding, int choice, boolean everywhere) {
		this.checked = checked;
		this.finding = finding;
		this.choice = choice;
		this.everywhere = everywhere;
	}

	/** The finding that it removes. */
	public Finding finding() {
		return finding;
	}

	@Override
	public void apply(IDocument document) {
		if (!FixEdit.mayChange(document)) {
			return;
		}
		CheckedText now = checked.check().run(document.get(), 0);
		List<Fix> fixes = meant(now).stream().filter(found -> found.fixes().size() > choice).map(found -> found.fixes().get(choice))
				.filter(fix -> fix.safe() || !everywhere).toList();
		try {
			changed = FixEdit.apply(document, now, fixes);
		} catch (BadLocationException stale) {
			ILog.of(FixProposal.class).error("A fix of " + finding.rule() + " does not fit the text", stale);
		}
	}

	/**
	 * The program is checked again before a change, and lines may have come or gone since the finding was shown: it is told by rule and message, and
	 * where several agree it is the one that comes as late among them as it did, or the nearest where there are more or fewer of them now.
	 */
	private List<Finding> meant(CheckedText now) {
		if (everywhere) {
			return now.shown().stream().filter(found -> found.rule().equals(finding.rule())).toList();
		}
		List<Finding> then = alike(checked);
		List<Finding> alike = alike(now);
		if (alike.size() == then.size() && then.contains(finding)) {
			return List.of(alike.get(then.indexOf(finding)));
		}
		return alike.stream().min(Comparator.comparingInt(found -> Math.abs(found.at().line() - finding.at().line()))).stream().toList();
	}

	private List<Finding> alike(CheckedText text) {
		return text.shown().stream().filter(found -> found.rule().equals(finding.rule()) && found.message().equals(finding.message()))
				.sorted(Comparator.comparingInt(found -> found.at().offset())).toList();
	}

	@Override
	public String getDisplayString() {
		Fix fix = finding.fixes().get(choice);
		String title = everywhere ? "Fix every " + finding.rule() + " in this program" : fix.title();
		return fix.safe() ? title : title + " (look first)";
	}

	@Override
	public String getAdditionalProposalInfo() {
		return finding.message() + "\n\n" + why();
	}

	/** Why it is safe, or what to look at first. */
	public String why() {
		return finding.fixes().get(choice).why();
	}

	@Override
	public Point getSelection(IDocument document) {
		return changed.map(offset -> new Point(offset, 0)).orElse(null);
	}
}
