package truelead.editor.walk;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the walk, in any Eclipse. */
public final class OpenWalk extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		try {
			HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage().showView(WalkView.ID);
		} catch (PartInitException cannotOpen) {
			throw new ExecutionException(cannotOpen.getMessage(), cannotOpen);
		}
		return null;
	}
}
