package truelead.checker.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.Meaning;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.LengthUnit;

/** The words of a machine: what its profile calls the things that a planned program does. */
public final class Dialect {
	/** Codes are looked for up to G999.9, in tenths (a choice of ours: no control numbers them higher). */
	private static final int CODES = 10_000;
	private final MachineProfile profile;

	/** The words of a machine. */
	public Dialect(MachineProfile profile) {
		this.profile = profile;
	}

	/** The G code with a meaning: the usual one where the machine has it so, else the first that has; empty where none does. */
	Optional<String> g(Meaning meaning, double usual) {
		return code(profile::gCode, meaning, usual).map(c -> "G" + c);
	}

	/** The M code with a meaning. */
	Optional<String> m(Meaning meaning, double usual) {
		return code(profile::mCode, meaning, usual).map(c -> "M" + c);
	}

	/** Unit, plane, everything off, absolute; the feed mode last. */
	String head(LengthUnit unit, boolean perRev) {
		return String.join(" ", List.of(unit == LengthUnit.MM ? g(Meaning.MILLIMETRE, 21).orElse("G21") : g(Meaning.INCH, 20).orElse("G20"),
				g(Meaning.PLANE_XY, 17).orElse("G17"), g(Meaning.COMPENSATION_OFF, 40).orElse("G40"),
				g(Meaning.LENGTH_OFFSET_OFF, 49).orElse("G49"), g(Meaning.CYCLE_OFF, 80).orElse("G80"),
				g(Meaning.ABSOLUTE, 90).orElse("G90"), feedMode(perRev)));
	}

	/** The code of a feed mode. */
	String feedMode(boolean perRev) {
		boolean lathe = profile.isLathe();
		return perRev ? g(Meaning.FEED_PER_REVOLUTION, lathe ? 99 : 95).orElse("G95")
				: g(Meaning.FEED_PER_MINUTE, lathe ? 98 : 94).orElse("G94");
	}

	/** The block that brings a tool. */
	String tool(int number) {
		if (profile.is(ProfileKey.TOOL_WORD, "turret")) {
			return "T" + turret(number);
		}
		return profile.is(ProfileKey.TOOL_WORD, "change") ? "T" + number : "T" + number + " " + m(Meaning.TOOL_CHANGE, 6).orElse("M6");
	}

	/** Station and offset of a turret's tool word: {@code 0303}. */
	public static String turret(int number) {
		String two = (number < 10 ? "0" : "") + number;
		return two + two.substring(two.length() - 2);
	}

	/** The level that R names, mm, for a retract level: from the initial level where the machine counts so. */
	double r(double plane, double initial) {
		return profile.is(ProfileKey.CYCLE_R, "from-initial") ? plane - initial : plane;
	}

	private static Optional<String> code(IntFunction<List<Meaning>> codes, Meaning meaning, double usual) {
		int tenfold = (int) Math.round(usual * 10);
		if (codes.apply(tenfold).contains(meaning)) {
			return Optional.of(Figure.plain(usual, 1));
		}
		return IntStream.range(0, CODES).filter(c -> codes.apply(c).contains(meaning)).mapToObj(c -> Figure.plain(c / 10.0, 1)).findFirst();
	}
}
