package truelead.checker.work;

import java.util.BitSet;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Holes;
import truelead.checker.hole.Place;
import truelead.checker.job.Allowance;
import truelead.checker.machine.Rotary;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.program.Plane;
import truelead.checker.program.ProgramFile;
import truelead.checker.tool.Compensations;
import truelead.checker.tool.ToolUse;
import truelead.checker.tool.ToolUses;

/**
 * What a program does to the part: tools, holes and threading operations, and the facts known of them. Immutable, but for what rules have
 * asked of it.
 */
public final class Work {

	/** How far a hole may lie from the point over against a centre, mm. */
	private static final double OVER_AGAINST = 0.1;

	private final Shop shop;
	private final ToolUses tools;
	private final Supplier<Holes> holes;
	private final List<ThreadingOperation> operations;
	/** Those of the whole program. */
	private final List<ThreadingOperation> all;
	private final Trouble trouble;
	/** That of the whole program. */
	private final Trouble allTrouble;
	private final Course course;
	private final Map<String, Boolean> answers = new ConcurrentHashMap<>();
	private final Map<Class<?>, Object> derived = new ConcurrentHashMap<>();
	private final Supplier<List<Tapping>> tappings;
	private final Supplier<List<ThreadMilling>> threadMillings;
	private final Supplier<List<Hole>> unthreaded;
	private final Supplier<Set<Plane>> planes;
	private final boolean evaluated;
	private final Groups groups;
	private final Surveys surveys;
	private volatile boolean dependsOnAll;

	Work(Shop shop, List<ToolUse> tools, Holes holes, List<ThreadingOperation> operations, Trouble trouble, Course course) {
		this(shop, ToolUses.of(tools), Later.known(holes), List.copyOf(operations), List.copyOf(operations), trouble, trouble, course,
				new Later<>(holes::planes), Unthreaded.of(holes, operations),
				operations.stream().allMatch(operation -> operation.notEvaluated().isEmpty()), new Groups(operations), Optional.empty());
	}

	private Work(Shop shop, ToolUses tools, Supplier<Holes> holes, List<ThreadingOperation> operations, List<ThreadingOperation> all,
			Trouble trouble, Trouble allTrouble, Course course, Supplier<Set<Plane>> planes, Supplier<List<Hole>> unthreaded,
			boolean evaluated, Groups groups, Optional<Surveys> surveys) {
		this.shop = shop;
		this.tools = tools;
		this.holes = holes;
		this.operations = operations;
		this.all = all;
		this.trouble = trouble;
		this.allTrouble = allTrouble;
		this.course = course;
		this.planes = planes;
		this.evaluated = evaluated;
		this.groups = groups;
		this.surveys = surveys.orElseGet(() -> new Surveys(this));
		this.unthreaded = unthreaded;
		this.tappings = new Later<>(() -> operations.stream().filter(Tapping.class::isInstance).map(Tapping.class::cast).toList());
		this.threadMillings = new Later<>(() -> operations.stream().filter(ThreadMilling.class::isInstance)
				.map(ThreadMilling.class::cast).toList());
	}

	/** The same work, done by another text of the program. */
	Work by(ProgramFile text) {
		Work same = new Work(shop.by(text), tools, holes, operations, all, trouble, allTrouble, course, planes, unthreaded, evaluated,
				groups, Optional.of(surveys));
		same.dependsOnAll = dependsOnAll;
		return same;
	}

	/** The same work, of which no rule has asked anything. */
	Work withoutAnswers() {
		return by(shop.program());
	}

	/**
	 * The work as it is after an edit that leaves as many stays and operations, each of the latter in its group.
	 *
	 * @param edited the planes of the part of it that differs
	 * @param open   the open arcs of all of it
	 */
	Work by(ProgramFile text, List<ToolUse> uses, Supplier<Holes> places, List<ThreadingOperation> made, Course run, Set<Plane> edited,
			List<Step.Arc> open) {
		Set<Plane> either = EnumSet.copyOf(edited);
		either.addAll(planes.get());
		Trouble now = trouble.with(open);
		return new Work(shop.by(text), tools.edited(uses), places, made, made, now, now, run, Later.known(either),
				Unthreaded.byPlace(places, made), evaluated, groups, Optional.of(surveys));
	}

	/**
	 * The same work with other holes and operations, of which there are as many and in the same groups, other arcs that do not close, and
	 * compensation.
	 */
	Work by(ProgramFile text, Supplier<Holes> places, List<ThreadingOperation> made, List<Step.Arc> openArcs, Compensations compensation) {
		Trouble now = openArcs.equals(trouble.openArcs()) ? trouble : trouble.with(openArcs);
		return new Work(shop.by(text), tools, places, made, made, now, now, course.with(compensation), planes,
				Unthreaded.byPlace(places, made), evaluated, groups, Optional.empty());
	}

	/** The same work with its holes as edits have left them, and those of these that are never threaded. */
	Work at(Holes places, Supplier<List<Hole>> open) {
		return new Work(shop, tools, Later.known(places), operations, all, trouble, allTrouble, course, planes, open, evaluated, groups,
				Optional.empty());
	}

	/** A part of the work: some stays and their operations with the holes that they are at, all those beside them, and its open arcs. */
	Work part(BitSet stays, List<ThreadingOperation> some, Holes places, List<Step.Arc> open) {
		return new Work(shop, tools.judging(stays), Later.known(places), some, all, Trouble.NONE.with(open), allTrouble, course, planes,
				Unthreaded.of(places, some), evaluated, groups, Optional.of(surveys));
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
		return tools.all();
	}

	/** Whether what is found of a stay is told here: of every stay, or in a part of the work of its own ones. */
	public boolean judges(int stay) {
		return tools.judges(stay);
	}

	/** The stays of which what is found is told here. */
	public Stream<ToolUse> judgedTools() {
		return tools.judged();
	}

	/**
	 * What a rule gathers of all stays, and of nothing of them but their numbers, facts, offsets, coolant and kinds of cycles; made once,
	 * also for a text that is edited elsewhere.
	 */
	public <T> T ofTools(Class<T> kind, Function<List<ToolUse>, T> maker) {
		return tools.gathered(kind, maker);
	}

	/** All places that something was done at, threaded or not, in the order first reached. */
	public Collection<Hole> holes() {
		return holes.get().all();
	}

	/** All holes, with what is known of them by their numbers. */
	Holes everyHole() {
		return holes.get();
	}

	/** All holes within a distance in mm of a place, nearest first. */
	public List<Hole> holesNear(Place place, double distance) {
		return holes.get().near(place, distance);
	}

	/** The nearest hole within a distance in mm of a place that was made before a step, but for the one at the very place. */
	public Optional<Hole> holeBeside(Place place, double distance, int order) {
		return holes.get().madeBeside(place, distance, order);
	}

	/**
	 * Whether a pass that seems to go round a bolt has its centre over against a hole made before, seen from where it begins: the sign of I
	 * or J is wrong.
	 */
	public boolean turnedOver(MillPass pass) {
		Place place = pass.place();
		if (!pass.external() || !place.known()) {
			return false;
		}
		double u = 2 * pass.first().from().along(place.plane().first()) - place.u();
		double v = 2 * pass.first().from().along(place.plane().second()) - place.v();
		return holesNear(place.at(u, v), OVER_AGAINST).stream().anyMatch(hole -> hole.madeBefore(pass.order()));
	}

	/** Whether something that may make holes ran at places that are not known, so that silence about a missing hole is due. */
	public boolean cutsAtUnknownPlaces() {
		return holes.get().unknownPlaces();
	}

	/** The threading operations in the order of execution. */
	public List<ThreadingOperation> operations() {
		return operations;
	}

	/** All tapping operations, in order. */
	public List<Tapping> tappings() {
		return tappings.get();
	}

	/** All thread milling operations, in order. */
	public List<ThreadMilling> threadMillings() {
		return threadMillings.get();
	}

	/** The threading operations of the whole program, of which this may be the work of a part alone. */
	public List<ThreadingOperation> operationsOfProgram() {
		return all;
	}

	/** The operations that one callout covers with this one, itself among them. */
	public List<ThreadingOperation> group(ThreadingOperation operation) {
		return groups.of(operation, all);
	}

	/** Whether an operation is the first of those that one callout covers, so that what is said of the callout is said once. */
	public boolean firstOfGroup(ThreadingOperation operation) {
		return groups.first(operation);
	}

	/** Whether all holes of the program lie along one axis, across a plane. */
	public boolean allAcross(Plane plane) {
		return planes.get().stream().allMatch(one -> one == plane);
	}

	/** Whether all places of the program are in one frame, so that each can be compared with each. */
	public boolean inOneFrame() {
		return holes.get().inOneFrame();
	}

	/** Where the rotary axes may stand at holes. */
	public Set<Rotary> rotaries() {
		return holes.get().rotaries();
	}

	/**
	 * Says that what a rule finds here depends on holes anywhere in the program, not on those of an operation and beside it alone: an edit
	 * has all judged anew.
	 */
	public void dependsOnAll() {
		dependsOnAll = true;
	}

	/**
	 * What an operation's rule asks of all of the program, and is told. An edit elsewhere that changes what it is told has the operation
	 * judged anew, and no other does.
	 *
	 * @param question keeps nothing of the work; its answer is a value, equal where the same is found
	 */
	public <S, A, Q> Q survey(ThreadingOperation by, Survey<S, A> survey, Function<A, Q> question) {
		dependsOnAll |= !surveys.knows(survey);
		return surveys.tell(by, survey, question);
	}

	/** What follows from a survey for the program itself: an edit that changes it has all judged anew. */
	public <S, A> A survey(Survey<S, A> survey) {
		return surveys.tell(survey);
	}

	/** Those of the whole program. */
	Surveys surveys() {
		return surveys;
	}

	/** Whether a rule has said so. */
	public boolean isWhole() {
		return dependsOnAll;
	}

	/** The holes that are made and never threaded, in the order first reached. */
	public List<Hole> unthreaded() {
		return unthreaded.get();
	}

	/** Whether every threading operation could be evaluated. */
	public boolean evaluated() {
		return evaluated;
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

	/** What went wrong on the way here; of a part of the work the open arcs alone. */
	public Trouble trouble() {
		return trouble;
	}

	/** What went wrong in the whole program, of which this may be the work of a part alone. */
	public Trouble troubleOfProgram() {
		return allTrouble;
	}

	/** Events and compensation. */
	public Course course() {
		return course;
	}
}
