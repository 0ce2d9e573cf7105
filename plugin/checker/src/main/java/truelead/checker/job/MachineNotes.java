package truelead.checker.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.chunk.ChunkFacts;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.grammar.Chunk;
import truelead.grammar.Element;
import truelead.grammar.ProgramText;

/** Finds the note that names the machine profile of a program, {@code (MACHINE PROFILE: turning)}, before the program is followed. */
public final class MachineNotes {

	private static final String KEYWORD = "MACHINE";
	/** A note about the machine stands early: pieces of about a thousand lines that are looked at. */
	private static final int CHUNKS = 3;

	private record Candidate(int line, Element.Comment comment) {
	}

	/** Comments of a piece of text that may name a machine; kept beside the piece. */
	private record Candidates(List<Candidate> all) {

		static Candidates of(Chunk chunk) {
			ChunkFacts facts = ChunkFacts.of(chunk);
			return chunk.derived(Candidates.class, fresh -> read(fresh, facts));
		}

		private static Candidates read(Chunk chunk, ChunkFacts facts) {
			List<Candidate> all = new ArrayList<>();
			for (int line : facts.spoken()) {
				for (Element.Comment comment : chunk.block(line).comments()) {
					if (comment.text().strip().regionMatches(true, 0, KEYWORD, 0, KEYWORD.length())) {
						all.add(new Candidate(line, comment));
					}
				}
			}
			return new Candidates(List.copyOf(all));
		}
	}

	private MachineNotes() {
	}

	/** The first such note among the first 3000 lines or so; empty for none. */
	public static Optional<Note.OfMachine> first(ProgramFile program) {
		ProgramText text = program.text();
		for (int chunk = 0; chunk < Math.min(CHUNKS, text.chunks().size()); chunk++) {
			for (Candidate candidate : Candidates.of(text.chunks().get(chunk)).all()) {
				Location at = new Location(program, text.firstLine(chunk) + candidate.line(), candidate.comment().textSpan());
				Optional<Note> note = NoteReader.read(new ProgramComment(at, candidate.comment().text()), LengthUnit.MM)
						.flatMap(NoteReading::note);
				if (note.isPresent() && note.get() instanceof Note.OfMachine machine) {
					return Optional.of(machine);
				}
			}
		}
		return Optional.empty();
	}
}
