package truelead.editor.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.eclipse.core.runtime.QualifiedName;
import org.eclipse.core.runtime.content.IContentDescription;
import org.eclipse.core.runtime.content.ITextContentDescriber;

/**
 * Tells a program's encoding from its bytes: UTF-8 where they are valid UTF-8, else one character a byte, so that a program with an
 * 8-bit comment is saved back with every byte it had. A user's own choice of encoding goes before.
 */
public final class ProgramDescriber implements ITextContentDescriber {

	private static final QualifiedName[] OPTIONS = { IContentDescription.CHARSET, IContentDescription.BYTE_ORDER_MARK };

	@Override
	public int describe(InputStream contents, IContentDescription description) throws IOException {
		if (description == null || !description.isRequested(IContentDescription.CHARSET)
				&& !description.isRequested(IContentDescription.BYTE_ORDER_MARK)) {
			return INDETERMINATE;
		}
		byte[] bytes = contents.readAllBytes();
		byte[] mark = IContentDescription.BOM_UTF_8;
		if (bytes.length >= mark.length && Arrays.equals(bytes, 0, mark.length, mark, 0, mark.length)) {
			description.setProperty(IContentDescription.BYTE_ORDER_MARK, mark);
			description.setProperty(IContentDescription.CHARSET, StandardCharsets.UTF_8.name());
		} else {
			description.setProperty(IContentDescription.CHARSET, isUtf8(bytes) ? "UTF-8" : "ISO-8859-1");
		}
		return INDETERMINATE;
	}

	@Override
	public int describe(Reader contents, IContentDescription description) {
		return INDETERMINATE;
	}

	@Override
	public QualifiedName[] getSupportedOptions() {
		return OPTIONS.clone();
	}

	private static boolean isUtf8(byte[] bytes) {
		try {
			StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
			return true;
		} catch (CharacterCodingException notUtf8) {
			return false;
		}
	}
}
