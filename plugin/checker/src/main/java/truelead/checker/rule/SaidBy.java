package truelead.checker.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.grammar.Expression;

/**
 * Who says the numbers of words that are worked out, of one check: the values given to their variables, those of a call among them. They
 * are related places of a finding at that word, and its message names them at its end.
 */
public final class SaidBy {

	/** Of more places than this nothing is said: nobody would look at them all. */
	private static final int MOST = 5;
	/** Characters of a word that is shown. */
	private static final int LONGEST = 40;
	/** Rules that point at the word by which a helix climbs, and judge how deep it begins: of them the call is named. */
	private static final Set<String> OF_DEPTH = Set.of("cutter-hits-bottom", "helix-too-short");

	private static final Comparator<Location> IN_THE_TEXT = Comparator.comparingInt(Location::line)
			.thenComparing(place -> place.span().start());

	private final ProgramParts parts = new ProgramParts();

	/** The finding with the places that say the value of its word, where these are certain. */
	public Finding named(Finding finding) {
		if (finding.severity() == Severity.INFORMATION || plain(finding.at())) {
			return finding;
		}
		Optional<BlockRef> block = finding.at().executed();
		List<Location> places = block.map(executed -> places(finding.at(), executed)).orElse(List.of());
		Optional<BlockRef> call = block.flatMap(BlockRef::caller).filter(caller -> caller.file().equals(finding.at().file()));
		if (OF_DEPTH.contains(finding.rule())) {
			return places.isEmpty() || call.isEmpty() ? finding : finding.saying("; called in line " + (call.get().line() + 1), List.of());
		}
		return places.isEmpty() ? finding : finding.saying("; see " + words(places, finding.at()),
				places.stream().map(place -> new Related(place, "says a value of it")).toList());
	}

	/** Whether a place is a word with a plain number. */
	private static boolean plain(Location at) {
		String word = at.file().text().line(at.line());
		for (int i = at.span().start() + 1; i < Math.min(at.span().end(), word.length()); i++) {
			if ((word.charAt(i) < '0' || word.charAt(i) > '9') && ".+- ".indexOf(word.charAt(i)) < 0) {
				return false;
			}
		}
		return true;
	}

	private List<Location> places(Location at, BlockRef executed) {
		Optional<Expression> said = Spoken.at(at);
		if (said.isEmpty() || executed.line() != at.line() || !executed.file().equals(at.file())) {
			return List.of();
		}
		GivenValues given = new GivenValues(parts);
		boolean certain = given.follow(said.get(), executed, 0);
		List<Location> places = certain ? given.places().stream().sorted(IN_THE_TEXT).toList() : List.of();
		boolean oneFile = places.stream().map(Location::file).distinct().count() == 1;
		return places.size() <= MOST && oneFile ? places : List.of();
	}

	/** {@code F1.5 S220 in line 19, #5=2 in line 3}. */
	private static String words(List<Location> places, Location at) {
		Map<Integer, List<String>> lines = new TreeMap<>();
		for (Location place : places) {
			String text = place.file().text().block(place.line()).text();
			String word = Figures.tight(text.substring(place.span().start(), place.span().end()));
			lines.computeIfAbsent(place.line() + 1, line -> new ArrayList<>()).add(word.length() > LONGEST ? "" : word + " ");
		}
		return lines.entrySet().stream().map(line -> said(line.getKey(), String.join("", line.getValue())))
				.collect(Collectors.joining(", ")) + (places.get(0).file().equals(at.file()) ? "" : " of " + places.get(0).file().name());
	}

	private static String said(int line, String words) {
		return words + (words.isEmpty() ? "" : "in ") + "line " + line;
	}
}
