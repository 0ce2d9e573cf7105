package truelead.editor.guide;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;
import truelead.editor.page.Reading;

/** Opens the lesson of the finding at the caret or selected in a view; where there is none, the guide at what is asked about. */
public final class ShowWhy extends AbstractHandler {

	@Override
	public Object execute(ExecutionEvent event) {
		Reading reading = Subject.of(HandlerUtil.getActivePart(event), HandlerUtil.getCurrentSelection(event));
		reading.why().map(Reading.Why::show).orElse(() -> GuideView.show(reading)).run();
		return null;
	}
}
