package truelead.editor.fix;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.resources.IFile;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.quickassist.IQuickAssistInvocationContext;
import org.eclipse.jface.text.quickassist.IQuickAssistProcessor;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;
import truelead.editor.check.FindingAnnotation;
import truelead.editor.check.ShownFindings;

/**
 * Offers what can be done about the findings in the caret's line, of those at the caret first: fixes and lessons, then to accept them, then
 * the severities of their rules.
 */
public final class FixProcessor implements IQuickAssistProcessor {

	@Override
	public String getErrorMessage() {
		return null;
	}

	@Override
	public boolean canFix(Annotation annotation) {
		return annotation instanceof FindingAnnotation;
	}

	@Override
	public boolean canAssist(IQuickAssistInvocationContext invocation) {
		return false;
	}

	@Override
	public ICompletionProposal[] computeQuickAssistProposals(IQuickAssistInvocationContext invocation) {
		List<ICompletionProposal> proposals = new ArrayList<>();
		List<ICompletionProposal> settled = new ArrayList<>();
		Set<String> rules = new LinkedHashSet<>();
		IDocument document = invocation.getSourceViewer().getDocument();
		Optional<IFile> program = programOf(document);
		try {
			IRegion line = document.getLineInformationOfOffset(Math.min(invocation.getOffset(), document.getLength()));
			for (FindingAnnotation found : ofLine(invocation.getSourceViewer().getAnnotationModel(), line, invocation.getOffset())) {
				proposals.addAll(Fixes.of(found.checked(), found.finding()));
				WhyProposal.of(found.checked(), found.finding()).ifPresent(proposals::add);
				program.ifPresent(file -> settled.add(AcceptProposal.of(found.checked(), found.finding(), file)));
				rules.add(found.finding().rule());
			}
			proposals.addAll(settled);
			rules.forEach(rule -> proposals.add(new SeverityProposal(rule, program.map(IFile::getProject))));
		} catch (BadLocationException gone) {
			return new ICompletionProposal[0];
		}
		return proposals.toArray(ICompletionProposal[]::new);
	}

	/** Those at the caret before the others of its line. */
	private static Set<FindingAnnotation> ofLine(IAnnotationModel model, IRegion line, int caret) {
		Set<FindingAnnotation> found = new LinkedHashSet<>(ShownFindings.at(model, caret, 0));
		found.addAll(ShownFindings.at(model, line.getOffset(), line.getLength()));
		return found;
	}

	/** The program; empty where it is in no project. */
	private static Optional<IFile> programOf(IDocument document) {
		ITextFileBuffer buffer = FileBuffers.getTextFileBufferManager().getTextFileBuffer(document);
		return buffer == null || buffer.getLocation() == null ? Optional.empty()
				: Optional.ofNullable(FileBuffers.getWorkspaceFileAtLocation(buffer.getLocation()));
	}
}
