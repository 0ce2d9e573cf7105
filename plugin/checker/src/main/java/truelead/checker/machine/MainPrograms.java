package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import truelead.checker.chunk.ChunkFacts;
import truelead.grammar.Block;
import truelead.grammar.ChannelHeader;
import truelead.grammar.Chunk;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.ProgramText;

/** Which programs of a file are run for themselves: all but those that another one calls. */
final class MainPrograms {

	/**
	 * A program of a file.
	 *
	 * @param from  first line
	 * @param to    line behind its last one
	 * @param alone whether it is a subprogram that nothing here calls, so that the state at its start is not known
	 */
	record Part(int from, int to, boolean alone) {
	}

	/** Lines behind a percent sign, or before the end of the file, that are looked at for words. */
	private static final int NEAR = 50;

	private MainPrograms() {
	}

	static List<Part> of(Source source) {
		if (single(source.file().text()) && !endsWithReturn(source.file().text())) {
			return List.of(new Part(0, source.lines(), false));
		}
		Outline outline = source.outline();
		List<Part> parts = new ArrayList<>();
		TreeSet<Integer> starts = new TreeSet<>(outline.programLines());
		starts.addAll(outline.unnumberedLines());
		if (!starts.isEmpty() && !outline.hasEnd(0, starts.first())) {
			starts.pollFirst();
		}
		starts.add(0);
		for (int start : starts) {
			Integer next = starts.higher(start);
			int to = next == null ? source.lines() : next;
			if (!called(source, start, to, outline) && !outline.calledByName(start)) {
				parts.add(part(outline, start, to));
			}
		}
		if (parts.isEmpty()) {
			parts.add(part(outline, 0, outline.programEnd(0)));
		}
		outline.uncalledSubs().forEach(sub -> parts.add(new Part(sub.line() + 1, outline.subEnd(sub.line()), true)));
		return parts;
	}

	private static Part part(Outline outline, int from, int to) {
		return new Part(from, to, (outline.hasReturn(from, to) || outline.hasProcedure(from, to) || outline.subprogramHeader(from))
				&& !outline.hasEnd(from, to));
	}

	private static boolean called(Source source, int from, int to, Outline outline) {
		return outline.programLines().subSet(from, to).stream().findFirst()
				.map(line -> source.file().text().block(line).elements().stream().anyMatch(element -> element instanceof Element.Word word
						&& word.address() == 'O' && outline.isCalled(word.value())))
				.orElse(false);
	}

	/** Whether the few lines that could begin a program show that there is only one, so that the whole need not be read twice. */
	private static boolean single(ProgramText text) {
		int numbers = 0;
		int channels = 0;
		List<Chunk> chunks = text.chunks();
		for (int chunk = 0; chunk < chunks.size(); chunk++) {
			for (int header : ChunkFacts.of(chunks.get(chunk)).headers()) {
				int line = text.firstLine(chunk) + header;
				channels += ChannelHeader.is(text.block(line)) ? 1 : 0;
				if (channels > 1) {
					return false;
				}
				for (Element element : text.block(line).elements()) {
					numbers += element instanceof Element.Word word && word.address() == 'O' ? 1 : 0;
					boolean another = numbers > 1 || element instanceof Element.Percent && numbers + line > 0 && wordsBehind(text, line);
					if (another || element instanceof Element.OStatement) {
						return false;
					}
				}
			}
		}
		return true;
	}

	private static boolean wordsBehind(ProgramText text, int line) {
		for (int i = line + 1; i < Math.min(text.lineCount(), line + NEAR); i++) {
			if (!text.block(i).words().isEmpty()) {
				return true;
			}
		}
		return false;
	}

	private static boolean endsWithReturn(ProgramText text) {
		for (int line = text.lineCount() - 1; line >= Math.max(0, text.lineCount() - NEAR); line--) {
			Block block = text.block(line);
			for (Element element : block.elements()) {
				if (element instanceof Element.Opaque opaque && opaque.name().equals("RET")) {
					return true;
				}
			}
			for (Element.Word word : block.words()) {
				double code = word.address() == 'M' && word.value() instanceof Expression.Number number ? number.value() : -1;
				if (code == 2 || code == 30 || code == 99 || code == 17) {
					return code == 99 || code == 17;
				}
			}
		}
		return false;
	}
}
