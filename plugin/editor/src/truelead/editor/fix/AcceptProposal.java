package truelead.editor.fix;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import truelead.audit.result.Acceptance;
import truelead.audit.result.Judged;
import truelead.audit.standing.AllowNote;
import truelead.checker.rule.Finding;
import truelead.editor.check.CheckedText;
import truelead.editor.check.ProjectAcceptFile;

/**
 * Accepts a finding for a reason that the person types: by a note in the text, which is left to be saved, or by a line of the project's
 * accept file.
 */
final class AcceptProposal extends PlainProposal {

	private final CheckedText checked;
	private final MarkedFinding finding;

	/** @param checked the text that the finding is in */
	AcceptProposal(CheckedText checked, MarkedFinding finding) {
		this.checked = checked;
		this.finding = finding;
	}

	/** The proposal for a finding of a program in the workspace. */
	static AcceptProposal of(CheckedText checked, Finding finding, IFile program) {
		return new AcceptProposal(checked, new MarkedFinding(program, finding.rule(), finding.message(), finding.at().line(),
				Optional.empty()));
	}

	/** What it is offered as. */
	static String label(String rule) {
		return "Accept " + rule + "\u2026";
	}

	/** What it does, for the person who is to choose. */
	static String info() {
		return "For a reason that you type. It stands in a note at the operation, or in the project's " + ProjectAcceptFile.NAME
				+ "; the finding is shown no longer, and reports name the reason.";
	}

	@Override
	public void apply(IDocument document) {
		AcceptDialog dialog = new AcceptDialog(shell(), List.of(finding));
		if (dialog.open() != Window.OK || dialog.acceptance().inProgram() && !FixEdit.mayChange(document)) {
			return;
		}
		long stamp = CheckedText.stampOf(document);
		Job job = Job.create("Accept " + finding.rule(), (ICoreRunnable) monitor -> {
			CheckedText now = checked.stamp() == stamp ? checked : checked.check().run(document.get(), stamp);
			accept(document, now, dialog.acceptance());
		});
		job.setUser(true);
		job.schedule();
	}

	private void accept(IDocument document, CheckedText now, Acceptance answer) throws CoreException {
		Optional<Finding> found = finding.in(now);
		if (found.isEmpty()) {
			say("The finding is not there any more: nothing was accepted.");
		} else if (answer.inProgram()) {
			Optional<AllowNote> note = AcceptNote.of(now, found.get(), answer.reason());
			PlatformUI.getWorkbench().getDisplay()
					.asyncExec(() -> note.ifPresentOrElse(one -> put(document, one, now), () -> say(AcceptNote.noPlace(finding))));
		} else {
			line(now, found.get(), answer).ifPresent(AcceptProposal::say);
		}
	}

	private static void put(IDocument document, AllowNote note, CheckedText now) {
		if (!now.isOf(document)) {
			say("The program has changed meanwhile: nothing was accepted.");
			return;
		}
		try {
			AcceptNote.put(document, note, now);
		} catch (BadLocationException stale) {
			ILog.of(AcceptProposal.class).error("A note does not fit the text", stale);
		}
	}

	private Optional<String> line(CheckedText now, Finding found, Acceptance answer) throws CoreException {
		Judged judged = Judged.all(now.result().findings()).stream().filter(one -> one.finding() == found).findFirst().orElseThrow();
		try {
			return ProjectAcceptFile.add(finding.program(), judged.fingerprint(), finding.rule(), answer);
		} catch (IOException cannot) {
			return Optional.of(ProjectAcceptFile.NAME + ": " + cannot.getMessage());
		}
	}

	private static void say(String words) {
		PlatformUI.getWorkbench().getDisplay().asyncExec(() -> MessageDialog.openWarning(shell(), "Accept", words));
	}

	private static Shell shell() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
	}

	@Override
	public String getDisplayString() {
		return label(finding.rule());
	}

	@Override
	public String getAdditionalProposalInfo() {
		return finding.message() + "\n\n" + info();
	}
}
