package truelead.editor.program;

import java.util.Arrays;
import org.eclipse.jface.preference.IPreferenceStore;
import org.eclipse.jface.text.DefaultInformationControl;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ITextHover;
import org.eclipse.jface.text.contentassist.ContentAssistEvent;
import org.eclipse.jface.text.contentassist.ContentAssistant;
import org.eclipse.jface.text.contentassist.ICompletionListener;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.contentassist.IContentAssistant;
import org.eclipse.jface.text.hyperlink.IHyperlinkDetector;
import org.eclipse.jface.text.information.IInformationPresenter;
import org.eclipse.jface.text.information.InformationPresenter;
import org.eclipse.jface.text.quickassist.IQuickAssistAssistant;
import org.eclipse.jface.text.quickassist.QuickAssistAssistant;
import org.eclipse.jface.text.reconciler.IReconciler;
import org.eclipse.jface.text.source.IAnnotationHover;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.ui.editors.text.TextSourceViewerConfiguration;
import truelead.editor.check.CheckingReconciler;
import truelead.editor.check.FindingRulerHover;
import truelead.editor.complete.ProgramProposals;
import truelead.editor.fix.FixProcessor;
import truelead.editor.hover.AtCaret;
import truelead.editor.hover.ProgramHover;
import truelead.editor.look.WrappedText;
import truelead.editor.navigate.NameLinks;

/** What the program editor hangs on its viewer. Colours are not here: see {@link truelead.editor.look.VisibleColours}. */
final class ProgramConfiguration extends TextSourceViewerConfiguration {

	/** Milliseconds without a key before the program is checked. */
	private static final int PAUSE = 45;

	/** Room for what is told at a key. */
	private static final int SIGNS = 80;
	private static final int LINES = 30;

	private final ProgramEditor editor;
	/** Fixes are being offered: what the ruler tells would lie over them. */
	private boolean offering;

	ProgramConfiguration(ProgramEditor editor, IPreferenceStore preferences) {
		super(preferences);
		this.editor = editor;
	}

	@Override
	public IReconciler getReconciler(ISourceViewer viewer) {
		return new CheckingReconciler(editor.check(), PAUSE);
	}

	@Override
	public ITextHover getTextHover(ISourceViewer viewer, String contentType, int stateMask) {
		return new ProgramHover(editor.check());
	}

	@Override
	public ITextHover getTextHover(ISourceViewer viewer, String contentType) {
		return new ProgramHover(editor.check());
	}

	/** What the key of the platform for it shows where the mouse rests on nothing. */
	@Override
	public IInformationPresenter getInformationPresenter(ISourceViewer viewer) {
		AtCaret provider = new AtCaret(new ProgramHover(editor.check()));
		InformationPresenter presenter = new InformationPresenter(provider.getInformationPresenterControlCreator());
		presenter.setInformationProvider(provider, IDocument.DEFAULT_CONTENT_TYPE);
		presenter.setSizeConstraints(SIGNS, LINES, true, true);
		return presenter;
	}

	@Override
	public IAnnotationHover getAnnotationHover(ISourceViewer viewer) {
		return new FindingRulerHover(() -> offering, () -> viewer.getTextWidget().getLineHeight());
	}

	@Override
	public IAnnotationHover getOverviewRulerAnnotationHover(ISourceViewer viewer) {
		return new FindingRulerHover(() -> offering, () -> 0);
	}

	@Override
	public IQuickAssistAssistant getQuickAssistAssistant(ISourceViewer viewer) {
		QuickAssistAssistant assistant = new QuickAssistAssistant();
		assistant.setQuickAssistProcessor(new FixProcessor());
		assistant.addCompletionListener(new ICompletionListener() {
			@Override
			public void assistSessionStarted(ContentAssistEvent event) {
				offering = true;
			}

			@Override
			public void assistSessionEnded(ContentAssistEvent event) {
				offering = false;
			}

			@Override
			public void selectionChanged(ICompletionProposal proposal, boolean smart) {
				// the list stands as before
			}
		});
		assistant.setInformationControlCreator(parent -> new DefaultInformationControl(parent, new WrappedText()));
		return assistant;
	}

	@Override
	public IContentAssistant getContentAssistant(ISourceViewer viewer) {
		ContentAssistant assistant = new ContentAssistant(true);
		assistant.setContentAssistProcessor(new ProgramProposals(editor), IDocument.DEFAULT_CONTENT_TYPE);
		assistant.setInformationControlCreator(parent -> new DefaultInformationControl(parent, new WrappedText()));
		assistant.enableColoredLabels(false);
		return assistant;
	}

	@Override
	public IHyperlinkDetector[] getHyperlinkDetectors(ISourceViewer viewer) {
		IHyperlinkDetector[] general = super.getHyperlinkDetectors(viewer);
		IHyperlinkDetector[] all = Arrays.copyOf(general == null ? new IHyperlinkDetector[0] : general, general == null ? 1
				: general.length + 1);
		all[all.length - 1] = new NameLinks(editor);
		return all;
	}

	@Override
	public String[] getDefaultPrefixes(ISourceViewer viewer, String contentType) {
		return new String[] { ";", "" };
	}

	@Override
	public String[] getConfiguredContentTypes(ISourceViewer viewer) {
		return new String[] { IDocument.DEFAULT_CONTENT_TYPE };
	}
}
