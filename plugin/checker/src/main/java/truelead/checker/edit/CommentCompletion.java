package truelead.checker.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import truelead.checker.job.NoteWords;
import truelead.checker.rule.RulePage;
import truelead.checker.rulebook.Rules;
import truelead.checker.summary.ThreadSummary;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;
import truelead.checker.work.Work;

/** What may be typed in a comment: our notes and their items, threads of the program and of the tables. */
final class CommentCompletion {

	private static final int MOST_THREADS = 40;
	private static final Map<String, String> PURPOSES = Map.of("THREAD", "what thread is wanted at the holes of this operation", "HOLE",
			"what the drawing says of the hole", "TOOL", "what is in the pocket, or in the spindle", "STOCK", "what it is cut from",
			"SURFACE", "where the top of the hole is", "ALLOW", "a finding accepted here, with the reason");

	private final Work work;
	private final String written;
	private final int offset;
	private final List<Proposal> proposals = new ArrayList<>();

	/** @param written the comment's text up to the place at {@code offset} */
	CommentCompletion(Work work, String written, int offset) {
		this.work = work;
		this.written = written.toUpperCase(Locale.ROOT);
		this.offset = offset;
	}

	List<Proposal> proposals() {
		int colon = written.indexOf(':');
		String keyword = colon < 0 ? "" : written.substring(0, colon).strip();
		if (NoteWords.keywords().contains(keyword)) {
			String item = written.substring(Math.max(colon, written.lastIndexOf(',')) + 1).stripLeading();
			items(keyword, item);
		} else {
			if (colon < 0) {
				notes(written.stripLeading());
			}
			String word = written.substring(written.lastIndexOf(' ') + 1);
			threads(word);
		}
		return proposals;
	}

	private void notes(String partial) {
		for (String keyword : NoteWords.keywords()) {
			if (keyword.startsWith(partial)) {
				add(partial, keyword + ": ", keyword + ": — " + PURPOSES.getOrDefault(keyword, "a note"),
						String.join(", ", NoteWords.items(keyword)));
			}
		}
	}

	private void items(String keyword, String partial) {
		if (keyword.equals("ALLOW")) {
			for (RulePage page : Rules.pages()) {
				if (page.name().startsWith(partial.toLowerCase(Locale.ROOT))) {
					add(partial, page.name() + ", ", page.name() + " — " + page.summary(), "");
				}
			}
			return;
		}
		for (String item : NoteWords.items(keyword)) {
			if (item.startsWith(partial)) {
				add(partial, item, item, "");
			}
		}
		if (keyword.equals("THREAD") || keyword.equals("TOOL")) {
			threads(partial);
		}
	}

	/**
	 * What is typed in full comes first, then the threads that the program asks for, then the tables' own; none from the tables until
	 * something is typed.
	 */
	private void threads(String partial) {
		Map<String, ThreadSpec> byName = new LinkedHashMap<>();
		work.operations().forEach(operation -> operation.wanted().thread().filter(thread -> thread.stated())
				.ifPresent(thread -> byName.putIfAbsent(name(thread.value()), thread.value())));
		if (!partial.isEmpty()) {
			ThreadTable.standard().all().forEach(thread -> byName.putIfAbsent(name(thread), thread));
		}
		List<String> names = new ArrayList<>(byName.keySet());
		if (names.remove(partial)) {
			names.add(0, partial);
		}
		names.stream().filter(name -> name.startsWith(partial)).limit(MOST_THREADS).forEach(name -> {
			List<String> lines = ThreadSummary.of(byName.get(name));
			add(partial, name, lines.isEmpty() ? name : lines.get(0), String.join("\n", lines));
		});
	}

	private static String name(ThreadSpec thread) {
		return thread.designation().toUpperCase(Locale.ROOT);
	}

	private void add(String partial, String text, String label, String more) {
		proposals.add(new Proposal(offset - partial.length(), partial.length(), text, label, more));
	}
}
