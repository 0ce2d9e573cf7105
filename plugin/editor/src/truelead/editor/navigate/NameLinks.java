package truelead.editor.navigate;

import java.util.Optional;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.hyperlink.IHyperlink;
import org.eclipse.jface.text.hyperlink.IHyperlinkDetector;
import truelead.checker.edit.Name;
import truelead.checker.edit.Names;
import truelead.editor.check.CheckedEditor;
import truelead.editor.look.Kind;
import truelead.grammar.BlockReader;

/** Makes jumps, calls and variables links that a click with Ctrl held follows. */
public final class NameLinks implements IHyperlinkDetector {

	private static final int LONGEST = 4000;

	private final CheckedEditor editor;

	public NameLinks(CheckedEditor editor) {
		this.editor = editor;
	}

	@Override
	public IHyperlink[] detectHyperlinks(ITextViewer viewer, IRegion region, boolean several) {
		IDocument document = viewer.getDocument();
		try {
			IRegion line = document.getLineInformationOfOffset(region.getOffset());
			if (line.getLength() > LONGEST || editor.check().last().isEmpty()) {
				return null;
			}
			Names names = new Names(editor.check().last().get().result().work().shop().profile());
			Optional<Name> name = names.at(BlockReader.read(document.get(line.getOffset(), line.getLength())),
					region.getOffset() - line.getOffset()).filter(found -> found.kind() != Name.Kind.WORD && !found.defines());
			return name.map(found -> new IHyperlink[] { new Link(editor, new Region(line.getOffset() + found.span().start(),
					found.span().length())) }).orElse(null);
		} catch (BadLocationException edited) {
			return null;
		}
	}

	private record Link(CheckedEditor editor, IRegion region) implements IHyperlink {

		@Override
		public IRegion getHyperlinkRegion() {
			return region;
		}

		@Override
		public String getTypeLabel() {
			return null;
		}

		@Override
		public String getHyperlinkText() {
			return "Go to what is named";
		}

		@Override
		public void open() {
			ToNamed.go(editor, region.getOffset() + Math.min(1, region.getLength()));
		}
	}
}
