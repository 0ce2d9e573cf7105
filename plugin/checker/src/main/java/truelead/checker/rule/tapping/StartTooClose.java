package truelead.checker.rule.tapping;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.machine.Step;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Setting;
import truelead.checker.rule.BlockText;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.LevelFix;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * The R plane leaves no room to come up to speed. In synchronised tapping the spindle needs (S/60)^2 / (2 a) turns from rest to S at a
 * rev/s^2, which are (S/60)^2 P / (2 a) mm: at S1000 within 0.2 s, a = 83.3 rev/s^2, 1.667 turns, 1.67 mm for a pitch of 1.
 */
public final class StartTooClose extends TappingRule {

	/** Part of the lead below which a lathe's pass begins too close to the face for any axis. */
	private static final double LEAST = 0.5;
	/** No machine steps less, mm: a length written in inches is a hair off. */
	private static final double STEP = 0.001;

	public StartTooClose() {
		super("start-too-close");
	}

	@Override
	public boolean isOfWords() {
		return true;
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.DRILLING_CYCLE, Slip.NO_TAP, Slip.LEFT_ON, Slip.UNIT_WORD, Slip.HEIGHTS_MISREAD);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		super.check(work, found);
		work.course().singlePoints().forEach(turned -> atTheFace(turned).or(() -> buried(turned)).map(Draft::finding).ifPresent(found));
	}

	/**
	 * A pass of a lathe that begins less than half a lead before the face, taken for Z0: the axis comes up to speed within the thread
	 * (common practice, no source: two leads and more).
	 */
	private Optional<Draft> atTheFace(SinglePoint turned) {
		double way = turned.grows() ? -1 : 1;
		double room = way * turned.pass().from().z();
		double lead = turned.agreed().map(thread -> thread.value().lead()).orElse(0.0);
		if (!(room >= 0 && room < LEAST * lead && way * turned.pass().to().z() < room)) {
			return Optional.empty();
		}
		Figures figures = new Figures(turned.pass().modal().unit());
		BlockRef at = turned.passes().get(0).begins().orElse(turned.pass().block());
		return Optional.of(Draft.of(this, Severity.WARNING, BlockText.word(at, "ZW"), "the pass begins " + figures.length(room)
				+ " before the face, " + figures.length(2 * lead)
				+ ", two leads, are usual: the axis comes up to speed within the first turns, and they are off the pitch; begin at Z"
				+ Figures.number(way * 2 * lead / figures.unit().mm(), 3)).programmed("start", figures.length(room), at)
				.from("room to come up to speed", "2 leads", "common practice, no source"));
	}

	/**
	 * A pass of a lathe that begins behind the end of the work, or behind the step before its diameter, where nothing has made room for the
	 * point (geometry).
	 */
	private Optional<Draft> buried(SinglePoint turned) {
		Optional<Fact<ThreadSpec>> thread = turned.agreed();
		double behind = turned.buried();
		if (thread.isEmpty() || !(behind > 0)) {
			return Optional.empty();
		}
		Figures figures = new Figures(turned.pass().modal().unit());
		BlockRef at = turned.passes().get(0).begins().orElse(turned.pass().block());
		double way = Math.signum(turned.pass().to().z() - turned.pass().from().z());
		double lead = thread.get().value().lead();
		double right = turned.pass().from().z() - way * (behind + 2 * lead);
		return Optional.of(Draft.of(this, Severity.WARNING, BlockText.word(at, "ZW"), "the pass begins at Z"
				+ figures.coordinate(turned.pass().from().z()) + ", " + figures.length(behind)
				+ " behind where the work begins, and nothing makes room for the point there: it goes straight into the work; begin at Z"
				+ figures.coordinate(right) + ", two leads before it")
				.programmed("start", "Z" + figures.coordinate(turned.pass().from().z()), at).from("room to come up to speed", "2 leads",
						"common practice, no source"));
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		Optional<Fact<ThreadSpec>> thread = tapping.wanted().thread();
		Fact<Double> surface = tapping.wanted().surface();
		if (thread.isEmpty() || !tapping.method().taps() || tapping.strokes().isEmpty() ) {
			return;
		}
		TapStroke stroke = tapping.strokes().get(0);
		double room = -stroke.direction() * (stroke.start() - surface.value());
		double pitch = thread.get().value().lead();
		OptionalDouble acceleration = work.shop().profile().number(ProfileKey.SPINDLE_ACCELERATION);
		if (surface.source() == FactSource.IMPLIED || !(room >= 0) || surface.source() == FactSource.DEFAULT && room > stroke.travel()
				|| tapping.wanted().holder().value().floats()) {
			return;
		}
		if (acceleration.isPresent() && stroke.speed().known()) {
			double turns = Math.pow(stroke.speed().value() / 60, 2) / (2 * acceleration.getAsDouble());
			if (room < turns * pitch - STEP) {
				found.accept(draft(stroke, thread.get(), surface, room, turns * pitch, Severity.WARNING, "the spindle needs "
						+ Figures.turns(turns) + " turns to come up to S" + Figures.number(stroke.speed().value(), 1))
						.from("acceleration", Figures.number(acceleration.getAsDouble(), 1) + " rev/s2", "machine profile "
								+ work.shop().profile().name()));
			}
		} else if (acceleration.isEmpty() && room < 3 * pitch - STEP) {
			Severity severity = room < pitch - STEP ? Severity.WARNING : Severity.INFORMATION;
			found.accept(draft(stroke, thread.get(), surface, room, 3 * pitch, severity, "three pitches are usual to come up to speed")
					.from("room to come up to speed", "3 pitches", "common practice, no source"));
		}
	}

	private Draft draft(TapStroke stroke, Fact<ThreadSpec> thread, Fact<Double> surface, double room, double needed,
			Severity severity, String why) {
		Figures figures = new Figures(stroke.modal().unit());
		Setting r = stroke.step() instanceof Step.Stroke s ? s.cycle().word('R').orElse(Setting.NONE) : Setting.NONE;
		double level = surface.value() - stroke.direction() * Math.ceil(needed * 10) / 10;
		String message = "the tap starts " + figures.length(room) + " above the surface, " + figures.length(needed) + " is needed: " + why
				+ ", so the first turns are off the pitch";
		Draft draft = Draft.of(this, severity, r, stroke.block(), message).programmed("start", figures.length(stroke.start()), r)
				.known("surface", figures.length(surface.value()), surface)
				.known("pitch", figures.advance(thread.value().lead()) + " " + figures.symbol(), thread);
		if (stroke.step() instanceof Step.Stroke s) {
			LevelFix.start(s, level, true, "a higher R plane only lengthens the way in").ifPresent(draft::fix);
		}
		return draft;
	}
}
