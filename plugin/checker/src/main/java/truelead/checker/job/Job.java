package truelead.checker.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.grammar.ProgramText;
import truelead.grammar.Span;

/** What is known of a job from outside the program: tool list file, stock, holder. Immutable; never reads a file itself. */
public final class Job {

	/** Nothing is known from outside. */
	public static final Job EMPTY = new Job(Map.of(), Optional.empty(), Optional.empty(), List.of());

	private final Map<Integer, ToolFacts> tools;
	private final Optional<Fact<Stock>> stock;
	private final Optional<Fact<Holder>> holder;
	private final List<Remark> remarks;

	private Job(Map<Integer, ToolFacts> tools, Optional<Fact<Stock>> stock, Optional<Fact<Holder>> holder, List<Remark> remarks) {
		this.tools = Map.copyOf(tools);
		this.stock = stock;
		this.holder = holder;
		this.remarks = List.copyOf(remarks);
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Job job && tools.equals(job.tools) && stock.equals(job.stock) && holder.equals(job.holder)
				&& remarks.equals(job.remarks);
	}

	@Override
	public int hashCode() {
		return Objects.hash(tools, stock, holder, remarks);
	}

	/** The job with a tool list file, CSV text with a line of headers as in {@link ToolColumn}; rows that cannot be read become remarks. */
	public Job withToolList(ProgramFile csv) {
		ToolTable.Reading reading = ToolTable.read(csv);
		return new Job(reading.tools(), stock, holder, with(reading.remarks()));
	}

	/**
	 * The job with the stock as the project's settings say it, in the words of a STOCK note: {@code STEEL, 28 HRC}. Other text is a remark.
	 */
	public Job withStock(String text) {
		ProgramFile setting = new ProgramFile("stock", ProgramText.of(text));
		Location at = new Location(setting, 0, new Span(0, text.length()));
		Optional<Note> note = NoteReader.read(new ProgramComment(at, "STOCK:" + text), LengthUnit.MM).flatMap(NoteReading::note);
		if (note.isPresent() && note.get() instanceof Note.OfStock read) {
			return new Job(tools, Optional.of(Fact.of(read.stock().value(), FactSource.PROJECT, text)), holder, remarks);
		}
		return new Job(tools, stock, holder,
				with(List.of(new Remark(at, "the stock \"" + text + "\" is not understood; " + NoteWords.expected("STOCK")
						+ " is expected"))));
	}

	/** The job with the tap holder that the project uses where a tool says nothing. */
	public Job withHolder(Holder used) {
		return new Job(tools, stock, Optional.of(Fact.of(used, FactSource.PROJECT, used.kind().name().toLowerCase(Locale.ROOT))), remarks);
	}

	/** The tool in a pocket by the tool list file; {@link ToolFacts#NONE} where it is not in the list. */
	public ToolFacts tool(int number) {
		return tools.getOrDefault(number, ToolFacts.NONE);
	}

	/** The stock by the project's settings. */
	public Optional<Fact<Stock>> stock() {
		return stock;
	}

	/** The tap holder by the project's settings. */
	public Optional<Fact<Holder>> holder() {
		return holder;
	}

	/** Rows and settings that were not understood. */
	public List<Remark> remarks() {
		return remarks;
	}

	/** The job with more that was not understood. */
	public Job withRemarks(List<Remark> more) {
		return more.isEmpty() ? this : new Job(tools, stock, holder, with(more));
	}

	private List<Remark> with(List<Remark> more) {
		List<Remark> all = new ArrayList<>(remarks);
		all.addAll(more);
		return all;
	}
}
