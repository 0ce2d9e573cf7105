package truelead.checker.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import truelead.checker.profile.MachineProfile;
import truelead.grammar.ProgramText;

/** Where in a program a name stands. */
public final class Places {

	/** A name at a line, from 0. */
	public record Place(int line, Name name) {
	}

	private static final int ASK_EVERY = 1024;

	private final ProgramText text;
	private final Names names;

	public Places(ProgramText text, MachineProfile profile) {
		this.text = text;
		this.names = new Names(profile);
	}

	/** The name at a place of the text. */
	public Optional<Name> at(int line, int column) {
		return line < text.lineCount() ? names.at(text.block(line), column) : Optional.empty();
	}

	/**
	 * All places of the same thing in the order they stand, as many as are wanted. A block number is looked for in the program of the line
	 * alone.
	 *
	 * @param cancelled asked now and then; where it says true, what was found so far is given
	 */
	public List<Place> of(Name name, int line, int most, BooleanSupplier cancelled) {
		boolean inProgram = name.kind() == Name.Kind.BLOCK;
		String digits = digits(name);
		List<Place> places = new ArrayList<>();
		for (int at = 0; at < text.lineCount() && (inProgram && at <= line || places.size() < most); at++) {
			if (at % ASK_EVERY == 0 && cancelled.getAsBoolean()) {
				break;
			}
			if (!mayHold(text.line(at), digits, inProgram)) {
				continue;
			}
			for (Name found : names.in(text.block(at))) {
				if (inProgram && found.kind() == Name.Kind.PROGRAM && found.defines()) {
					if (at > line) {
						return places;
					}
					places.clear();
				}
				if (found.same(name) && places.size() < most) {
					places.add(new Place(at, found));
				}
			}
		}
		return places;
	}

	/** Digits that stand in a line wherever the name does, however its number is written; empty for a name without any. */
	private static String digits(Name name) {
		String key = name.key();
		int start = 0;
		while (start < key.length() && !(key.charAt(start) >= '1' && key.charAt(start) <= '9')) {
			start++;
		}
		int end = start;
		while (end < key.length() && Character.isDigit(key.charAt(end))) {
			end++;
		}
		boolean tiny = key.indexOf('E', 1) > 0;
		return tiny || name.kind() == Name.Kind.SUB || name.kind() == Name.Kind.LABEL ? "" : key.substring(start, end);
	}

	/** Whether a line is worth reading: most lines of a long program are not. A line that may begin a program is where programs matter. */
	private static boolean mayHold(String line, String digits, boolean programs) {
		return line.contains(digits) || programs && (line.indexOf('O') >= 0 || line.indexOf('o') >= 0 || line.indexOf(':') >= 0);
	}

	/** Where the thing is made that a name at a line stands for; for a variable the last place before the line, or the first at all. */
	public Optional<Place> definition(Name name, int line) {
		List<Place> all = of(name, line, Integer.MAX_VALUE, () -> false).stream().filter(place -> place.name().defines()).toList();
		if (name.kind() == Name.Kind.VARIABLE) {
			Optional<Place> before = all.stream().filter(place -> place.line() < line).reduce((first, second) -> second);
			return before.isPresent() ? before : all.stream().findFirst();
		}
		return all.stream().findFirst();
	}

	/** Block numbers and labels of the program that a line belongs to, in the order they stand, as many as are wanted. */
	public List<Name> defined(int line, int most) {
		List<Name> found = new ArrayList<>();
		for (int at = programStart(line); at < text.lineCount() && found.size() < most; at++) {
			for (Name name : names.in(text.block(at))) {
				if (at > line && name.kind() == Name.Kind.PROGRAM && name.defines()) {
					return found;
				}
				if (name.defines() && (name.kind() == Name.Kind.BLOCK || name.kind() == Name.Kind.LABEL)) {
					found.add(name);
				}
			}
		}
		return found;
	}

	/** Variables that the program sets, as written, in the order first set, as many as are wanted. */
	public List<String> variables(int most) {
		Map<String, String> written = new LinkedHashMap<>();
		for (int at = text.nextLineWith("=", 0); at < text.lineCount() && written.size() < most; at = text.nextLineWith("=", at + 1)) {
			String block = text.line(at);
			names.in(text.block(at)).stream().filter(name -> name.kind() == Name.Kind.VARIABLE && name.defines())
					.forEach(name -> written.putIfAbsent(name.key(), block.substring(name.span().start(), name.span().end())));
		}
		return List.copyOf(written.values());
	}

	/** The line at which the program begins that a line belongs to. */
	private int programStart(int line) {
		for (int at = line; at > 0; at--) {
			if (names.in(text.block(at)).stream().anyMatch(name -> name.kind() == Name.Kind.PROGRAM && name.defines())) {
				return at;
			}
		}
		return 0;
	}
}
