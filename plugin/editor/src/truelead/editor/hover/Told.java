package truelead.editor.hover;

import java.util.List;
import org.eclipse.jface.text.source.ISourceViewer;
import truelead.editor.check.FindingAnnotation;

/** What a hover tells: the findings at a place, and what the words there mean in lines of plain text; either may be empty. */
record Told(ISourceViewer viewer, List<FindingAnnotation> findings, List<String> meaning) {

	Told {
		findings = List.copyOf(findings);
		meaning = List.copyOf(meaning);
	}

	boolean isEmpty() {
		return findings.isEmpty() && meaning.isEmpty();
	}
}
