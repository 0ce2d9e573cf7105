package truelead.editor.command;

import java.util.Arrays;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.BadPositionCategoryException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IPositionUpdater;
import org.eclipse.jface.text.Position;

/**
 * What is marked in a part of a document, folds, findings, bookmarks, carried through a change of that part, with which the platform would
 * drop it.
 */
final class CarriedMarks {

	private final IDocument document;
	private final Position[] marks;

	/** The change itself. */
	interface Edit {
		/** Makes it. */
		void make() throws BadLocationException;
	}

	private CarriedMarks(IDocument document, Position[] marks) {
		this.document = document;
		this.marks = marks;
	}

	/** Makes an edit of the characters from one offset to another, behind which a place is where {@code moved} says. */
	static void through(IDocument document, int from, int to, Rewrite.Moved moved, Edit edit) throws BadLocationException {
		CarriedMarks carried = lift(document, from, to);
		IPositionUpdater setting = event -> carried.set(moved);
		document.addPositionUpdater(setting);
		try {
			edit.make();
		} finally {
			document.removePositionUpdater(setting);
		}
	}

	/** Takes out those that stand in the part or reach into it. */
	private static CarriedMarks lift(IDocument document, int from, int to) {
		try {
			Position[] marks = Arrays.stream(document.getPositions(IDocument.DEFAULT_CATEGORY))
					.filter(mark -> mark.offset < to && mark.offset + mark.length >= from || to - from == document.getLength())
					.toArray(Position[]::new);
			for (int i = marks.length - 1; i >= 0; i--) {
				document.removePosition(marks[i]);
			}
			return new CarriedMarks(document, marks);
		} catch (BadPositionCategoryException none) {
			return new CarriedMarks(document, new Position[0]);
		}
	}

	/** Puts them back where their text is now, before anybody hears of the change. */
	private void set(Rewrite.Moved moved) {
		for (Position mark : marks) {
			int start = moved.of(mark.offset);
			mark.length = moved.of(mark.offset + mark.length) - start;
			mark.offset = start;
			try {
				document.addPosition(mark);
			} catch (BadLocationException outside) {
				ILog.of(CarriedMarks.class).error("A mark did not fit the changed text", outside);
			}
		}
	}
}
