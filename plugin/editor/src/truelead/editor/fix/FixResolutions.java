package truelead.editor.fix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IMarker;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.IMarkerResolutionGenerator2;
import truelead.checker.lesson.Lessons;
import truelead.editor.check.FindingMarkers;


/** Offers in the Problems view what the editor offers for a finding: its fixes, and its lesson. */
public final class FixResolutions implements IMarkerResolutionGenerator2 {

	@Override
	public boolean hasResolutions(IMarker marker) {
		return marker.getAttribute(FindingMarkers.FIXABLE, false);
	}

	@Override
	public IMarkerResolution[] getResolutions(IMarker marker) {
		Optional<MarkedFinding> marked = MarkedFinding.of(marker);
		List<IMarkerResolution> resolutions = new ArrayList<>();
		marked.flatMap(MarkedFinding::found).ifPresent(found -> Fixes.of(found.checked(), found.finding()).stream()
				.map(FixResolution::new).forEach(resolutions::add));
		marked.filter(finding -> Lessons.ofRule(finding.rule()).isPresent()).map(WhyResolution::new).ifPresent(resolutions::add);
		return resolutions.toArray(IMarkerResolution[]::new);
	}
}
