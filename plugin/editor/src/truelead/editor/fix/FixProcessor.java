package truelead.editor.fix;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
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

/** Offers the fixes of the findings in the caret's line, of those at the caret first. */
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
		Set<String> rules = new LinkedHashSet<>();
		IDocument document = invocation.getSourceViewer().getDocument();
		try {
			IRegion line = document.getLineInformationOfOffset(Math.min(invocation.getOffset(), document.getLength()));
			for (FindingAnnotation found : ofLine(invocation.getSourceViewer().getAnnotationModel(), line, invocation.getOffset())) {
				proposals.addAll(Fixes.of(found.checked(), found.finding()));
				WhyProposal.of(found.checked(), found.finding()).ifPresent(proposals::add);
				rules.add(found.finding().rule());
			}
			Optional<IProject> project = projectOf(document);
			rules.forEach(rule -> proposals.add(new SeverityProposal(rule, project)));
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

	/** The program's project; empty where it is in none. */
	private static Optional<IProject> projectOf(IDocument document) {
		ITextFileBuffer buffer = FileBuffers.getTextFileBufferManager().getTextFileBuffer(document);
		IFile file = buffer == null || buffer.getLocation() == null ? null : FileBuffers.getWorkspaceFileAtLocation(buffer.getLocation());
		return Optional.ofNullable(file).map(IFile::getProject);
	}
}
