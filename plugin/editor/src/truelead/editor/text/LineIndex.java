package truelead.editor.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.ILineTracker;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.Region;

/**
 * Where the lines of a text start. The platform's own index is a list until the first edit and is then made a tree, a node a line, which
 * holds the screen for some 200 ms in a program of a million blocks. This one is of runs of about a thousand lines from the start: an edit
 * changes one of them and counts the runs behind it again. It gives the same answers; for any thread.
 */
final class LineIndex implements ILineTracker {

	/** Lines of a run when it is made, and as they become by edits: fewer than the least are put together with the next ones. */
	private static final int USUAL = 1024;
	private static final int MOST = 2 * USUAL;
	private static final int LEAST = USUAL / 4;

	private final List<LineRun> runs = new ArrayList<>();
	/** First line and first character of each run; behind the last one, all of them. */
	private int[] firstLine = {};
	private int[] firstOffset = {};
	/** The run that was asked for last. */
	private int last;

	LineIndex() {
		set("");
	}

	@Override
	public synchronized void set(String text) {
		runs.clear();
		runs.addAll(cut(lines(new LineRun(1 + given(text).length() / 16), 0, given(text), 0, LineEnds.NONE)));
		count(0);
	}

	@Override
	public synchronized void replace(int offset, int length, String text) throws BadLocationException {
		if (offset < 0 || length < 0 || offset > length() - length) {
			throw new BadLocationException("no characters " + offset + " to " + (offset + length) + " in " + length());
		}
		int first = runAt(offset);
		int end = runAt(offset + length);
		LineRun before = runs.get(first);
		LineRun behind = runs.get(end);
		int from = before.lineAt(offset - firstOffset[first]);
		int to = behind.lineAt(offset + length - firstOffset[end]);
		if (before == behind && from == to && !new LineEnds(given(text)).next()) {
			before.stretch(from, given(text).length() - length);
			for (int i = first + 1; i <= runs.size(); i++) {
				firstOffset[i] += given(text).length() - length;
			}
			return;
		}
		LineRun joined = before.part(0, from);
		lines(joined, offset - firstOffset[first] - before.start(from), given(text), firstOffset[end]
				+ behind.start(to + 1) - offset - length, behind.mark(to));
		joined.addAll(behind, to + 1, behind.count());
		if (joined.count() < LEAST && end + 1 < runs.size()) {
			end++;
			joined.addAll(runs.get(end), 0, runs.get(end).count());
		}
		List<LineRun> changed = runs.subList(first, end + 1);
		changed.clear();
		changed.addAll(cut(joined));
		count(first);
	}

	/** Adds the lines of a text that has so many characters of its first line before it and of its last line behind it. */
	private static LineRun lines(LineRun run, int before, String text, int behind, byte mark) {
		LineEnds ends = new LineEnds(text);
		int start = -before;
		while (ends.next()) {
			run.add(ends.end() - start, ends.mark());
			start = ends.end();
		}
		run.add(text.length() - start + behind, mark);
		return run;
	}

	private static List<LineRun> cut(LineRun run) {
		if (run.count() <= MOST) {
			return List.of(run);
		}
		int pieces = run.count() / USUAL;
		List<LineRun> cut = new ArrayList<>(pieces);
		for (int i = 0; i < pieces; i++) {
			cut.add(run.part((int) ((long) run.count() * i / pieces), (int) ((long) run.count() * (i + 1) / pieces)));
		}
		return cut;
	}

	/** Counts lines and characters again from a run on. */
	private void count(int from) {
		if (firstLine.length != runs.size() + 1) {
			firstLine = Arrays.copyOf(firstLine, runs.size() + 1);
			firstOffset = Arrays.copyOf(firstOffset, runs.size() + 1);
		}
		for (int i = from; i < runs.size(); i++) {
			firstLine[i + 1] = firstLine[i] + runs.get(i).count();
			firstOffset[i + 1] = firstOffset[i] + runs.get(i).length();
		}
	}

	private static String given(String text) {
		return text == null ? "" : text;
	}

	private int length() {
		return firstOffset[runs.size()];
	}

	private int runAt(int offset) {
		return at(firstOffset, offset);
	}

	/**
	 * The run in which a line or an offset is; the last one for what is behind all of them. Whoever asks mostly asks for the next line
	 * then.
	 */
	private int at(int[] firsts, int wanted) {
		if (last >= runs.size() || wanted < firsts[last] || wanted >= firsts[last + 1]) {
			int found = Arrays.binarySearch(firsts, 0, runs.size(), wanted);
			last = found < 0 ? -found - 2 : found;
		}
		return last;
	}

	private int runOfLine(int line) throws BadLocationException {
		if (line < 0 || line >= firstLine[runs.size()]) {
			throw new BadLocationException("no line " + line + " of " + firstLine[runs.size()]);
		}
		return at(firstLine, line);
	}

	@Override
	public String[] getLegalLineDelimiters() {
		return Arrays.copyOfRange(LineEnds.DELIMITERS, LineEnds.CR, LineEnds.CR_LF + 1);
	}

	@Override
	public synchronized String getLineDelimiter(int line) throws BadLocationException {
		int run = runOfLine(line);
		byte mark = runs.get(run).mark(line - firstLine[run]);
		return mark == LineEnds.NONE ? null : LineEnds.DELIMITERS[mark];
	}

	@Override
	public int computeNumberOfLines(String text) {
		LineEnds ends = new LineEnds(given(text));
		int lines = 0;
		while (ends.next()) {
			lines++;
		}
		return lines;
	}

	@Override
	public synchronized int getNumberOfLines() {
		return firstLine[runs.size()];
	}

	@Override
	public synchronized int getNumberOfLines(int offset, int length) throws BadLocationException {
		return length == 0 ? 1 : getLineNumberOfOffset(offset + length) - getLineNumberOfOffset(offset) + 1;
	}

	@Override
	public synchronized int getLineOffset(int line) throws BadLocationException {
		int run = runOfLine(line);
		return firstOffset[run] + runs.get(run).start(line - firstLine[run]);
	}

	@Override
	public synchronized int getLineLength(int line) throws BadLocationException {
		int run = runOfLine(line);
		return runs.get(run).length(line - firstLine[run]);
	}

	@Override
	public synchronized int getLineNumberOfOffset(int offset) throws BadLocationException {
		if (offset < 0 || offset > length()) {
			throw new BadLocationException("no character " + offset + " of " + length());
		}
		int run = runAt(offset);
		return firstLine[run] + runs.get(run).lineAt(offset - firstOffset[run]);
	}

	@Override
	public synchronized IRegion getLineInformationOfOffset(int offset) throws BadLocationException {
		return getLineInformation(getLineNumberOfOffset(offset));
	}

	@Override
	public synchronized IRegion getLineInformation(int line) throws BadLocationException {
		int run = runOfLine(line);
		LineRun lines = runs.get(run);
		int at = line - firstLine[run];
		return new Region(firstOffset[run] + lines.start(at), lines.length(at) - LineEnds.DELIMITERS[lines.mark(at)].length());
	}
}
