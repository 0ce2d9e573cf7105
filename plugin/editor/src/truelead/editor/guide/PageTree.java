package truelead.editor.guide;

import java.util.List;
import java.util.Map;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.Viewer;
import truelead.help.HelpPage;

/** Groups, and in them pages. The input is the map of them. */
final class PageTree implements ITreeContentProvider {

	private Map<?, ?> groups = Map.of();

	@Override
	public void inputChanged(Viewer viewer, Object before, Object input) {
		groups = input == null ? Map.of() : (Map<?, ?>) input;
	}

	@Override
	public Object[] getElements(Object input) {
		return groups.keySet().toArray();
	}

	@Override
	public Object[] getChildren(Object element) {
		return groups.get(element) instanceof List<?> pages ? pages.toArray() : new Object[0];
	}

	@Override
	public Object getParent(Object element) {
		return element instanceof HelpPage page ? page.group() : null;
	}

	@Override
	public boolean hasChildren(Object element) {
		return groups.containsKey(element);
	}
}
