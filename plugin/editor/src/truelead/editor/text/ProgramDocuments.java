package truelead.editor.text;

import org.eclipse.core.filebuffers.IDocumentFactory;
import org.eclipse.jface.text.IDocument;

/** Makes the documents of files that are programs, whoever opens them. */
@SuppressWarnings("deprecation") // the platform names no successor by which a file's document could have an index of its own
public final class ProgramDocuments implements IDocumentFactory {

	@Override
	public IDocument createDocument() {
		return new ProgramDocument();
	}
}
