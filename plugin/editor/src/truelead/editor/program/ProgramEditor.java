package truelead.editor.program;

import java.nio.charset.StandardCharsets;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.jface.text.source.IVerticalRuler;
import org.eclipse.jface.text.source.projection.ProjectionSupport;
import org.eclipse.jface.text.source.projection.ProjectionViewer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.editors.text.TextEditor;
import org.eclipse.ui.texteditor.ITextEditorActionConstants;
import org.eclipse.ui.views.contentoutline.IContentOutlinePage;
import truelead.checker.rule.Severity;
import truelead.editor.EditorIds;
import truelead.editor.bracket.BlockBrackets;
import truelead.editor.bracket.BracketClosing;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.FindingAnnotation;
import truelead.editor.check.LiveCheck;
import truelead.editor.fix.FixAtRuler;
import truelead.editor.folding.FoldingActions;
import truelead.editor.folding.FoldingViewer;
import truelead.editor.folding.ProgramFolding;
import truelead.editor.inline.Occurrences;
import truelead.editor.inline.OperationNotes;
import truelead.editor.look.VisibleColours;
import truelead.editor.outline.ProgramOutline;

/** A text editor for CNC programs: coloured by the grammar, checked while it is typed in. */
public final class ProgramEditor extends TextEditor implements CheckedEditor {

	private final LiveCheck check = new LiveCheck(this);
	private VisibleColours colours;
	private ProjectionSupport folding;

	@Override
	protected void initializeEditor() {
		super.initializeEditor();
		setSourceViewerConfiguration(new ProgramConfiguration(this, getPreferenceStore()));
		setEditorContextMenuId("#TrueleadProgram");
		setRulerContextMenuId("#TrueleadProgramRuler");
	}

	@Override
	protected void initializeKeyBindingScopes() {
		setKeyBindingScopes(new String[] { EditorIds.CONTEXT });
	}

	@Override
	protected void createActions() {
		super.createActions();
		setAction(ITextEditorActionConstants.RULER_CLICK, new FixAtRuler(this));
	}

	@Override
	public void createPartControl(Composite parent) {
		super.createPartControl(parent);
		fold((ProjectionViewer) getSourceViewer());
		colours = new VisibleColours(getSourceViewer());
		OperationNotes.install(this);
		Occurrences.install(this);
		BlockBrackets.install(getSourceViewer());
		BracketClosing.install(this);
	}

	@Override
	protected ISourceViewer createSourceViewer(Composite parent, IVerticalRuler ruler, int styles) {
		fAnnotationAccess = getAnnotationAccess();
		fOverviewRuler = createOverviewRuler(getSharedColors());
		ISourceViewer viewer = new FoldingViewer(parent, ruler, getOverviewRuler(), isOverviewRulerVisible(), styles);
		getSourceViewerDecorationSupport(viewer);
		return viewer;
	}

	private void fold(ProjectionViewer viewer) {
		folding = new ProjectionSupport(viewer, getAnnotationAccess(), getSharedColors());
		folding.addSummarizableAnnotationType(FindingAnnotation.typeOf(Severity.ERROR));
		folding.addSummarizableAnnotationType(FindingAnnotation.typeOf(Severity.WARNING));
		folding.install();
		viewer.doOperation(ProjectionViewer.TOGGLE);
		FoldingActions.install(this, viewer);
		ProgramFolding folds = new ProgramFolding(viewer);
		check.addListener(folds);
		check.last().ifPresent(folds::checked);
	}

	@Override
	public <T> T getAdapter(Class<T> kind) {
		if (kind == IContentOutlinePage.class) {
			return kind.cast(new ProgramOutline(this));
		}
		T projection = folding == null ? null : folding.getAdapter(getSourceViewer(), kind);
		return projection == null ? super.getAdapter(kind) : projection;
	}

	@Override
	public LiveCheck check() {
		return check;
	}

	@Override
	public ISourceViewer viewer() {
		return getSourceViewer();
	}

	/**
	 * Saves in the encoding that the program was read in. Left to itself the platform would look for a hint in the characters, find none,
	 * and write UTF-8 over a program that was read one character a byte.
	 */
	@Override
	protected void performSave(boolean overwrite, IProgressMonitor monitor) {
		IDocument document = getDocumentProvider().getDocument(getEditorInput());
		ITextFileBuffer buffer = FileBuffers.getTextFileBufferManager().getTextFileBuffer(document);
		if (buffer != null && StandardCharsets.ISO_8859_1.name().equals(buffer.getEncoding())) {
			buffer.setEncoding(buffer.getEncoding());
		}
		super.performSave(overwrite, monitor);
	}

	@Override
	protected void editorSaved() {
		super.editorSaved();
		check.saved();
	}

	@Override
	public void doRevertToSaved() {
		super.doRevertToSaved();
		check.saved();
	}

	@Override
	public void dispose() {
		if (colours != null) {
			colours.dispose();
		}
		super.dispose();
	}
}
