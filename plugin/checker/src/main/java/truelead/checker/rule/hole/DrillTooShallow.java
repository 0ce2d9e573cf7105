package truelead.checker.rule.hole;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.hole.DrillEnd;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.DrillsThatTap;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Fix;
import truelead.checker.rule.LevelFix;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.ToolName;
import truelead.checker.rule.Written;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.DrillPoint;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.AnotherPart;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * The tap's end comes near the drill's cone, into it, or to where the two meet. Full diameter depth h = tip depth - d/2 / tan(a/2). The
 * tap's nose n is smaller than d and meets the cone (d - n)/2 / tan(a/2) below h. Drill 5 at 118 degrees to 14 mm: h = 12.5; nose 3.7:
 * contact at 12.9.
 */
public final class DrillTooShallow extends HoleRule {

	/** Room below the tap in a blind hole, pitches (common practice, no source). */
	private static final double ROOM_FORMING = 1;
	private static final double ROOM_CUTTING = 2;
	/** Less than so many pitches are a warning (common practice, no source: many shops leave no more for a cutting tap). */
	private static final double ROOM_NEEDED = 1.25;
	/** Threads of nuts for spindles: their taps have a lead of many turns and go through (common practice, no source). */
	private static final Set<ThreadSystem> NUTS = Set.of(ThreadSystem.TR, ThreadSystem.ACME, ThreadSystem.STUB_ACME);
	/** A drill that goes so little of the tap's depth, to the other side of level 0, has a depth with the wrong sign (a choice of ours). */
	private static final double FAR_SHORT = 0.25;
	/** Nobody taps deeper than so many diameters: the depth itself is a slip (common practice, no source). */
	private static final double DEEPEST = 8;
	/**
	 * The longest lead of a tap, turns (DIN 2197 form B, ASME B94.9 plug), and what is left free below a wall, mm or pitches (common
	 * practice, no source).
	 */
	private static final double LONGEST_LEAD = 6;
	private static final double BELOW_WALL = 3;
	/** Levels that are the same, mm. */
	private static final double SAME = 0.5;
	/** Half angle of the lead of forms C and B, and of forming taps (DIN 2197, from memory). */
	private static final double LEAD_ANGLE = Math.toRadians(15);
	private static final double LEAD_ANGLE_POINT = Math.toRadians(8);

	public DrillTooShallow() {
		super("drill-too-shallow");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.HOLE_SHALLOW);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.NO_TAP, Slip.OTHER_AXIS, Slip.UNIT_WORD, Slip.OTHER_UNIT, Slip.HEIGHTS_MISREAD,
				Slip.OTHER_THREADS_HOLE, Slip.FEED_AND_DRILL);
	}

	@Override
	void turned(SinglePoint turned, Work work, Consumer<Draft> found) {
		ChasedBore.agreed(turned).flatMap(bore -> bore.shallow(this)).or(() -> TaperHole.shallow(this, turned)).ifPresent(found);
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		if (!(operation instanceof Tapping tapping)) {
			return;
		}
		boolean through = tapping.wanted().through().map(Fact::value).orElse(false);
		List<Room> rooms = new ArrayList<>(2);
		for (TapStroke stroke : tapping.strokes().typical()) {
			Optional<TapDepth> depth = TapDepth.of(tapping, stroke);
			depth.filter(known -> !DrillsThatTap.of(work).before(stroke.place(), stroke.order())).flatMap(known -> bottom(known, work))
					.map(cut -> new Room(depth.get(), cut)).ifPresent(rooms::add);
		}
		// what the thickness of the part tells of the deepest holes is not true of those that end higher
		double deepest = through && !tapping.wanted().through().get().stated()
				? rooms.stream().mapToDouble(Room::full).max().orElse(0) - SAME : Double.NEGATIVE_INFINITY;
		// what goes through the part may end in the bar that the part is cut off from
		boolean inBar = through && Parted.behind(tapping, work).isPresent();
		rooms.removeIf(room -> through && room.full() >= deepest && !room.endsInside() && !(inBar && room.meets()));
		rooms.sort((one, other) -> Double.compare(one.clearance(), other.clearance()));
		for (Room room : rooms) {
			Optional<Draft> draft = draft(room, tapping, through && room.full() >= deepest, inBar, work);
			if (draft.isPresent()) {
				found.accept(draft.get());
				return;
			}
		}
	}

	/**
	 * What lies below the tap.
	 *
	 * @param depth the tap's depth
	 * @param cut   the cut that made the hole deepest
	 */
	private record Room(TapDepth depth, Cut cut) {

		/** Depth of the full diameter; where nobody says the drill's diameter, with the point of the drill that the thread needs. */
		double full() {
			return tip() - cone();
		}

		/** Depth of the end of what made the hole. */
		double tip() {
			return depth.below(cut.tip());
		}

		double cone() {
			boolean known = !Double.isNaN(cut.shoulder()) && fitsThread();
			boolean pointed = cut.kind().drills() && !openPoint();
			return known ? Math.abs(cut.tip() - cut.shoulder()) : pointed
					? DrillEnd.angle(cut.tool().facts(), diameter(), cut.step().modal()).map(angle -> DrillPoint.length(diameter(),
							angle.value())).orElse(0.0) : 0;
		}

		/** Whether the drill's diameter is known and not its point, which may be flat. */
		boolean openPoint() {
			return Double.isNaN(cut.shoulder()) && cut.diameter().isPresent() && fitsThread();
		}

		/**
		 * Whether a hole that is to go through cannot: its full diameter ends in the wall, or so far above the tap's tip that neither the
		 * longest lead nor what is usually left free below a wall explains it.
		 */
		boolean endsInside() {
			Optional<Fact<Double>> wall = depth.tapping().wanted().wall().filter(Fact::stated);
			double enough = wall.map(Fact::value)
					.orElseGet(() -> depth.tip() - LONGEST_LEAD * depth.pitch() - Math.max(BELOW_WALL, BELOW_WALL * depth.pitch()));
			return full() < Math.min(enough, depth.tip()) - Written.open(cut.resolution()) - 1e-6;
		}

		/** Whether the tap goes far beyond level 0, and the drill ends before it. */
		boolean acrossZero() {
			return depth.stroke().bottom() * cut.tip() < 0 && tip() < FAR_SHORT * depth.tip();
		}

		/** Free length between the tap's tip and the end of the full diameter, mm. */
		double clearance() {
			return full() - depth.tip();
		}

		/** Whether the tap's end meets what the drill has left. */
		boolean meets() {
			return clearance() < -(Double.isNaN(cut.shoulder()) ? cone() : contact()) - slack();
		}

		/** What the written decimals leave open, mm. */
		double slack() {
			return Written.open(depth.stroke().resolution()) + Written.open(cut.resolution()) + 1e-6;
		}

		/** How deep the hole goes on with a smaller diameter: chips fall there too. */
		double pilot() {
			return depth.stroke().hole().makingBefore(depth.stroke().order()).stream().map(Cut::shoulder)
					.filter(level -> !Double.isNaN(level)).mapToDouble(depth::below).max().orElse(0);
		}

		/** Not 2.5 under M3 in an inch program, where millimetres are meant: a drill twice as wide as the thread makes no hole for it. */
		private boolean fitsThread() {
			double thread = depth.tapping().wanted().thread().map(t -> t.value().diameter()).orElse(Double.POSITIVE_INFINITY);
			return cut.diameter().filter(d -> d.value() >= 2 * thread).isEmpty();
		}

		double diameter() {
			return cut.diameter().filter(d -> fitsThread()).map(Fact::value).orElseGet(() -> depth.tapping().wanted().thread()
					.map(t -> t.value().diameter() - t.value().pitch()).orElse(0.0));
		}

		/** The tap's front end, mm: as stated, else the drill's diameter less what the lead takes off. */
		double nose() {
			double angle = ToolName.spiralPoint(depth.tapping().tool().facts()) ? LEAD_ANGLE_POINT : LEAD_ANGLE;
			return depth.tapping().tool().facts().nose().map(Fact::value)
					.orElseGet(() -> Math.max(0, diameter() - 2 * depth.lead().length(depth.pitch()) * Math.tan(angle)));
		}

		/** How far below the full diameter the nose meets the cone, mm; 0 for a flat bottom. */
		double contact() {
			return cone() > 0 && diameter() > 0 ? Math.max(0, (diameter() - nose()) / diameter() * cone()) : 0;
		}
	}

	/** The cut that made the hole's full diameter at the thread deepest; empty where it is not known. */
	private static Optional<Cut> bottom(TapDepth depth, Work work) {
		List<Cut> making = AnotherPart.making(work, depth.stroke().hole(), depth.stroke().order());
		if (making.stream().anyMatch(c -> Double.isNaN(c.tip()))) {
			return Optional.empty();
		}
		double thread = depth.tapping().wanted().thread().map(t -> t.value().diameter()).orElse(Double.NaN);
		Optional<Cut> size = AnotherPart.inPart(work, depth.stroke().hole(), depth.stroke().order())
				.threadedBefore(depth.stroke().order(), thread);
		double wide = size.flatMap(Cut::diameter).map(Fact::value).orElse(0.0);
		return making.stream().filter(c -> c.diameter().map(Fact::value).orElse(wide) > wide - depth.pitch() / 4)
				.max((one, other) -> Double.compare(end(one, depth), end(other, depth)));
	}

	/** Where the cut's full diameter ends below the top, mm; of a cut without a cone its tip. */
	private static double end(Cut cut, TapDepth depth) {
		return depth.below(Double.isNaN(cut.shoulder()) ? cut.tip() : cut.shoulder());
	}

	private Optional<Draft> draft(Room room, Tapping tapping, boolean through, boolean inBar, Work work) {
		boolean forming = ToolName.forms(tapping.tool().facts());
		boolean named = tapping.wanted().thread().isPresent();
		double wanted = named ? (forming ? ROOM_FORMING : ROOM_CUTTING) * room.depth().pitch() : 0;
		double slack = room.slack();
		double clearance = room.clearance();
		// also where the pitch, and so the room wanted, is not known
		if (!(clearance < wanted - slack)) {
			return Optional.empty();
		}
		boolean assumed = Double.isNaN(room.cut().shoulder()) && !room.openPoint();
		boolean meets = room.meets();
		boolean enters = clearance < -slack;
		if (!enters && room.pilot() - room.depth().tip() >= wanted - slack) {
			return Optional.empty();
		}
		if (room.acrossZero()) {
			return Optional.of(acrossZero(room));
		}
		Figures figures = room.depth().figures();
		double needed = Math.ceil((room.depth().tip() + wanted + room.cone()) * 10) / 10;
		String where = inBar ? "the part is cut off from the bar later, the tap goes " : through ? "the tap goes through, "
				: "the tap goes ";
		String hole = room.full() < 0 ? "the drill goes " + figures.length(room.tip()) + " with its point and leaves no full diameter"
				: "the hole has its full diameter down to " + figures.length(room.full());
		String fact = where + figures.length(room.depth().tip()) + " deep, " + hole + ": ";
		String cone = room.cone() > 0 ? "the drill's cone" : "the end of the full diameter";
		// nobody says where the wall ends
		boolean open = through && !inBar && tapping.wanted().through().filter(Fact::stated).isPresent()
				&& tapping.wanted().wall().filter(Fact::stated).isEmpty();
		String what = open ? figures.length(-clearance)
				+ " above the tap's end, more than a tap's lead and the way that is left free below a wall" : meets
				? "its end meets " + cone + " at " + figures.length(room.full() + room.contact()) + " and the tap breaks" : enters
				? figures.length(-clearance) + " into " + cone + ", which it would meet at " + figures.length(room.full() + room.contact())
				: figures.length(clearance) + " below the tap, " + figures.length(wanted) + " is usual for "
				+ (forming ? "forming" : "chips");
		Optional<String> sign = room.endsInside() ? Optional.empty()
				: new ThroughSigns(tapping, work).of(room.cut(), room.depth(), room.full());
		boolean slip = tapping.wanted().thread().filter(t -> room.depth().tip() > DEEPEST * t.value().diameter()).isPresent();
		Optional<LessDeep> less = through || inBar || !enters ? Optional.empty() : LessDeep.of(room.depth(), room.full() - wanted);
		String drill = "drill to " + figures.length(needed);
		String mend = slip ? "see the depth of the tap" + less.map(tap -> ", " + tap.most() + " at most").orElse("")
				: open ? drill + ", or see the depth of the tap" : less.map(tap -> tap.orElse(drill)).orElse(drill);
		String message = sign.map(why -> fact + "it is taken to go through, for " + why + "; " + drill + " if it does not")
				.orElse(fact + what + "; " + mend);
		boolean nut = tapping.wanted().thread().filter(t -> NUTS.contains(t.value().system())).isPresent();
		boolean tight = !enters && (nut || clearance > ROOM_NEEDED * room.depth().pitch() + slack);
		Severity severity = sign.isPresent() || tight ? Severity.INFORMATION : meets && !open ? Severity.ERROR : Severity.WARNING;
		Draft draft = Draft.of(this, severity, room.depth().depthWord(), room.depth().stroke().block(), message);
		room.depth().evidence(draft).programmed("depth of the drill's tip", figures.length(room.depth().below(room.cut().tip())),
				room.cut().block()).related(room.cut().block(), "the drill block")
				.from("room below the tap", Figures.number(wanted / room.depth().pitch(), 1) + " pitches", "common practice, no source");
		room.cut().diameter().ifPresent(d -> draft.known("drill", figures.fine(d.value()), d));
		if (assumed) {
			draft.from("drill", figures.fine(room.diameter()), "not stated; D - P of the thread and the point of such a drill assumed");
		}
		if (room.openPoint()) {
			draft.from("point of the drill", "flat", "not stated; drills with inserts are as large and run as fast");
		} else if (room.cut().tool().facts().pointAngle().isPresent()) {
			DrillEnd.angle(room.cut().tool().facts(), room.cut().step().modal())
					.ifPresent(a -> draft.known("point angle", Figures.number(Math.toDegrees(a.value()), 0) + " degrees", a));
		}
		draft.from("front end of the tap", figures.length(room.nose()), tapping.tool().facts().nose().map(Fact::origin)
				.orElse("drill less the lead at 15 degrees (8 with spiral point), DIN 2197, from memory"));
		if (sign.isEmpty() && !slip) {
			less.filter(LessDeep::likelier).flatMap(LessDeep::fix).ifPresent(draft::fix);
			Fix.together(deeper(room, wanted, needed, work)).ifPresent(draft::fix);
			less.filter(tap -> !tap.likelier()).flatMap(LessDeep::fix).ifPresent(draft::fix);
		}
		return Optional.of(draft);
	}

	/** One of the two depths has the wrong sign. */
	private Draft acrossZero(Room room) {
		Figures figures = room.depth().figures();
		char axis = "XYZ".charAt(room.depth().stroke().place().plane().axis());
		return room.depth().evidence(Draft.of(this, Severity.ERROR, room.depth().depthWord(), room.depth().stroke().block(),
				"the tap goes to " + axis + figures.coordinate(room.depth().stroke().bottom()) + ", the drill to " + axis
						+ figures.coordinate(room.cut().tip()) + ", on the other side of " + axis + "0: no hole is there where the tap "
						+ "ends; see the sign of both depths")).related(room.cut().block(), "the drill block");
	}

	/** The changes of all cycles that drill holes of the operation as deep as one, too shallow for their taps. */
	private static List<Fix> deeper(Room like, double wanted, double needed, Work work) {
		Tapping tapping = like.depth().tapping();
		Map<WordRef, Fix> fixes = new LinkedHashMap<>();
		for (TapStroke stroke : tapping.strokes().where(kind -> asShallow(tapping, kind, like, wanted, work).isPresent())) {
			asShallow(tapping, stroke, like, wanted, work).ifPresent(room -> LevelFix.depthWord((Step.Stroke) room.cut().step())
					.filter(word -> !fixes.containsKey(word))
					.ifPresent(word -> LevelFix.depth((Step.Stroke) room.cut().step(), room.depth().level(needed), false,
							"see that wall and drawing allow the deeper hole").ifPresent(fix -> fixes.put(word, fix))));
		}
		return List.copyOf(fixes.values());
	}

	/** What lies below a tap whose hole a cycle drills as deep as another, and too shallow for it. */
	private static Optional<Room> asShallow(Tapping tapping, TapStroke stroke, Room like, double wanted, Work work) {
		return TapDepth.of(tapping, stroke).flatMap(depth -> bottom(depth, work).map(cut -> new Room(depth, cut)))
				.filter(room -> room.cut().step() instanceof Step.Stroke && room.cut().tip() == like.cut().tip()
						&& room.clearance() < wanted - room.slack());
	}
}
