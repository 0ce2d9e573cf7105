package truelead.editor.look;

import org.eclipse.jface.action.Action;
import org.eclipse.ui.PlatformUI;

/** A command of a view's own menu or tool bar. */
public final class PlainAction extends Action {

	private final Runnable work;

	/** @param image one of the platform's shared pictures; empty for none */
	public PlainAction(String text, String image, Runnable work) {
		super(text);
		this.work = work;
		if (!image.isEmpty()) {
			setImageDescriptor(PlatformUI.getWorkbench().getSharedImages().getImageDescriptor(image));
		}
	}

	@Override
	public void run() {
		work.run();
	}
}
