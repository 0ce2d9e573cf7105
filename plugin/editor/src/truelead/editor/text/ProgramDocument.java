package truelead.editor.text;

import java.util.List;
import java.util.Map;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.BadPartitioningException;
import org.eclipse.jface.text.BadPositionCategoryException;
import org.eclipse.jface.text.Document;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.DocumentRewriteSession;
import org.eclipse.jface.text.DocumentRewriteSessionType;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ISynchronizable;
import org.eclipse.jface.text.ITypedRegion;
import org.eclipse.jface.text.Position;

/**
 * The platform's document of a file, with our own {@link LineIndex}; like that one it takes turns on a lock as long as somebody gives it
 * one.
 */
final class ProgramDocument extends Document implements ISynchronizable {

	private volatile Object lock;

	ProgramDocument() {
		setLineTracker(new LineIndex());
	}

	@Override
	public void setLockObject(Object lock) {
		this.lock = lock;
	}

	@Override
	public Object getLockObject() {
		return lock;
	}

	/** What to take turns on: something of the caller's own where no lock is given. */
	private Object turn() {
		Object given = lock;
		return given == null ? new Object() : given;
	}

	@Override
	protected void updateDocumentStructures(DocumentEvent event) {
		synchronized (turn()) {
			super.updateDocumentStructures(event);
		}
	}

	@Override
	protected Map<String, List<Position>> getDocumentManagedPositions() {
		synchronized (turn()) {
			return super.getDocumentManagedPositions();
		}
	}

	@Override
	public String[] getPositionCategories() {
		synchronized (turn()) {
			return super.getPositionCategories();
		}
	}

	@Override
	public boolean containsPositionCategory(String category) {
		synchronized (turn()) {
			return super.containsPositionCategory(category);
		}
	}

	@Override
	public boolean containsPosition(String category, int offset, int length) {
		synchronized (turn()) {
			return super.containsPosition(category, offset, length);
		}
	}

	@Override
	public int computeIndexInCategory(String category, int offset) throws BadLocationException, BadPositionCategoryException {
		synchronized (turn()) {
			return super.computeIndexInCategory(category, offset);
		}
	}

	@Override
	public void addPositionCategory(String category) {
		synchronized (turn()) {
			super.addPositionCategory(category);
		}
	}

	@Override
	public void removePositionCategory(String category) throws BadPositionCategoryException {
		synchronized (turn()) {
			super.removePositionCategory(category);
		}
	}

	@Override
	public void addPosition(String category, Position position) throws BadLocationException, BadPositionCategoryException {
		synchronized (turn()) {
			super.addPosition(category, position);
		}
	}

	@Override
	public void removePosition(String category, Position position) throws BadPositionCategoryException {
		synchronized (turn()) {
			super.removePosition(category, position);
		}
	}

	@Override
	public Position[] getPositions(String category) throws BadPositionCategoryException {
		synchronized (turn()) {
			return super.getPositions(category);
		}
	}

	@Override
	public Position[] getPositions(String category, int offset, int length, boolean startsBefore, boolean endsAfter)
			throws BadPositionCategoryException {
		synchronized (turn()) {
			return super.getPositions(category, offset, length, startsBefore, endsAfter);
		}
	}

	@Override
	@Deprecated
	public void startSequentialRewrite(boolean normalized) {
		synchronized (turn()) {
			super.startSequentialRewrite(normalized);
		}
	}

	@Override
	@Deprecated
	public void stopSequentialRewrite() {
		synchronized (turn()) {
			super.stopSequentialRewrite();
		}
	}

	@Override
	public DocumentRewriteSession startRewriteSession(DocumentRewriteSessionType type) {
		synchronized (turn()) {
			return super.startRewriteSession(type);
		}
	}

	@Override
	public void stopRewriteSession(DocumentRewriteSession session) {
		synchronized (turn()) {
			super.stopRewriteSession(session);
		}
	}

	@Override
	public String get() {
		synchronized (turn()) {
			return super.get();
		}
	}

	@Override
	public String get(int offset, int length) throws BadLocationException {
		synchronized (turn()) {
			return super.get(offset, length);
		}
	}

	@Override
	public char getChar(int offset) throws BadLocationException {
		synchronized (turn()) {
			return super.getChar(offset);
		}
	}

	@Override
	public long getModificationStamp() {
		synchronized (turn()) {
			return super.getModificationStamp();
		}
	}

	@Override
	public void replace(int offset, int length, String text) throws BadLocationException {
		synchronized (turn()) {
			super.replace(offset, length, text);
		}
	}

	@Override
	public void replace(int offset, int length, String text, long stamp) throws BadLocationException {
		synchronized (turn()) {
			super.replace(offset, length, text, stamp);
		}
	}

	@Override
	public void set(String text) {
		synchronized (turn()) {
			super.set(text);
		}
	}

	@Override
	public void set(String text, long stamp) {
		synchronized (turn()) {
			super.set(text, stamp);
		}
	}

	@Override
	public ITypedRegion[] computePartitioning(String partitioning, int offset, int length, boolean zeroLength)
			throws BadLocationException, BadPartitioningException {
		synchronized (turn()) {
			return super.computePartitioning(partitioning, offset, length, zeroLength);
		}
	}

	@Override
	public String getLineDelimiter(int line) throws BadLocationException {
		synchronized (turn()) {
			return super.getLineDelimiter(line);
		}
	}

	@Override
	public String getDefaultLineDelimiter() {
		synchronized (turn()) {
			return super.getDefaultLineDelimiter();
		}
	}

	@Override
	public IRegion getLineInformation(int line) throws BadLocationException {
		synchronized (turn()) {
			return super.getLineInformation(line);
		}
	}

	@Override
	public IRegion getLineInformationOfOffset(int offset) throws BadLocationException {
		synchronized (turn()) {
			return super.getLineInformationOfOffset(offset);
		}
	}

	@Override
	public int getLineLength(int line) throws BadLocationException {
		synchronized (turn()) {
			return super.getLineLength(line);
		}
	}

	@Override
	public int getLineOffset(int line) throws BadLocationException {
		synchronized (turn()) {
			return super.getLineOffset(line);
		}
	}

	@Override
	public int getLineOfOffset(int offset) throws BadLocationException {
		synchronized (turn()) {
			return super.getLineOfOffset(offset);
		}
	}
}
