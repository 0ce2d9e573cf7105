package truelead.editor.navigate;

import java.util.Comparator;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.PlatformUI;
import truelead.checker.program.Location;
import truelead.checker.rule.Severity;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.CheckedText;

/** Puts the caret of a freshly opened program on its first error, so that a person sees a finding and not the head of a program. */
public final class FirstError {

	private FirstError() {
	}

	/** Does so once the program is checked, unless the caret was moved before. */
	public static void show(CheckedEditor editor) {
		AtomicBoolean shown = new AtomicBoolean();
		editor.check().addListener(checked -> {
			if (shown.compareAndSet(false, true)) {
				show(editor, checked);
			}
		});
		editor.check().last().filter(checked -> shown.compareAndSet(false, true)).ifPresent(checked -> show(editor, checked));
	}

	private static void show(CheckedEditor editor, CheckedText checked) {
		Optional<Location> first = checked.shown().stream().filter(finding -> finding.severity() == Severity.ERROR).map(checked::placeOf)
				.min(Comparator.comparingInt(Location::offset));
		first.ifPresent(place -> PlatformUI.getWorkbench().getDisplay().asyncExec(() -> {
			if (editor.viewer() != null && editor.viewer().getTextWidget() != null
					&& editor.viewer().getSelectedRange().equals(new Point(0, 0))) {
				editor.selectAndReveal(place.offset(), place.span().length());
			}
		}));
	}
}
