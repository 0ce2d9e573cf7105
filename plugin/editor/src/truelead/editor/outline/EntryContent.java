package truelead.editor.outline;

import java.util.List;
import org.eclipse.jface.viewers.ITreeContentProvider;

/** Entries as a tree. */
final class EntryContent implements ITreeContentProvider {

	@Override
	public Object[] getElements(Object entries) {
		return ((List<?>) entries).toArray();
	}

	@Override
	public Object[] getChildren(Object entry) {
		return ((Entry) entry).below().toArray();
	}

	@Override
	public Object getParent(Object entry) {
		return null;
	}

	@Override
	public boolean hasChildren(Object entry) {
		return !((Entry) entry).below().isEmpty();
	}
}
