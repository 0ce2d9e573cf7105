package truelead.editor.outline;

import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;

/** Entries with the mark of the worst finding in them. */
final class EntryLabels extends LabelProvider {

	@Override
	public String getText(Object entry) {
		return ((Entry) entry).text();
	}

	@Override
	public Image getImage(Object entry) {
		ISharedImages images = PlatformUI.getWorkbench().getSharedImages();
		return ((Entry) entry).worst().map(severity -> images.getImage(switch (severity) {
			case ERROR -> ISharedImages.IMG_OBJS_ERROR_TSK;
			case WARNING -> ISharedImages.IMG_OBJS_WARN_TSK;
			case INFORMATION -> ISharedImages.IMG_OBJS_INFO_TSK;
		})).orElse(null);
	}
}
