package truelead.checker.chunk;

import java.util.ArrayList;
import java.util.List;
import truelead.grammar.Chunk;

/**
 * Goes along plain lines and parts them into contours: each from a move aside to a move aside, with no plunge between that may come back
 * out. Tells them at any time, and can go on from there.
 */
final class ContourWalk {

	/** Lines of a contour, at least. */
	static final int WORTH = 4;

	private final Chunk chunk;
	private final PlainLines lines;
	/** Lines that are left out as they may be chords of a helix: the first of each stretch and the one behind it. */
	private final int[] chords;
	private int chord;
	private int at;
	private final List<Contour> closed = new ArrayList<>();
	/** The contour that goes on; null where none does, which is so where first is -1. */
	private ContourSum open;
	private int first;
	private int last;
	/** The code before the first one said is not known: -1. */
	private int code;
	private int codeBefore;
	/** The way along Z of a feed that may be a way into the stock. */
	private byte way;
	private boolean mayComeBack;

	/** @param from the line it begins at */
	ContourWalk(Chunk chunk, PlainLines lines, int[] chords, int from) {
		this.chunk = chunk;
		this.lines = lines;
		this.chords = chords;
		this.at = from;
		begin();
	}

	private void begin() {
		first = -1;
		last = -1;
		code = -1;
		codeBefore = -1;
		way = PlainLines.LEVEL;
		mayComeBack = false;
	}

	/** Goes on up to a line, which is left out; stays where it has been there. */
	void to(int end) {
		for (; chord < chords.length && chords[chord] < end; chord += 2) {
			if (chords[chord + 1] > at) {
				plain(chords[chord]);
				close();
				begin();
				at = chords[chord + 1];
			}
		}
		plain(end);
	}

	/** The contours of the lines it has gone along, in order. */
	List<Contour> contours() {
		List<Contour> all = new ArrayList<>(closed);
		if (worth()) {
			all.add(sum().contour());
		}
		return all;
	}

	private void plain(int end) {
		for (int line = at; line < end; line++) {
			byte kind = lines.kinds[line];
			code = lines.codes[line] < 0 ? code : lines.codes[line];
			if (kind == PlainLines.MOVE) {
				byte level = lines.levels[line];
				mayComeBack |= way != PlainLines.LEVEL && level != PlainLines.LEVEL && (level != way || level == PlainLines.FIRST);
				way = way == PlainLines.LEVEL && leadsIn(level, code, codeBefore) ? level : way;
				codeBefore = code;
			} else if (kind >= PlainLines.ARC) {
				if (mayComeBack && first >= 0) {
					close();
				}
				mayComeBack = false;
				way = PlainLines.LEVEL;
				if (kind >= PlainLines.ASIDE) {
					code = first >= 0 ? code : lines.codes[line];
					first = first >= 0 ? first : line;
					last = line;
				}
				codeBefore = code;
			}
		}
		at = Math.max(at, end);
	}

	/** Whether a move along Z may be a feed into the stock: a feed up is a way out, unless a rapid has led below. */
	private static boolean leadsIn(byte level, int code, int codeBefore) {
		return code != 0 && (level != PlainLines.RAISED || codeBefore <= 0);
	}

	private boolean worth() {
		return first >= 0 && last + 1 - first >= WORTH;
	}

	private void close() {
		if (worth()) {
			closed.add(sum().contour());
		}
		first = -1;
		open = null;
	}

	private ContourSum sum() {
		open = open == null ? new ContourSum(chunk, lines, first) : open;
		open.add(last + 1);
		return open;
	}
}
