package truelead.editor.fix;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.PlatformUI;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;
import truelead.editor.check.CheckedText;
import truelead.editor.check.FixOffer;

/** One way to remove a finding, wherever it is offered: at the quick fix key, the ruler, the hover or in the Problems view. */
public final class FixProposal extends PlainProposal {

	private final CheckedText checked;
	private final Finding finding;
	private final FixOffer offer;
	private Optional<Integer> changed = Optional.empty();

	/** @param checked the text that the finding is in */
	public FixProposal(CheckedText checked, Finding finding, FixOffer offer) {
		this.checked = checked;
		this.finding = finding;
		this.offer = offer;
	}

	/** The finding that it removes. */
	public Finding finding() {
		return finding;
	}

	/** Changes the text at once where it is the one that was checked; else as soon as it has been checked anew, off the UI thread. */
	@Override
	public void apply(IDocument document) {
		if (!FixEdit.mayChange(document)) {
			return;
		}
		long stamp = CheckedText.stampOf(document);
		if (checked.isOf(document)) {
			make(document, checked);
			return;
		}
		Job job = Job.create("Checking the program", (ICoreRunnable) monitor -> {
			CheckedText now = checked.check().run(document.get(), stamp);
			PlatformUI.getWorkbench().getDisplay().asyncExec(() -> {
				if (now.isOf(document)) {
					make(document, now);
				}
			});
		});
		job.setUser(true);
		job.schedule();
	}

	private void make(IDocument document, CheckedText now) {
		List<Fix> fixes = meant(now).stream().filter(found -> found.fixes().size() > offer.choice())
				.map(found -> found.fixes().get(offer.choice())).filter(fix -> fix.safe() || !offer.everywhere()).toList();
		try {
			changed = FixEdit.apply(document, now, fixes);
		} catch (BadLocationException stale) {
			ILog.of(FixProposal.class).error("A fix of " + finding.rule() + " does not fit the text", stale);
		}
	}

	/**
	 * The program may have been checked again before a change, and lines may have come or gone since the finding was shown: it is told by
	 * rule and message, and where several agree it is the one that comes as late among them as it did, or the nearest where there are more
	 * or fewer of them now.
	 */
	private List<Finding> meant(CheckedText now) {
		if (offer.everywhere()) {
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
		return offer.label();
	}

	@Override
	public String getAdditionalProposalInfo() {
		return finding.message() + "\n\n" + offer.advice();
	}

	/** Why it is safe, or what to look at first. */
	public String why() {
		return offer.why();
	}

	@Override
	public Point getSelection(IDocument document) {
		return changed.map(offset -> new Point(offset, 0)).orElse(null);
	}
}
