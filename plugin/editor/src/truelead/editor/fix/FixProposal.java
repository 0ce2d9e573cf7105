package truelead.editor.fix;

import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.graphics.Point;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;
import truelead.editor.check.CheckedText;
import truelead.editor.check.ProgramCheck;

/** One way to remove a finding, wherever it is offered: at the quick fix key, the ruler, the hover or in the Problems view. */
public final class FixProposal extends PlainProposal {

	private final ProgramCheck check;
	private final Finding finding;
	private final int choice;
	private final boolean everywhere;
	private Optional<Integer> changed = Optional.empty();

	/**
	 * @param choice     which of the finding's fixes
	 * @param everywhere whether all findings of this rule in the program are fixed the same way
	 */
	public FixProposal(ProgramCheck check, Finding finding, int choice, boolean everywhere) {
		this.check = check;
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
		CheckedText now = check.run(document.get(), 0);
		List<Fix> fixes = now.shown().stream().filter(this::meant).filter(found -> found.fixes().size() > choice)
				.map(found -> found.fixes().get(choice)).toList();
		try {
			changed = FixEdit.apply(document, now, everywhere ? fixes : fixes.stream().limit(1).toList());
		} catch (BadLocationException stale) {
			ILog.of(FixProposal.class).error("A fix of " + finding.rule() + " does not fit the text", stale);
		}
	}

	/** The program is checked again before a change, so a finding is told by its rule, its message and, where several agree, its place. */
	private boolean meant(Finding found) {
		if (!found.rule().equals(finding.rule())) {
			return false;
		}
		return everywhere || found.message().equals(finding.message()) && found.at().line() == finding.at().line()
				&& found.at().span().equals(finding.at().span());
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
