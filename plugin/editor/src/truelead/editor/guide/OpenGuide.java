package truelead.editor.guide;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens the guide at what a person asks about; the platform's help command too, where a program or a finding has the focus. */
public final class OpenGuide extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		GuideView.show(Subject.of(HandlerUtil.getActivePart(event), HandlerUtil.getCurrentSelection(event)));
		return null;
	}
}
