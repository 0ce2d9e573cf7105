package truelead.editor.check;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.reconciler.DirtyRegion;
import org.eclipse.jface.text.reconciler.IReconcilingStrategy;
import org.eclipse.jface.text.reconciler.IReconcilingStrategyExtension;

/** Runs the check when the platform's reconciler says that typing has paused, on the reconciler's thread. */
public final class CheckingStrategy implements IReconcilingStrategy, IReconcilingStrategyExtension {

	private final LiveCheck check;
	private IDocument document;

	public CheckingStrategy(LiveCheck check) {
		this.check = check;
	}

	@Override
	public void setDocument(IDocument document) {
		this.document = document;
		check.follow(document);
	}

	@Override
	public void initialReconcile() {
		check.run(document);
	}

	@Override
	public void reconcile(IRegion changed) {
		check.run(document);
	}

	@Override
	public void reconcile(DirtyRegion dirty, IRegion changed) {
		check.run(document);
	}

	@Override
	public void setProgressMonitor(IProgressMonitor monitor) {
		// a check is too short to be worth one
	}
}
