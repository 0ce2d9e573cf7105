package truelead.audit.run;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import truelead.audit.source.Paths;
import truelead.audit.source.ProgramBytes;
import truelead.audit.source.Reading;
import truelead.audit.terminal.Complaint;
import truelead.checker.job.Holder;
import truelead.checker.job.Job;
import truelead.checker.program.ProgramFile;
import truelead.checker.thread.HolderKind;

/** Options that say what is known of the job and the machine from outside the programs. */
public final class JobOptions {

	@Option(names = "--machine", paramLabel = "FILE",
			description = "Machine profile: a properties file, or the name of a profile that comes with Truelead.")
	private Optional<String> machine = Optional.empty();

	@Option(names = "--tools", paramLabel = "FILE", description = "Tool list: CSV with a line of headers.")
	private Optional<String> tools = Optional.empty();

	@Option(names = "--stock", paramLabel = "STOCK", description = "What the parts are cut from, as in a STOCK note: \"STEEL, 28 HRC\".")
	private Optional<String> stock = Optional.empty();

	@Option(names = "--holder", paramLabel = "KIND",
			description = "How taps are held where no program says: rigid, synchro, floating or self-reversing.")
	private Optional<String> holder = Optional.empty();

	/** The machine profile named, or the generic one. */
	public truelead.checker.profile.MachineProfile profile() {
		return Machines.find(machine);
	}

	/** The files that the options name, as they were typed; a shipped profile's name may be among them. */
	public List<String> files() {
		return Stream.of(machine, tools).flatMap(Optional::stream).toList();
	}

	/** What the options say of the job; ends the command with a complaint where one cannot be read. */
	public Job job() {
		Job job = Job.EMPTY;
		if (tools.isPresent()) {
			job = withTools(job, tools.get());
		}
		if (stock.isPresent()) {
			int before = job.remarks().size();
			job = job.withStock(stock.get());
			if (job.remarks().size() > before) {
				throw new Complaint("--stock: " + job.remarks().get(before).message());
			}
		}
		if (holder.isPresent()) {
			HolderKind kind = HolderKind.named(holder.get().toLowerCase(Locale.ROOT))
					.orElseThrow(() -> new Complaint("--holder takes rigid, synchro, floating or self-reversing, not \""
							+ holder.get() + "\""));
			job = job.withHolder(Holder.usual(kind));
		}
		return job;
	}

	/** The job with a tool list file; ends the command with a complaint where it cannot be read. */
	public static Job withTools(Job job, String tools) {
		Reading reading = ProgramBytes.read(Paths.of(tools));
		if (reading instanceof Reading.Refused refused) {
			throw new Complaint(tools + ": " + refused.reason());
		}
		// A name with a folder tells reports that the file does not stand beside the programs.
		String name = tools.contains("/") ? tools : "./" + tools;
		return job.withToolList(new ProgramFile(name, ((Reading.Program) reading).file().text()));
	}
}
