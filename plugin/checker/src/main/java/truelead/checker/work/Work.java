package truelead.checker.work;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import truelead.checker.job.Allowance;
import truelead.checker.job.Fact;
import truelead.checker.job.Job;
import truelead.checker.job.Remark;
import truelead.checker.machine.LengthUnit;
import truelead.checker.machine.MachineProfile;
import truelead.checker.machine.ProgramFile;
import truelead.checker.machine.Step;

/** What a program does to the part: tools, holes and threading operations, and the facts known of them. Immutable. */
public final class Work {

	private final Shop shop;
	private final List<ToolUse> tools;
	private final Holes holes;
	private final List<ThreadingOperation> operations;
	private final Trouble trouble;
	private final Course course;
	private final Map<String, Boolean> answers = new ConcurrentHashMap<>();
	private final Map<Class<?>, Object> derived = new ConcurrentHashMap<>();
	private final List<Tapping> tappings;
	private final List<ThreadMilling> threadMillings;
	private final List<Hole> unthreaded;
	private final boolean evaluated;
	private final Map<Integer, List<ThreadingOperation>> groups = new HashMap<>();

	Work(Shop shop, List<ToolUse> tools, Holes holes, List<ThreadingOperation> operations, Trouble trouble, Course course) {
		this.shop = shop;
		this.tools = List.copyOf(tools);
		this.holes = holes;
		this.operations = List.copyOf(operations);
		this.trouble = trouble;
		this.course = course;
		for (ThreadingOperation operation : this.operations) {
			groups.computeIfAbsent(operation.group(), g -> new ArrayList<>()).add(operation);
		}
		this.unthreaded = holes.holes(unthreaded(holes, this.operations));
		this.tappings = this.operations.stream().filter(Tapping.class::isInstance).map(Tapping.class::cast).toList();
		this.threadMillings = this.operations.stream().filter(ThreadMilling.class::isInstance).map(ThreadMilling.class::cast).toList();
		this.evaluated = this.operations.stream().allMatch(operation -> operation.notEvaluated().isEmpty());
	}

	private Work(Work same, Shop shop) {
		this.shop = shop;
		this.tools = same.tools;
		this.holes = same.holes;
		this.operations = same.operations;
		this.trouble = same.trouble;
		this.course = same.course;
		this.groups.putAll(same.groups);
		this.unthreaded = same.unthreaded;
		this.tappings = same.tappings;
		this.threadMillings = same.threadMillings;
		this.evaluated = same.evaluated;
	}

	/**
	 * What the work was done with.
	 *
	 * @param unit        the unit of the program at its first motion; NOTE where the program says it, PROFILE where the profile's was assumed
	 * @param blocks      lines with code in the program
	 * @param assumptions what had to be assumed, one sentence each
	 */
	public record Shop(ProgramFile program, Job job, MachineProfile profile, Fact<LengthUnit> unit, int blocks, List<String> assumptions) {

		public Shop {
			assumptions = List.copyOf(assumptions);
		}
	}

	/**
	 * What went wrong on the way here.
	 *
	 * @param problems    blocks the grammar could not read, in the order they stand
	 * @param notFollowed in the order of execution, each block once
	 * @param notes       notes that were not understood, each as one sentence
	 * @param allowances  every ALLOW note of the program; one without a reason, or for a rule that is none, is no acceptance
	 * @param programAllowances those of them that stand before the first tool change and belong to no operation: in force everywhere
	 * @param jobRemarks  rows of the tool list file and settings that were not understood
	 * @param openArcs    arcs whose start and end radius differ by more than the control takes, in other planes than XY by more than 0.001 mm; tapered thread passes left out; at most 1,000
	 */
	public record Trouble(List<BlockProblem> problems, List<NotFollowed> notFollowed, List<Remark> notes, List<Allowance> allowances,
			List<Allowance> programAllowances, List<Remark> jobRemarks, List<Step.Arc> openArcs) {

		public Trouble {
			problems = List.copyOf(problems);
			notFollowed = List.copyOf(notFollowed);
			notes = List.copyOf(notes);
			allowances = List.copyOf(allowances);
			programAllowances = List.copyOf(programAllowances);
			jobRemarks = List.copyOf(jobRemarks);
			openArcs = List.copyOf(openArcs);
		}
	}

	/**
	 * The course of the program besides cutting.
	 *
	 * @param events        all but calls and returns, in the order of execution; at most 100,000
	 * @param compensation  every change of cutter radius compensation; at most 10,000 that stand by themselves
	 * @param subprogramAlone whether the file is a subprogram alone, so that what its caller set is not known
	 * @param singlePoints  threads that a lathe cuts by a single point, one for each tool and lead; at most 1,000
	 */
	public record Course(List<TimedEvent> events, Compensations compensation, boolean subprogramAlone, List<SinglePoint> singlePoints) {

		public Course {
			singlePoints = List.copyOf(singlePoints);
			events = List.copyOf(events);
		}

		/** The events behind a step. */
		public List<TimedEvent> eventsAfter(int order) {
			return events.subList(behind(events, TimedEvent::order, order), events.size());
		}

		/** How many of a list in the order of execution come up to a step. */
		private static <T> int behind(List<T> list, ToIntFunction<T> order, int step) {
			int low = 0;
			int high = list.size();
			while (low < high) {
				int middle = (low + high) / 2;
				if (order.applyAsInt(list.get(middle)) <= step) {
					low = middle + 1;
				} else {
					high = middle;
				}
			}
			return low;
		}
	}

	/** The same work, done by another text of the program. */
	Work by(ProgramFile text) {
		return new Work(this, new Shop(text, shop.job(), shop.profile(), shop.unit(), shop.blocks(), shop.assumptions()));
	}

	/** Program, job, profile and unit. */
	public Shop shop() {
		return shop;
	}

	/** Lines with code in the program. */
	public int blocks() {
		return shop.blocks();
	}

	/** What had to be assumed, one sentence each. */
	public List<String> assumptions() {
		return shop.assumptions();
	}

	/** Findings accepted in the whole program by ALLOW notes at its head. */
	public List<Allowance> programAllowances() {
		return trouble.programAllowances();
	}

	/** The stays of tools in the spindle, in order. */
	public List<ToolUse> tools() {
		return tools;
	}

	/** All places that something was done at, threaded or not, in the order first reached. */
	public Collection<Hole> holes() {
		return holes.all();
	}

	/** The hole at a place within a tolerance in mm, the nearest; empty where nothing was ever done there. */
	public Optional<Hole> holeAt(Place place, double tolerance) {
		return holes.nearest(place, tolerance);
	}

	/** All holes within a distance in mm of a place, nearest first. */
	public List<Hole> holesNear(Place place, double distance) {
		return holes.near(place, distance);
	}

	/** Whether something that may make holes ran at places that are not known, so that silence about a missing hole is due. */
	public boolean cutsAtUnknownPlaces() {
		return holes.unknownPlaces();
	}

	/** The threading operations in the order of execution. */
	public List<ThreadingOperation> operations() {
		return operations;
	}

	/** All tapping operations, in order. */
	public List<Tapping> tappings() {
		return tappings;
	}

	/** All thread milling operations, in order. */
	public List<ThreadMilling> threadMillings() {
		return threadMillings;
	}

	/** The operations that one callout covers with this one, itself among them. */
	public List<ThreadingOperation> group(ThreadingOperation operation) {
		return Collections.unmodifiableList(groups.getOrDefault(operation.group(), List.of()));
	}

	/** The holes that are made and never threaded, in the order first reached. */
	public List<Hole> unthreaded() {
		return unthreaded;
	}

	/** Whether every threading operation could be evaluated. */
	public boolean evaluated() {
		return evaluated;
	}

	/** The numbers of the holes that are made and never threaded. */
	private static int[] unthreaded(Holes holes, List<ThreadingOperation> operations) {
		BitSet threaded = new BitSet(holes.count());
		for (ThreadingOperation operation : operations) {
			if (operation instanceof Tapping tapping) {
				tapping.strokes().mark(threaded);
			} else if (operation instanceof ThreadMilling milling) {
				milling.mark(threaded);
			}
		}
		return IntStream.range(0, holes.count()).filter(number -> !threaded.get(number) && holes.made(number)).toArray();
	}

	/** What a rule asks of a whole group at each of its operations, worked out once; the question names the rule and the group. */
	public boolean once(String question, BooleanSupplier answer) {
		Boolean known = answers.get(question);
		if (known == null) {
			known = answer.getAsBoolean();
			answers.put(question, known);
		}
		return known;
	}

	/** What a rule gathers of the whole work so as not to go through it again for each operation; made once. */
	public <T> T derived(Class<T> kind, Function<Work, T> maker) {
		Object known = derived.get(kind);
		if (known == null) {
			known = maker.apply(this);
			derived.put(kind, known);
		}
		return kind.cast(known);
	}

	/** What went wrong on the way here. */
	public Trouble trouble() {
		return trouble;
	}

	/** Events and compensation. */
	public Course course() {
		return course;
	}
}
