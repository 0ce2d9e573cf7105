package truelead.editor.fix;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IMarker;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.IMarkerResolutionGenerator2;
import truelead.editor.check.FindingMarkers;
import truelead.editor.check.FixOffer;

/**
 * Offers in the Problems view what the editor offers for a finding: its fixes, its lesson, to accept it, the severity of its rule. Told
 * from the marker alone, no program is checked for it.
 */
public final class FixResolutions implements IMarkerResolutionGenerator2 {

	@Override
	public boolean hasResolutions(IMarker marker) {
		return !marker.getAttribute(FindingMarkers.RULE, "").isEmpty();
	}

	@Override
	public IMarkerResolution[] getResolutions(IMarker marker) {
		List<IMarkerResolution> resolutions = new ArrayList<>();
		MarkedFinding.of(marker).ifPresent(marked -> {
			FixOffer.read(marker.getAttribute(FindingMarkers.FIXES, "")).forEach(offer -> resolutions.add(FixResolution.of(marked, offer)));
			marked.lesson().ifPresent(lesson -> resolutions.add(new WhyResolution(marked, lesson)));
			resolutions.add(FixResolution.accepting(marked));
			resolutions.add(new SeverityResolution(new SeverityProposal(marked.rule(), Optional.of(marked.program().getProject()))));
		});
		return resolutions.toArray(IMarkerResolution[]::new);
	}
}
