package truelead.editor.guide;

import org.eclipse.core.expressions.PropertyTester;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.Adapters;
import truelead.editor.fix.MarkedFinding;

/** Tells plugin.xml whether a row of the Problems view is a finding of ours. */
public final class FindingTester extends PropertyTester {

	@Override
	public boolean test(Object row, String property, Object[] arguments, Object expected) {
		IMarker marker = Adapters.adapt(row, IMarker.class);
		return marker != null && MarkedFinding.of(marker).isPresent();
	}
}
