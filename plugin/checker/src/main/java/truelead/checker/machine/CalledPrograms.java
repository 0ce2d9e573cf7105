package truelead.checker.machine;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Supplier;
import truelead.checker.program.ProgramFolder;

/** Finds programs that are called: in the file that calls, in the main file, in a file beside it. */
final class CalledPrograms {

	/** O9000 to O9999 are kept for the machine's maker, and probes' cycles are put there (common practice, no source). */
	private static final int MAKERS_FIRST = 9000;
	private static final int MAKERS_LAST = 9999;

	/** The largest program number of four digits. */
	private static final int LARGEST = 9999;

	/** What a call says of the program that it calls: its name, or else its number. */
	record Callee(Optional<String> name, int number) {

		static Callee of(Words words) {
			Optional<String> name = words.calledName();
			boolean known = name.isEmpty() && words.has('P') && !Double.isNaN(words.value('P'));
			return new Callee(name, known ? (int) words.value('P') : -1);
		}

		/** Whether the call says nothing of it that is known. */
		boolean unsaid() {
			return name.isEmpty() && number < 0;
		}

		/** Whether it is one that makers of machines and probes put into their controls. */
		boolean ofMaker() {
			return name.isEmpty() && number >= MAKERS_FIRST && number <= MAKERS_LAST;
		}

		@Override
		public String toString() {
			return "program " + name.orElseGet(() -> String.valueOf(number));
		}
	}

	private final Supplier<Source> calling;
	private final Source main;
	private final ProgramFolder folder;
	private final Map<String, Optional<Source>> neighbours = new HashMap<>();

	/** @param calling gives the file whose block is being executed */
	CalledPrograms(Supplier<Source> calling, Source main, ProgramFolder folder) {
		this.calling = calling;
		this.main = main;
		this.folder = folder;
	}

	/** A program by what a call says of it. */
	Optional<Calls.Found> find(Callee callee, int repeats) {
		return callee.name().isPresent() ? named(callee.name().get(), repeats) : numbered(callee.number(), repeats);
	}

	/** More than four digits may be a packed count and number. */
	private Optional<Calls.Found> numbered(int program, int repeats) {
		Optional<Calls.Found> exact = exact(program, repeats);
		if (exact.isPresent() || program <= LARGEST) {
			return exact;
		}
		String reading = " (P" + program + " is read as " + program / 10_000 + " calls of O" + program % 10_000 + ")";
		return exact(program % 10_000, program / 10_000)
				.map(found -> new Calls.Found(found.source(), found.start(), found.end(), found.repeats(), reading));
	}

	private Optional<Calls.Found> exact(int program, int repeats) {
		return here(outline -> outline.program(program), repeats).or(() -> neighbour(String.valueOf(program))
				.map(source -> from(source, source.outline().program(program).orElse(0), repeats)));
	}

	private Optional<Calls.Found> named(String name, int repeats) {
		return here(outline -> outline.program(name), repeats)
				.or(() -> neighbour(name).map(source -> new Calls.Found(source, 0, source.lines(), repeats)));
	}

	/** In the file that calls, else in the main one. */
	private Optional<Calls.Found> here(Function<Outline, OptionalInt> line, int repeats) {
		for (Source source : List.of(calling.get(), main)) {
			OptionalInt found = line.apply(source.outline());
			if (found.isPresent()) {
				return Optional.of(from(source, found.getAsInt(), repeats));
			}
		}
		return Optional.empty();
	}

	private static Calls.Found from(Source source, int line, int repeats) {
		return new Calls.Found(source, line, source.outline().programEnd(line), repeats);
	}

	/** The subprogram of an o-word, {@code o100 sub} or {@code o<holes> sub}. */
	Optional<Calls.Found> oSub(String name) {
		return oSub(calling.get(), name).or(() -> oSub(main, name)).or(() -> neighbour(name).flatMap(source -> oSub(source, name)));
	}

	private static Optional<Calls.Found> oSub(Source source, String name) {
		OptionalInt line = source.outline().sub(name);
		return line.isPresent() ? Optional.of(new Calls.Found(source, line.getAsInt() + 1, source.lines(), 1)) : Optional.empty();
	}

	/** A program beside the main one. */
	Optional<Source> neighbour(String name) {
		return neighbours.computeIfAbsent(name, unread -> folder.find(unread).map(Source::new));
	}
}
