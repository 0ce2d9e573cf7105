package truelead.checker.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.checker.callout.Callout;
import truelead.checker.callout.CalloutReader;
import truelead.checker.comment.BlockProblem;
import truelead.checker.comment.Commentary;
import truelead.checker.comment.ProgramScan;
import truelead.checker.hole.Holes;
import truelead.checker.job.Allowance;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.job.Job;
import truelead.checker.machine.Budget;
import truelead.checker.machine.ForeignLanguage;
import truelead.checker.machine.Interpreter;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Step;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.BlockRef;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.run.AxisRun;
import truelead.checker.tool.BareLists;
import truelead.checker.tool.CompensationLog;
import truelead.checker.tool.Stays;
import truelead.checker.tool.ToolBook;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;
import truelead.checker.wanted.Callouts;
import truelead.checker.wanted.WantedReader;

/** Follows a program on a machine and tells what it does to the part. */
public final class WorkReader {

	/** As many of a tool's own comments as are read for the thread of an idle point. */
	private static final int OWN_COMMENTS = 20;
	/**
	 * Times the taper that an arc of a taper thread changes its radius and is closed yet: more is another number (common practice, no
	 * source).
	 */
	private static final double MOST_TAPER = 2.5;

	private WorkReader() {
	}

	/** The work of a program; never fails. */
	public static Work read(ProgramFile program, ProgramFolder folder, Job job, MachineProfile profile) {
		return read(program, folder, job, profile, Budget.of(profile));
	}

	/** The work of a program, as far as a budget goes; never fails. */
	public static Work read(ProgramFile program, ProgramFolder folder, Job job, MachineProfile profile, Budget budget) {
		return read(program, folder, job, profile, budget, true);
	}

	/**
	 * @param compact whether what comes again at place after place is judged by kinds; without it the answer is the same, and takes longer
	 */
	static Work read(ProgramFile program, ProgramFolder folder, Job job, MachineProfile profile, Budget budget, boolean compact) {
		Recorder recorder = new Recorder(profile, compact);
		Interpreter.run(program, folder, profile, budget, recorder);
		recorder.finish();
		return read(program, job, profile, recorder);
	}

	/** The work of a program whose steps are recorded. */
	static Work read(ProgramFile program, Job job, MachineProfile profile, Recorder recorder) {
		return new Reading(program, job, profile, recorder).work();
	}

	/** One reading, from the recorded steps to the work. */
	static final class Reading {

		private final ProgramFile program;
		private final Job job;
		private final MachineProfile profile;
		private final Recorder recorder;
		private final Fact<LengthUnit> unit;
		private final Commentary commentary;
		private final Stays stays;
		private final ToolBook book;
		private final WantedReader wanted;
		private final List<ToolUse> tools = new ArrayList<>();
		private Operations made;
		private List<Draft> drafts = List.of();

		Reading(ProgramFile program, Job job, MachineProfile profile, Recorder recorder) {
			this.program = program;
			this.job = job;
			this.profile = profile;
			this.recorder = recorder;
			this.unit = unit(recorder.firstMotion(), profile);
			this.commentary = new Commentary(program, unit.value(), profile);
			this.stays = new Stays(recorder.tools, commentary);
			Set<ToolLog> synchronised = Collections.newSetFromMap(new IdentityHashMap<>());
			recorder.kept.axisRuns.stream().filter(AxisRun::synchronised).forEach(run -> synchronised.add(run.tool()));
			new BareLists(commentary, stays, recorder.tools, synchronised).take();
			this.book = new ToolBook(commentary, stays, job);
			for (ToolLog log : recorder.tools) {
				tools.add(book.use(log));
			}
			this.wanted = new WantedReader(commentary, stays, book, job, profile);
		}

		/** What the operations of the work were made of, by their numbers. */
		List<Draft> drafts() {
			return drafts;
		}

		/** Makes operations of the work anew. */
		Operations again() {
			return made.again();
		}

		/** What tells thread milling from other runs of arcs, and gathers it. */
		MillDrafts mills() {
			return new MillDrafts(commentary, stays);
		}

		/** How far a hole may be from the middle of a helix whose blocks are written to a resolution, mm. */
		double within(double resolution) {
			return Sorting.within(profile.positionTolerance(), resolution);
		}

		/** The line of the program that a block is executed for. */
		int mainLine(BlockRef block) {
			return commentary.mainLine(block);
		}

		/** Whether a comment from one line to another names a thread for certain. */
		boolean callout(int from, int to) {
			return Callouts.any(commentary.free(program, from, to));
		}

		/** A stay that may have been followed in another text of the program, with all that is known of its tool. */
		ToolUse use(ToolLog log) {
			return book.use(log);
		}

		/** What was recorded of some stays, sorted into holes and operations. */
		Sorting sorted(Recorded recorded, List<ToolUse> all) {
			return new Sorting(recorded, List.of(), all, commentary, stays, profile);
		}

		/** The operations found by sorting. */
		Operations operations(Sorting sorting) {
			return new Operations(sorting, wanted, turning(profile));
		}

		Work work() {
			Sorting sorting = new Sorting(Recorded.of(recorder), recorder.turned.bored(), tools, commentary, stays, profile);
			Holes holes = sorting.holes();
			made = operations(sorting);
			drafts = sorting.drafts();
			List<ThreadingOperation> operations = made.all();
			return new Work(new Shop(program, job, profile, unit, commentary.main().blocks(), assumptions()), tools, holes, operations,
					trouble(operations), course(holes));
		}

		private List<String> assumptions() {
			List<String> assumptions = new ArrayList<>();
			if (!unit.stated() && recorder.firstMotion().isPresent()) {
				assumptions.add("the program states no unit; " + (unit.value() == LengthUnit.MM ? "mm" : "inch") + " is assumed by profile "
						+ profile.name());
			}
			return assumptions;
		}

		private Trouble trouble(List<ThreadingOperation> operations) {
			boolean threads = !operations.isEmpty();
			Set<ToolUse> idle = idle(operations);
			boolean mayThread = threads || !idle.isEmpty() || commentary.scans().stream().anyMatch(ProgramScan::threadingCode);
			List<BlockProblem> problems = new ArrayList<>();
			boolean foreign = recorder.firstMotion().isEmpty() && ForeignLanguage.complaint(program.text()).isPresent();
			for (ProgramScan scan : foreign ? List.<ProgramScan>of() : commentary.scans()) {
				scan.problems().forEach(p -> problems.add(new BlockProblem(p.at(), p.message(), mayThread)));
			}
			MissingPrograms missing = new MissingPrograms(recorder.trouble(), tools, book, idle);
			List<NotFollowed> notFollowed = recorder.trouble().stream()
					.map(t -> new NotFollowed(t.order(), t.step().block(), t.step().word(), t.step().why(), t.step().stops(),
							bearing(t.step(), tools.get(t.tool().index()), mayThread || foreign, idle, missing),
							MissingPrograms.called(t.step()) || t.step().weight() == Step.NotFollowed.Weight.MAY_CALL))
					.toList();
			List<Allowance> everywhere = new ArrayList<>();
			int head = stays.firstChange(0);
			Set<Allowance> taken = new HashSet<>();
			operations.forEach(operation -> taken.addAll(operation.wanted().allowances()));
			commentary.allowances().stream().filter(a -> a.at().file().name().equals(program.name()) && a.at().line() < head)
					.filter(a -> !taken.contains(a)).forEach(everywhere::add);
			return new Trouble(problems, notFollowed, commentary.remarks(), commentary.allowances(), everywhere, job.remarks(),
					openArcs(recorder.openArcs, operations));
		}

		/**
		 * A tapered helix changes its radius on purpose: under a callout that says so by a few times its taper at most, or by 1/32 of its
		 * advance, the taper of pipe threads.
		 */
		static List<Step.Arc> openArcs(List<Step.Arc> arcs, List<ThreadingOperation> operations) {
			List<ThreadMilling> millings = operations.stream().filter(ThreadMilling.class::isInstance)
					.map(ThreadMilling.class::cast).toList();
			return arcs.stream().filter(arc -> millings.stream().noneMatch(milling -> tapered(milling, arc))).toList();
		}

		private static boolean tapered(ThreadMilling milling, Step.Arc arc) {
			double taper = milling.wanted().thread().map(t -> t.value().taperOnDiameter() / 2).orElse(0.0);
			int axis = arc.modal().plane().axis();
			double most = MOST_TAPER * taper * Math.abs(arc.to().along(axis) - arc.from().along(axis))
					+ 3 * Math.min(arc.resolution(), 0.005);
			boolean called = taper > 0 && Math.abs(arc.endRadius() - arc.startRadius()) <= most;
			return milling.around(arc).stream().anyMatch(pass -> (called || pass.tapered())
					&& pass.helix().stream().anyMatch(one -> one == arc));
		}

		/**
		 * The stays of tools for threads that are not known to make any; without any operation also what is in the spindle while no change
		 * of tools is known.
		 */
		private Set<ToolUse> idle(List<ThreadingOperation> operations) {
			Set<ToolUse> idle = Collections.newSetFromMap(new IdentityHashMap<>());
			boolean named = operations.isEmpty() && tools.stream().noneMatch(use -> use.tool().known())
					&& commentary.main().comments().stream().anyMatch(comment -> CalloutReader.readComment(comment.said()).tool()
							.filter(tool -> tool.kind().threading()).isPresent());
			for (ToolUse use : tools) {
				if (use.facts().kind().isPresent() && use.facts().kind().get().value().threading() || named && !use.tool().known()
						|| idlePoint(use)) {
					idle.add(use);
				}
			}
			operations.forEach(operation -> idle.remove(operation.tool()));
			return idle;
		}

		/** Whether a tool of a lathe is called nothing but its thread, as a point that turns it is, and cuts none that is known. */
		private boolean idlePoint(ToolUse use) {
			return turning(profile) && use.tool().known() && use.facts().kind().isEmpty() && !recorder.turned.threadsWith(use.index())
					&& use.comments().stream().limit(OWN_COMMENTS).anyMatch(comment -> CalloutReader.read(comment.text()).stream()
							.anyMatch(Callout::certain));
		}

		private static NotFollowed.Bearing bearing(Step.NotFollowed step, ToolUse tool, boolean mayThread, Set<ToolUse> idle,
				MissingPrograms missing) {
			if (!matters(step, tool, mayThread, idle, missing)) {
				return MissingPrograms.called(step) ? NotFollowed.Bearing.ELSEWHERE : NotFollowed.Bearing.NONE;
			}
			return step.modal().ofCaller() && !step.stops() ? NotFollowed.Bearing.CALLER : NotFollowed.Bearing.THREAD;
		}

		/**
		 * Whether a thread may depend on what was not followed: in a program that makes threads, names a tool for them or has a code for
		 * it.
		 */
		private static boolean matters(Step.NotFollowed step, ToolUse tool, boolean mayThread, Set<ToolUse> idle, MissingPrograms missing) {
			return switch (step.weight()) {
				case UNKNOWN_CODE, BY_TOOL -> idle.contains(tool);
				case CALL, PLAIN_CALL -> mayThread && missing.mayThread(step, tool);
				case OWN_ALARM, THREAD -> mayThread;
				case MINOR, MAY_CALL -> false;
			};
		}

		private Course course(Holes holes) {
			List<TimedEvent> events = new ArrayList<>(recorder.events.size());
			for (LoggedEvent recorded : recorder.events) {
				events.add(new TimedEvent(recorded.order(), recorded.event(), tools.get(recorded.tool().index())));
			}
			return new Course(events, CompensationLog.with(recorder.compensation.entries(), tools), !recorder.ends(),
					recorder.trouble().stream().noneMatch(t -> t.step().stops()), recorder.turned.named(tools, commentary, stays, book,
							holes, new AnotherPart(profile.isLathe(), events)::last), recorder.turned.partings());
		}

		private static Fact<LengthUnit> unit(Optional<Modal> first, MachineProfile profile) {
			return first.filter(Modal::unitStated)
					.map(m -> Fact.of(m.unit(), FactSource.PROGRAMMED, m.unit() == LengthUnit.MM ? "G21" : "G20"))
					.orElse(Fact.of(first.map(Modal::unit).orElse(profile.unit()), FactSource.PROFILE, profile.name()));
		}
	}

	/** Whether the profile is a turning one. */
	static boolean turning(MachineProfile profile) {
		return profile.is(ProfileKey.KIND, "turning");
	}
}
