package truelead.audit.result;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import truelead.audit.source.ContentHash;
import truelead.audit.source.Neighbours;
import truelead.audit.source.ProgramBytes;
import truelead.audit.source.Reading;
import truelead.audit.source.Source;
import truelead.audit.terminal.Printable;
import truelead.checker.CheckResult;
import truelead.checker.Checker;
import truelead.checker.job.Job;
import truelead.checker.machine.Budget;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.RuleSettings;

/** Reads one program and checks it. Whatever the file holds, the answer is a value. */
public final class Examination implements Function<Source, Audited> {

	private final Job job;
	private final MachineProfile profile;
	private final RuleSettings settings;
	private final Budget budget;

	/** Checks with what is known of job and machine, and these severities. */
	public Examination(Job job, MachineProfile profile, RuleSettings settings) {
		this(job, profile, settings, () -> false);
	}

	/** The same; {@code stopped} is asked now and then, and true ends a check that is under way, whose findings then are not all there. */
	public Examination(Job job, MachineProfile profile, RuleSettings settings, BooleanSupplier stopped) {
		this.budget = new Budget(Budget.of(profile).blocks(), stopped);
		this.job = job;
		this.profile = profile;
		this.settings = settings;
	}

	@Override
	public Audited apply(Source source) {
		try {
			Reading reading = ProgramBytes.read(source.path());
			if (reading instanceof Reading.Refused refused) {
				return new Audited.Refused(source, refused.reason());
			}
			Reading.Program program = (Reading.Program) reading;
			CheckResult result = Checker.check(program.file(), new Neighbours(source.path()), job, profile, settings, budget);
			return new Audited.Checked(source, program.file(), ContentHash.of(program.file().text()), result,
					Judged.all(result.findings()), List.of());
		} catch (OutOfMemoryError tooLarge) {
			return new Audited.Refused(source, "too large for the memory Java has; give it more with java -Xmx");
		} catch (StackOverflowError tooDeep) {
			return new Audited.Refused(source, "nested too deeply to be checked");
		} catch (RuntimeException | LinkageError fault) {
			return new Audited.Refused(source, "a fault of Truelead's own stopped the check, please report it: " + Printable.root(fault));
		}
	}
}
