package truelead.editor.hover;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.eclipse.jface.text.source.ISourceViewer;
import truelead.editor.check.FindingAnnotation;

/**
 * What a hover tells: the findings at a place, and what the words there mean in lines of plain text; either may be empty.
 *
 * @param picture of the first finding that has one; it may come later than the words
 */
record Told(ISourceViewer viewer, List<FindingAnnotation> findings, List<String> meaning,
		CompletableFuture<Optional<Pictures.Picture>> picture) {

	Told {
		findings = List.copyOf(findings);
		meaning = List.copyOf(meaning);
	}

	boolean isEmpty() {
		return findings.isEmpty() && meaning.isEmpty();
	}
}
