package truelead.editor.guide;

import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider.IStyledLabelProvider;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.swt.graphics.Image;
import truelead.help.HelpPage;

/** A page by its title and what it is about. */
final class PageLabels extends DelegatingStyledCellLabelProvider {

	PageLabels() {
		super(new Words());
	}

	private static final class Words extends LabelProvider implements IStyledLabelProvider {

		@Override
		public StyledString getStyledText(Object element) {
			if (!(element instanceof HelpPage page)) {
				return new StyledString(element.toString());
			}
			StyledString words = new StyledString(page.title());
			return page.summary().isEmpty() ? words : words.append("  " + page.summary(), StyledString.QUALIFIER_STYLER);
		}

		@Override
		public Image getImage(Object element) {
			return null;
		}
	}
}
