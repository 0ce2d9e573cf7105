package truelead.checker.job;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.Interval;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Location;
import truelead.checker.thread.ThreadSpec;
import truelead.grammar.Span;

/** Turns the parse tree of a note into the note, item by item; the tool's items are read by {@link ToolItems}. */
final class NoteItems {

	private final ProgramComment comment;
	private final LengthUnit unit;
	private final List<Remark> remarks;

	NoteItems(ProgramComment comment, LengthUnit unit, List<Remark> remarks) {
		this.comment = comment;
		this.unit = unit;
		this.remarks = remarks;
	}

	/** The note; empty where nothing was understood, with remarks, or without where it is no note of ours after all. */
	Optional<Note> read(NoteParser.NoteContext tree) {
		if (tree instanceof NoteParser.ThreadNoteContext thread) {
			return thread(thread);
		} else if (tree instanceof NoteParser.HoleNoteContext hole) {
			return hole(hole);
		} else if (tree instanceof NoteParser.ToolNoteContext tool) {
			return new ToolItems(this).read(tool);
		} else if (tree instanceof NoteParser.StockNoteContext stock) {
			return stock(stock);
		} else if (tree instanceof NoteParser.SurfaceNoteContext surface) {
			double level = number(surface.level().NUMBER().getText()) * unit(surface.level().unit()).mm();
			return Optional.of(new Note.OfSurface(comment, fact(level, surface.level())));
		} else if (tree instanceof NoteParser.AllowNoteContext allow) {
			String rule = text(allow.ruleName()).strip().toLowerCase(Locale.ROOT);
			String reason = allow.reason() == null ? "" : text(allow.reason()).strip();
			return Optional.of(new Note.OfAllowance(comment, List.of(new Allowance(rule, reason, location(allow.ruleName())))));
		} else if (tree instanceof NoteParser.MachineNoteContext machine) {
			return Optional.of(new Note.OfMachine(comment, fact(text(machine.ruleName()).strip(), machine.ruleName())));
		}
		return Optional.empty();
	}

	private Optional<Note> thread(NoteParser.ThreadNoteContext note) {
		Optional<Fact<ThreadSpec>> thread = Optional.empty();
		Optional<Fact<Double>> depth = Optional.empty();
		Optional<Fact<Boolean>> through = Optional.empty();
		Optional<Fact<Double>> wall = Optional.empty();
		Optional<Fact<Integer>> count = Optional.empty();
		for (NoteParser.ThreadItemContext item : note.threadItem()) {
			if (item instanceof NoteParser.ThreadDepthContext given) {
				depth = Optional.of(length(given.depthItem().length(), item));
			} else if (item instanceof NoteParser.ThreadBlindContext) {
				through = Optional.of(fact(false, item));
			} else if (item instanceof NoteParser.ThreadThroughContext given) {
				through = Optional.of(fact(true, item));
				wall = given.length() == null ? wall : Optional.of(length(given.length(), item));
			} else if (item instanceof NoteParser.ThreadCountContext given) {
				count = Optional.of(fact((int) number(given.count().NUMBER().getText()), item));
			} else {
				Optional<ThreadSpec> spec = FreeText.thread(text(item));
				thread = spec.map(s -> fact(s, item)).or(remembered(thread));
				if (spec.isEmpty()) {
					notRead(item, "THREAD");
				}
			}
		}
		return Optional.of(new Note.OfThread(comment, thread, depth, through, wall, count));
	}

	private static <T> Supplier<Optional<T>> remembered(Optional<T> before) {
		return () -> before;
	}

	private Optional<Note> hole(NoteParser.HoleNoteContext note) {
		Optional<Fact<Double>> bottom = Optional.empty();
		Optional<Fact<Double>> wall = Optional.empty();
		Optional<Fact<Boolean>> through = Optional.empty();
		Optional<Fact<Double>> diameter = Optional.empty();
		for (NoteParser.HoleItemContext item : note.holeItem()) {
			if (item instanceof NoteParser.HoleBottomContext given) {
				bottom = Optional.of(length(given.length(), item));
			} else if (item instanceof NoteParser.HoleDepthContext given) {
				bottom = Optional.of(length(given.depthItem().length(), item));
			} else if (item instanceof NoteParser.HoleWallContext given) {
				wall = Optional.of(length(given.length(), item));
			} else if (item instanceof NoteParser.HoleThroughContext given) {
				through = Optional.of(fact(true, item));
				wall = given.length() == null ? wall : Optional.of(length(given.length(), item));
			} else if (item instanceof NoteParser.HoleBlindContext) {
				through = Optional.of(fact(false, item));
			} else if (item instanceof NoteParser.HoleDiameterContext given) {
				diameter = Optional.of(length(given.diameter().length(), item));
			} else {
				notRead(item, "HOLE");
			}
		}
		return Optional.of(new Note.OfHole(comment, bottom, wall, through, diameter));
	}

	private Optional<Note> stock(NoteParser.StockNoteContext note) {
		Optional<NoteParser.StockItemContext> misspelt = StockReader.misspelt(note);
		if (misspelt.isPresent()) {
			notRead(misspelt.get(), "STOCK");
			return Optional.empty();
		}
		Optional<StockReader.Reading> reading = StockReader.read(note, this);
		if (reading.isEmpty() && note.stockItem().size() == 1) {
			return Optional.empty();
		}
		if (reading.isEmpty()) {
			note.stockItem().stream().filter(item -> !StockReader.hard(item)).findFirst().ifPresent(item -> notRead(item, "STOCK"));
			return Optional.empty();
		}
		return Optional.of(new Note.OfStock(comment, fact(reading.get().stock(), note)));
	}

	ProgramComment comment() {
		return comment;
	}

	LengthUnit unit() {
		return unit;
	}

	/** The text of an item as written, white space between its parts included. */
	static String text(ParserRuleContext item) {
		return item.getStart().getInputStream().getText(new Interval(item.getStart().getStartIndex(), item.getStop().getStopIndex()));
	}

	static double number(String text) {
		return Double.parseDouble(text);
	}

	LengthUnit unit(NoteParser.UnitContext given) {
		return given == null ? unit : given.MM() != null ? LengthUnit.MM : LengthUnit.INCH;
	}

	Fact<Double> length(NoteParser.LengthContext length, ParserRuleContext item) {
		return fact(number(length.NUMBER().getText()) * unit(length.unit()).mm(), item);
	}

	<T> Fact<T> fact(T value, ParserRuleContext item) {
		return Fact.of(value, FactSource.NOTE, location(item), text(item));
	}

	Location location(ParserRuleContext item) {
		return location(item.getStart(), item.getStop());
	}

	private Location location(Token first, Token last) {
		int base = comment.at().span().start();
		int start = Math.min(first.getStartIndex(), comment.text().length());
		int end = Math.max(start, Math.min(last.getStopIndex() + 1, comment.text().length()));
		return new Location(comment.at().file(), comment.at().line(), new Span(base + start, base + end));
	}

	void notRead(ParserRuleContext item, String keyword) {
		remarks.add(new Remark(location(item), "\"" + text(item) + "\" is not understood in a " + keyword + " note; "
				+ NoteWords.expected(keyword) + " is expected"));
	}

	void remark(Token first, Token last, String message) {
		remarks.add(new Remark(location(first, last), message));
	}
}
