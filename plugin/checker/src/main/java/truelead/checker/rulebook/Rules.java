package truelead.checker.rulebook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.rule.Evidence;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.RulePage;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.SaidBy;
import truelead.checker.rule.Severity;
import truelead.checker.rule.hole.CountersinkTooSmall;
import truelead.checker.rule.hole.DeepThread;
import truelead.checker.rule.hole.DrillTooBig;
import truelead.checker.rule.hole.DrillTooDeep;
import truelead.checker.rule.hole.DrillTooShallow;
import truelead.checker.rule.hole.DrillTooSmall;
import truelead.checker.rule.hole.DrilledAfterThreading;
import truelead.checker.rule.hole.EdgeNotBroken;
import truelead.checker.rule.hole.HoleMissing;
import truelead.checker.rule.hole.HoleOffPosition;
import truelead.checker.rule.hole.HoleSkipped;
import truelead.checker.rule.hole.NoThreadMade;
import truelead.checker.rule.hole.NotThrough;
import truelead.checker.rule.hole.PlaneHeightsWrong;
import truelead.checker.rule.hole.ThreadTooShort;
import truelead.checker.rule.hole.ThreadedBeforeDrilled;
import truelead.checker.rule.hole.ThreadedTwice;
import truelead.checker.rule.hole.WallTooThin;
import truelead.checker.rule.method.CalloutConflict;
import truelead.checker.rule.method.CalloutMissing;
import truelead.checker.rule.method.ClassOutOfReach;
import truelead.checker.rule.method.CoolantOff;
import truelead.checker.rule.method.CountDiffers;
import truelead.checker.rule.method.DrillFeedHigh;
import truelead.checker.rule.method.DrillFeedLow;
import truelead.checker.rule.method.MethodWrongForStock;
import truelead.checker.rule.method.NoCheckStop;
import truelead.checker.rule.method.PitchNotStandard;
import truelead.checker.rule.method.RapidIntoPart;
import truelead.checker.rule.method.ReachTooShort;
import truelead.checker.rule.method.TapLimitAgainstClass;
import truelead.checker.rule.method.TapWrongForHole;
import truelead.checker.rule.method.ToolNotChanged;
import truelead.checker.rule.method.TorqueHigh;
import truelead.checker.rule.milling.ClimbOrConventional;
import truelead.checker.rule.milling.CompLeftOn;
import truelead.checker.rule.milling.CompMissing;
import truelead.checker.rule.milling.CompStartedOnArc;
import truelead.checker.rule.milling.CutterHitsBottom;
import truelead.checker.rule.milling.CutterPitchMismatch;
import truelead.checker.rule.milling.CutterTooBig;
import truelead.checker.rule.milling.EdgeFeedHigh;
import truelead.checker.rule.milling.EntryOffPitch;
import truelead.checker.rule.milling.EntryStraight;
import truelead.checker.rule.milling.ExitScarsThread;
import truelead.checker.rule.milling.HandMirrored;
import truelead.checker.rule.milling.HelixOffPitch;
import truelead.checker.rule.milling.HelixOffSize;
import truelead.checker.rule.milling.HelixTooShort;
import truelead.checker.rule.milling.HelixUneven;
import truelead.checker.rule.milling.HelixWrongHand;
import truelead.checker.rule.milling.MillFeedOff;
import truelead.checker.rule.milling.PassesTooHeavy;
import truelead.checker.rule.milling.TaperOff;
import truelead.checker.rule.milling.ThreadIntoShoulder;
import truelead.checker.rule.program.ArcNotClosed;
import truelead.checker.rule.program.NotFollowed;
import truelead.checker.rule.program.NotUnderstood;
import truelead.checker.rule.program.NoteNotUnderstood;
import truelead.checker.rule.program.PlaneWrong;
import truelead.checker.rule.program.UnitUnstated;
import truelead.checker.rule.tapping.CycleLeftOn;
import truelead.checker.rule.tapping.DrillInTappingCycle;
import truelead.checker.rule.tapping.DwellAtBottom;
import truelead.checker.rule.tapping.FeedInWrongMode;
import truelead.checker.rule.tapping.FeedMissing;
import truelead.checker.rule.tapping.FeedOffPitch;
import truelead.checker.rule.tapping.InchMetricMixup;
import truelead.checker.rule.tapping.LengthOffsetMissing;
import truelead.checker.rule.tapping.OverrideOpen;
import truelead.checker.rule.tapping.PerRevLeftOn;
import truelead.checker.rule.tapping.RigidModeLeftOn;
import truelead.checker.rule.tapping.RigidModeMissing;
import truelead.checker.rule.tapping.SpeedChanged;
import truelead.checker.rule.tapping.SpeedOverLimit;
import truelead.checker.rule.tapping.SpindleNotTurning;
import truelead.checker.rule.tapping.SpindleWrongWay;
import truelead.checker.rule.tapping.StartTooClose;
import truelead.checker.rule.tapping.TapInDrillingCycle;
import truelead.checker.rule.tapping.TapThroughFixture;
import truelead.checker.work.Work;

/** All rules, and the way they are run: each on the whole work, then one finding a cause, the settings, and the order of the program. */
public final class Rules {

	/** Every rule there is; a new rule is its class, its page and its line here. */
	public static final List<Rule> ALL = List.of(
			new TapInDrillingCycle(),
			new DrillInTappingCycle(),
			new FeedMissing(),
			new PerRevLeftOn(),
			new InchMetricMixup(),
			new FeedInWrongMode(),
			new FeedOffPitch(),
			new SpindleWrongWay(),
			new SpindleNotTurning(),
			new SpeedChanged(),
			new SpeedOverLimit(),
			new StartTooClose(),
			new CycleLeftOn(),
			new RigidModeMissing(),
			new RigidModeLeftOn(),
			new DwellAtBottom(),
			new OverrideOpen(),
			new LengthOffsetMissing(),
			new TapThroughFixture(),
			new NoThreadMade(),
			new HoleMissing(),
			new HoleOffPosition(),
			new HoleSkipped(),
			new ThreadedBeforeDrilled(),
			new DrilledAfterThreading(),
			new ThreadedTwice(),
			new DrillTooSmall(),
			new DrillTooBig(),
			new DrillTooShallow(),
			new DrillTooDeep(),
			new ThreadTooShort(),
			new NotThrough(),
			new PlaneHeightsWrong(),
			new EdgeNotBroken(),
			new CountersinkTooSmall(),
			new WallTooThin(),
			new DeepThread(),
			new TapWrongForHole(),
			new MethodWrongForStock(),
			new ClassOutOfReach(),
			new TapLimitAgainstClass(),
			new TorqueHigh(),
			new ReachTooShort(),
			new CountDiffers(),
			new CoolantOff(),
			new ToolNotChanged(),
			new DrillFeedHigh(),
			new DrillFeedLow(),
			new RapidIntoPart(),
			new NoCheckStop(),
			new CalloutConflict(),
			new CalloutMissing(),
			new PitchNotStandard(),
			new HelixOffPitch(),
			new HelixUneven(),
			new HelixOffSize(),
			new HelixWrongHand(),
			new HelixTooShort(),
			new HandMirrored(),
			new ClimbOrConventional(),
			new CutterTooBig(),
			new CutterPitchMismatch(),
			new CutterHitsBottom(),
			new ThreadIntoShoulder(),
			new EntryStraight(),
			new EntryOffPitch(),
			new ExitScarsThread(),
			new EdgeFeedHigh(),
			new MillFeedOff(),
			new CompMissing(),
			new CompLeftOn(),
			new CompStartedOnArc(),
			new PassesTooHeavy(),
			new TaperOff(),
			new NotUnderstood(),
			new NotFollowed(),
			new ArcNotClosed(),
			new UnitUnstated(),
			new PlaneWrong(),
			new NoteNotUnderstood(name -> named(name).isPresent()));

	private static final Map<String, Integer> NUMBERS = new HashMap<>();

	static {
		ALL.forEach(rule -> NUMBERS.put(rule.name(), NUMBERS.size()));
	}

	private static final Set<String> OF_A_STAY = names(Rule::isOfAStay);
	private static final Set<String> OF_WORDS = names(Rule::isOfWords);

	private static final String FAILED = "this rule failed";

	private Rules() {
	}

	/** Whether a finding says that its rule broke, and where; its only evidence is the place in the checker. */
	public static boolean failed(Finding finding) {
		return finding.message().startsWith(FAILED);
	}

	/** A rule by its name. */
	public static Optional<Rule> named(String name) {
		return ALL.stream().filter(rule -> rule.name().equals(name)).findFirst();
	}

	/** The pages of all rules, in their order. */
	public static List<RulePage> pages() {
		return ALL.stream().map(rule -> RulePage.of(rule.name())).toList();
	}

	/** What all rules that are not off find, sorted by place, then severity, then name. Same work, same findings. */
	public static List<Finding> check(Work work, RuleSettings settings) {
		return check(ALL, work, settings);
	}

	static List<Finding> check(List<Rule> rules, Work work, RuleSettings settings) {
		return told(found(rules, work, settings), work, settings);
	}

	/** What each rule that is not off finds, one rule after the other, before one finding speaks for others. */
	public static List<Finding> found(Work work, RuleSettings settings) {
		return found(ALL, work, settings);
	}

	/** The place of a rule in the order that they are run in; -1 for a name that is no rule's. */
	public static int number(String name) {
		return NUMBERS.getOrDefault(name, -1);
	}

	/** Whether the findings of a rule that are about no operation are each about one stay of a tool; see {@link Rule#isOfAStay}. */
	public static boolean isOfAStay(String name) {
		return OF_A_STAY.contains(name);
	}

	/** Whether a rule judges the words of a cycle's block alone; see {@link Rule#isOfWords}. */
	static boolean isOfWords(String name) {
		return OF_WORDS.contains(name);
	}

	private static Set<String> names(Predicate<Rule> which) {
		return ALL.stream().filter(which).map(Rule::name).collect(Collectors.toSet());
	}

	private static List<Finding> found(List<Rule> rules, Work work, RuleSettings settings) {
		List<Finding> found = new ArrayList<>();
		for (Rule rule : rules) {
			if (!settings.off().contains(rule.name())) {
				check(rule, work, found);
			}
		}
		return found;
	}

	/** Of all that was found in a work what is told: one finding a cause, with the severities of the settings, in order. */
	public static List<Finding> told(List<Finding> found, Work work, RuleSettings settings) {
		List<Finding> findings = new ArrayList<>();
		SaidBy said = new SaidBy();
		for (Finding finding : OneACause.fold(AtEveryHole.spread(OneAPlace.merge(Precedence.apply(found)), work), work)) {
			settings.severityOf(finding.rule(), finding.severity())
					.ifPresent(severity -> findings.add(said.named(finding.with(severity))));
		}
		findings.sort(Rules::byPlace);
		return List.copyOf(findings);
	}

	/** The places in common of which a finding may be told together with those of other tools. */
	public static Stream<Location> inCommon(Finding finding) {
		return OneACause.common(finding);
	}

	/** The order of findings: by place, then severity, then name. */
	public static int byPlace(Finding one, Finding other) {
		int order = one.at().file().name().compareTo(other.at().file().name());
		order = order != 0 ? order : Integer.compare(one.at().line(), other.at().line());
		order = order != 0 ? order : Integer.compare(one.at().span().start(), other.at().span().start());
		order = order != 0 ? order : one.severity().compareTo(other.severity());
		return order != 0 ? order : one.rule().compareTo(other.rule());
	}

	/** A rule that breaks takes no other with it, and is not passed over in silence. */
	private static void check(Rule rule, Work work, List<Finding> found) {
		try {
			rule.check(work, found::add);
		} catch (RuntimeException | StackOverflowError broken) {
			Location first = Location.of(new BlockRef(work.shop().program(), 0, Optional.empty()));
			String place = broken.getStackTrace().length == 0 ? "not known" : broken.getStackTrace()[0].toString();
			found.add(new Finding(rule.name(), Severity.WARNING, FAILED + " on this program and has not checked all of it ("
					+ broken.getClass().getSimpleName() + "): a fault of the checker, not of the program", first, List.of(), List.of(),
					List.of(new Evidence("failed at", place, "the checker", Optional.empty())), -1));
		}
	}
}
