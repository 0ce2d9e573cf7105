package truelead.checker.thread;

import java.util.Optional;
import truelead.checker.program.LengthUnit;

/**
 * Which thread is wanted: everything that a drawing's callout says of the thread itself.
 *
 * @param system      the system it belongs to
 * @param series      the Unified series ({@code UNC}, {@code UNF}, {@code UNEF}, {@code UN}, {@code UNS}, {@code UNJF}…), else empty
 * @param size        the size as the system names it: {@code 8}, {@code #10}, {@code 1-1/4}
 * @param diameter    the basic major diameter, mm
 * @param pitch       the distance from one thread to the next, mm; exactly 25.4 / tpi for inch threads
 * @param tpi         threads per inch, 0 for metric threads
 * @param starts      the number of starts, 1 for nearly all
 * @param hand        the hand
 * @param threadClass the class as the standard writes it ({@code 6H}, {@code 2B}), empty when none was given
 */
public record ThreadSpec(ThreadSystem system, String series, String size, double diameter, double pitch, double tpi, int starts,
		Hand hand, Optional<String> threadClass) {

	/** Taper of pipe threads, 1 in 16 on the diameter: the change of diameter for one unit of length, a ratio (ASME B1.20.1, ISO 7-1). */
	public static final double PIPE_TAPER = 1.0 / 16;

	public ThreadSpec {
		if (!(diameter > 0) || !(pitch > 0) || starts < 1) {
			throw new IllegalArgumentException("a thread needs a diameter, a pitch and a start");
		}
	}

	/** A right-hand metric thread, diameter and pitch in mm. */
	public static ThreadSpec metric(double diameter, double pitch) {
		return new ThreadSpec(ThreadSystem.METRIC, "", Decimals.plain(diameter, 4), diameter, pitch, 0, 1, Hand.RIGHT, Optional.empty());
	}

	/** A right-hand metric thread with rounded root, diameter and pitch in mm. */
	public static ThreadSpec mj(double diameter, double pitch) {
		return new ThreadSpec(ThreadSystem.MJ, "", Decimals.plain(diameter, 4), diameter, pitch, 0, 1, Hand.RIGHT, Optional.empty());
	}

	/** A right-hand inch thread with a measurable diameter; the diameter in inches, the series as in ASME B1.1 or empty. */
	public static ThreadSpec inch(ThreadSystem system, String series, double inches, double tpi) {
		boolean numbered = system == ThreadSystem.UNIFIED || system == ThreadSystem.UNJ;
		return new ThreadSpec(system, series, numbered ? InchSize.name(inches) : InchSize.fraction(inches), inches * LengthUnit.INCH.mm(),
				LengthUnit.INCH.mm() / tpi, tpi, 1, Hand.RIGHT, Optional.empty());
	}

	/** A Unified thread whose series is looked up; UNS where it is in none. The diameter in inches. */
	public static ThreadSpec unified(double inches, double tpi) {
		return inch(ThreadSystem.UNIFIED, ThreadTable.standard().unifiedSeries(inches, tpi).orElse("UNS"), inches, tpi);
	}

	/** A pipe thread, named by its size; the basic major diameter in mm. */
	public static ThreadSpec pipe(ThreadSystem system, String size, double diameter, double tpi) {
		return new ThreadSpec(system, "", size, diameter, LengthUnit.INCH.mm() / tpi, tpi, 1, Hand.RIGHT, Optional.empty());
	}

	/**
	 * A right-hand thread of one start of another system, named by its size; diameter and pitch in mm, tpi 0 where the standard gives the
	 * pitch.
	 */
	public static ThreadSpec other(ThreadSystem system, String size, double diameter, double pitch, double tpi) {
		return new ThreadSpec(system, "", size, diameter, pitch, tpi, 1, Hand.RIGHT, Optional.empty());
	}

	/** The nominal diameter in inches, without what the conversion to mm left behind its sixth place. */
	public double inches() {
		return Decimals.round(diameter / LengthUnit.INCH.mm(), 6).doubleValue();
	}

	/** The axial advance in one turn, mm: pitch times starts. */
	public double lead() {
		return pitch * starts;
	}

	/** The unit in which the thread's system counts. */
	public LengthUnit unit() {
		return system.unit();
	}

	/** The change of diameter for one unit of length: that of pipe threads or 0, a ratio. */
	public double taperOnDiameter() {
		return system.taper() ? PIPE_TAPER : 0;
	}

	/** The same thread with a class. */
	public ThreadSpec withClass(String name) {
		return new ThreadSpec(system, series, size, diameter, pitch, tpi, starts, hand, Optional.of(name));
	}

	/** The same thread with no class said. */
	public ThreadSpec withoutClass() {
		return threadClass.isEmpty() ? this : new ThreadSpec(system, series, size, diameter, pitch, tpi, starts, hand, Optional.empty());
	}

	/**
	 * The thread that a wire insert of this size is screwed into: of the same pitch, larger by 1.5 H = 1.299 P (ASME B18.29.1, DIN 8140-2;
	 * from memory).
	 */
	public ThreadSpec forWireInsert() {
		return new ThreadSpec(system, series, size, diameter + 0.75 * Math.sqrt(3) * pitch, pitch, tpi, starts, hand, threadClass);
	}

	/** The same thread of the given hand. */
	public ThreadSpec withHand(Hand other) {
		return other == hand ? this : new ThreadSpec(system, series, size, diameter, pitch, tpi, starts, other, threadClass);
	}

	/**
	 * Whether a cutter that reaches a diameter, mm, may cut it: from its own diameter up to what a sharp tip cuts deeper, 0.2165 P (ISO
	 * 68-1), and a little.
	 */
	public boolean cutBy(double reached) {
		return reached >= diameter - 0.01 && reached <= diameter + 0.25 * pitch;
	}

	/** The same thread with a number of starts, at least 1. */
	public ThreadSpec withStarts(int number) {
		return new ThreadSpec(system, series, size, diameter, pitch, tpi, number, hand, threadClass);
	}

	/** Whether the hole or shaft is the same thread, whatever the class. */
	public boolean sameThread(ThreadSpec other) {
		return withoutClass().designation().equals(other.withoutClass().designation());
	}

	/**
	 * The designation in full, with the pitch always: {@code M4x0.7-4H}, {@code M20x4P2}, {@code #10-32 UNF-2B-LH}, {@code 1/4-18 NPT},
	 * {@code G 1/2}.
	 */
	public String designation() {
		return Designation.of(this);
	}

	/** Diameter and pitch tell most threads apart. */
	@Override
	public int hashCode() {
		long mixed = (Double.doubleToLongBits(diameter) * 31 + Double.doubleToLongBits(pitch)) * 0x9E3779B97F4A7C15L;
		return (int) (mixed >>> 32);
	}

	@Override
	public boolean equals(Object other) {
		return this == other || other instanceof ThreadSpec thread && Double.compare(diameter, thread.diameter) == 0
				&& Double.compare(pitch, thread.pitch) == 0 && Double.compare(tpi, thread.tpi) == 0 && system == thread.system
				&& hand == thread.hand && starts == thread.starts && series.equals(thread.series) && size.equals(thread.size)
				&& threadClass.equals(thread.threadClass);
	}

	@Override
	public String toString() {
		return designation();
	}
}
