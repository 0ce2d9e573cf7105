package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.machine.Step;
import truelead.checker.thread.BoltRoot;
import truelead.checker.thread.Limits;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;

/**
 * Between which diameters the point ends that cuts a thread on a lathe, mm: outside at the root, inside at the major diameter; for taper
 * threads where the pass ends.
 *
 * @param least  smallest
 * @param most   largest
 * @param usual  what is usually programmed
 * @param taper  whether it grows or shrinks along the thread
 * @param source where it comes from
 */
record WallLimits(double least, double most, double usual, boolean taper, String source) {

	/**
	 * What the radius of a point and trying on leave open, pitches; less where the root is left too high, which no point mends (common
	 * practice, no source).
	 */
	private static final double OPEN = 0.1;
	private static final double ROUNDED = 0.03;
	/**
	 * A sharp point instead of the flat of P/8 goes this much of the pitch deeper on the diameter for the same pitch diameter: 1.732 / 8.
	 */
	private static final double SHARP = Math.sqrt(3) / 8;
	/**
	 * What taper threads leave to the gauge, pitches on the diameter: five turns where they are not deep enough, eight where they are too
	 * deep, as a sharper point cuts them (common practice, no source).
	 */
	private static final double SHALLOW = 0.3;
	private static final double DEEP = 0.5;
	private static final double AMERICAN = 0.8;
	private static final double BRITISH = 0.640327;

	/** The limits; empty for forms that nothing is known of. */
	static Optional<WallLimits> of(ThreadSpec thread, boolean inside, Step.Synchronised pass) {
		return switch (thread.system()) {
			case METRIC, MJ, UNIFIED, UNJ, G, RP, BSW, BSF, W -> Optional.of(inside ? vInside(thread) : vOutside(thread));
			case TR, ACME, STUB_ACME -> Optional.of(trapezoid(thread, inside));
			case SAW -> Optional.of(flanked(thread, inside, 1.5, 1.7355, 0, "DIN 513-1 (from memory)"));
			case BUTTRESS -> Optional.of(flanked(thread, inside, 1.2, 1.3254, 0.1254, "ASME B1.9 (from memory)"));
			case RD -> Optional.of(flanked(thread, inside, 0.9, 1, 0.1, "DIN 405-1 (from memory)"));
			case NPT, NPTF, R, RC -> taper(thread, inside, pass);
			default -> Optional.empty();
		};
	}

	private static WallLimits vOutside(ThreadSpec thread) {
		double pitch = thread.pitch();
		double least = BoltRoot.least(thread) - OPEN * pitch - MillFacts.pitchTolerance(thread);
		return new WallLimits(least, BoltRoot.most(thread) + ROUNDED * pitch, BoltRoot.usual(thread), false, BoltRoot.source(thread));
	}

	private static WallLimits vInside(ThreadSpec thread) {
		double most = thread.diameter() + (SHARP + OPEN) * thread.pitch() + MillFacts.pitchTolerance(thread);
		return new WallLimits(thread.diameter() - OPEN * thread.pitch(), most, thread.diameter(), false, "the major diameter");
	}

	/**
	 * Beyond D outside and D - P inside the roots meet the crests of the thread they go together with, whatever the play (ISO 2904), of the
	 * low form beyond D - 0.6 P. ISO 2901: a play of 0.15 for P 1.5, 0.25 to P 5, 0.5 to P 12, 1 above; ASME B1.5, B1.8: 0.010 in for 10
	 * threads an inch and coarser, else 0.005 in.
	 */
	private static WallLimits trapezoid(ThreadSpec thread, boolean inside) {
		double pitch = thread.pitch();
		boolean metric = thread.system() == ThreadSystem.TR;
		double play = metric ? pitch <= 1.5 ? 0.15 : pitch <= 5 ? 0.25 : pitch <= 12 ? 0.5 : 1 : pitch >= 2.54 - 1e-6 ? 0.254 : 0.127;
		double height = 2 * thread.system().depthOverPitch() * pitch;
		return flanks(thread, inside, height, height + 2 * play, 2 * play, metric ? "ISO 2901" : "ASME B1.5, B1.8 (from memory)");
	}

	/** The same with all in pitches on the diameter. */
	private static WallLimits flanked(ThreadSpec thread, boolean inside, double crests, double root, double beyond, String source) {
		double pitch = thread.pitch();
		return flanks(thread, inside, crests * pitch, root * pitch, beyond * pitch, source);
	}

	/**
	 * Of a form with its own play at the root.
	 *
	 * @param crests what the crests inside are nearer to the axis than D, mm on the diameter: beyond that they meet a root outside
	 * @param root   what the root outside is nearer
	 * @param beyond what the root inside is farther
	 */
	private static WallLimits flanks(ThreadSpec thread, boolean inside, double crests, double root, double beyond, String source) {
		double open = OPEN * thread.pitch() + MillFacts.pitchTolerance(thread);
		double usual = thread.diameter() + (inside ? beyond : -root);
		double met = ROUNDED * thread.pitch();
		return new WallLimits(inside ? thread.diameter() - met : usual - open, inside ? usual + open : thread.diameter() - crests + met,
				usual, false, source);
	}

	/** Of taper threads the gauge plane is at the face inside; outside it is a gauge length behind it. The face is taken for Z0. */
	private static Optional<WallLimits> taper(ThreadSpec thread, boolean inside, Step.Synchronised pass) {
		OptionalDouble gauge = ThreadTable.standard().limits(thread).map(Limits::pitchMinMm).orElse(OptionalDouble.empty());
		OptionalDouble length = ThreadTable.standard().gaugeLength(thread);
		boolean in = pass.from().z() > 0 && pass.to().z() < 0;
		if (gauge.isEmpty() || length.isEmpty() || !in) {
			return Optional.empty();
		}
		boolean american = thread.system().hasFlanksOf(60);
		double height = (american ? AMERICAN : BRITISH) * thread.pitch();
		double behind = -pass.to().z();
		double usual = gauge.getAsDouble() + (inside ? height - behind * ThreadSpec.PIPE_TAPER
				: -height + (behind - length.getAsDouble()) * ThreadSpec.PIPE_TAPER);
		double pitch = thread.pitch();
		return Optional.of(new WallLimits(usual - (inside ? SHALLOW : DEEP) * pitch, usual + (inside ? DEEP : SHALLOW) * pitch, usual, true,
				american ? "ASME B1.20.1" : "ISO 7-1"));
	}
}
