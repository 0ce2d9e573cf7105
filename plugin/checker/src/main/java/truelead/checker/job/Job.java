package truelead.checker.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.machine.ProgramFile;

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

	/** The job with a tool list file, CSV text with a line of headers; see {@code ToolTable} for the headers. */
	public Job withToolList(ProgramFile csv) {
		return this;
	}

	/** The job with stock as the project's settings say it: {@code STEEL, 28 HRC}; text that is not understood is a remark. */
	public Job withStock(ProgramFile settings, int line, String text) {
		return this;
	}

	/** The tool in a pocket by the tool list file. */
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
}
