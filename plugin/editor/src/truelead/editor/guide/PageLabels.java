package truelead.editor.guide;

import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider.IStyledLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.TextStyle;
import org.eclipse.ui.PlatformUI;
import truelead.editor.look.Kind;
import truelead.help.HelpPage;

/** A page by its title and what it is about. */
final class PageLabels extends DelegatingStyledCellLabelProvider {

	PageLabels() {
		super(new Words());
	}

	/** The platform's grey for such words is too faint on white. */
	private static final StyledString.Styler QUIET = new StyledString.Styler() {
		@Override
		public void applyStyles(TextStyle style) {
			style.foreground = PlatformUI.getWorkbench().getThemeManager().getCurrentTheme().getColorRegistry()
					.get(Kind.NUMBERING.colour());
		}
	};

	private static final class Words extends LabelProvider implements IStyledLabelProvider {

		@Override
		public StyledString getStyledText(Object element) {
			if (!(element instanceof HelpPage page)) {
				return new StyledString(element.toString());
			}
			StyledString words = new StyledString(page.title());
			return page.summary().isEmpty() ? words : words.append("  " + page.summary(), QUIET);
		}

		@Override
		public Image getImage(Object element) {
			return null;
		}
	}
}
