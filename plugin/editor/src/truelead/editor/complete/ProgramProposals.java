package truelead.editor.complete;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.contentassist.CompletionProposal;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContentAssistProcessor;
import org.eclipse.jface.text.contentassist.IContextInformation;
import org.eclipse.jface.text.contentassist.IContextInformationValidator;
import truelead.checker.edit.Completion;
import truelead.checker.edit.Proposal;
import truelead.checker.machine.Budget;
import truelead.checker.work.Work;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.CheckedText;
import truelead.grammar.ProgramText;

/** Proposes what may be typed at the caret: words, threads, notes, and templates. The platform asks on a thread of its own. */
public final class ProgramProposals implements IContentAssistProcessor {

	private final CheckedEditor editor;

	public ProgramProposals(CheckedEditor editor) {
		this.editor = editor;
	}

	@Override
	public ICompletionProposal[] computeCompletionProposals(ITextViewer viewer, int offset) {
		Optional<CheckedText> checked = editor.check().last();
		IDocument document = viewer.getDocument();
		if (checked.isEmpty() || document == null) {
			return new ICompletionProposal[0];
		}
		Work work = checked.get().result().work();
		ProgramText text = editor.check().textOf(document);
		List<ICompletionProposal> proposals = new ArrayList<>();
		int at = Math.min(offset, text.length());
		for (Proposal proposal : Completion.at(text, checked.get().check().folder(), work, at,
				Budget.forEditing(work.shop().profile(), () -> false))) {
			proposals.add(new CompletionProposal(proposal.text(), proposal.offset(), proposal.length(), proposal.text().length(), null,
					proposal.label(), null, proposal.more().isEmpty() ? null : proposal.more()));
		}
		proposals.addAll(0, ProgramTemplates.proposals(document, text, work, at));
		return proposals.toArray(ICompletionProposal[]::new);
	}

	@Override
	public IContextInformation[] computeContextInformation(ITextViewer viewer, int offset) {
		return null;
	}

	@Override
	public char[] getCompletionProposalAutoActivationCharacters() {
		return null;
	}

	@Override
	public char[] getContextInformationAutoActivationCharacters() {
		return null;
	}

	@Override
	public String getErrorMessage() {
		return null;
	}

	@Override
	public IContextInformationValidator getContextInformationValidator() {
		return null;
	}
}
