package truelead.faults;

import java.util.Locale;

/** How shops write threads, taps and drills in comments. */
final class Callouts {
	private final Dice dice;
	private final boolean inch;

	Callouts(Dice dice, boolean inch) {
		this.dice = dice;
		this.inch = inch;
	}

	/** The thread alone, as {@code M8 X 1.25}, {@code 1/4-20 UNC-2B}, {@code G1/4}. */
	String thread(Size size, boolean left) {
		String text = switch (size.series()) {
			case METRIC_COARSE, METRIC_FINE -> metric(size);
			case UNC, UNF -> unified(size);
			case NPT -> dice.chance(0.7) ? size.name() + " NPT" : size.name().substring(0, size.name().indexOf('-')) + " NPT";
			case G -> dice.pick(size.name(), size.name().replace("G", "G "));
		};
		return text + (left ? dice.pick(" LH", " LEFT HAND") : "");
	}

	private String metric(Size size) {
		String[] parts = size.name().split("X");
		if (size.series() == Series.METRIC_COARSE && dice.chance(0.2)) {
			return parts[0];
		}
		String pitch = parts[1].contains(".") || dice.chance(0.6) ? parts[1] : parts[1] + ".0";
		String text = parts[0] + dice.pick("X", "X", " X ", "x", "-") + pitch;
		return dice.chance(0.2) ? text + dice.pick("-6H", " - 6H", " 6H") : text;
	}

	private String unified(Size size) {
		String name = size.name();
		if (dice.chance(0.15) && !name.contains("#") && name.indexOf(' ') < 0) {
			String decimal = Figures.full(size.diameter() / 25.4, 4);
			name = dice.pick(decimal, decimal.startsWith("0") ? decimal.substring(1) : decimal) + "-" + Figures.trim(size.tpi(), 1);
		} else if (name.startsWith("#") && dice.chance(0.4)) {
			name = name.substring(1);
		} else if (dice.chance(0.3)) {
			name = name.replaceFirst(" ", "-");
		}
		return switch (dice.whole(0, 3)) {
			case 0 -> name;
			case 1 -> name + " " + size.series();
			case 2 -> name + " " + size.series() + "-2B";
			default -> name + size.series();
		};
	}

	/** The full and plain spelling, as notes have it. */
	String plain(Size size, boolean left) {
		String text = switch (size.series()) {
			case METRIC_COARSE, METRIC_FINE -> size.name() + dice.pick("", "-6H");
			case UNC, UNF -> size.name() + " " + size.series() + dice.pick("", "-2B");
			case NPT -> size.name() + " NPT";
			case G -> size.name();
		};
		return text + (left ? " LH" : "");
	}

	String cuttingTap(boolean through, boolean taper) {
		return taper ? "TAP" : through ? dice.pick("TAP", "TAP", "SPIRAL POINT TAP", "GUN TAP", "GEWINDEBOHRER")
				: dice.pick("TAP", "TAP", "SPIRAL FLUTE TAP", "BOTTOMING TAP", "GEWINDEBOHRER");
	}

	String formingTap() {
		return dice.pick("FORM TAP", "ROLL TAP", "FORMING TAP", "THREAD FORMING TAP", "ROLL FORM TAP");
	}

	/** A twist drill, its unit said where it is not the program's. */
	String drill(String name, boolean inchDrill) {
		boolean number = name.startsWith("#") || Character.isLetter(name.charAt(0));
		boolean fraction = name.contains("/");
		if (number) {
			return Character.isLetter(name.charAt(0))
				? dice.pick("LETTER " + name + " DRILL", "DRILL LETTER " + name, name + " DRILL")
				: dice.pick(name + " DRILL", "DRILL " + name, "NO. " + name.substring(1) + " DRILL");
		}
		if (fraction) {
			return dice.pick(name + " DRILL", "DRILL " + name, name + " IN DRILL");
		}
		if (inchDrill != inch || inch) {
			return dice.pick(name + "MM DRILL", "DRILL " + name + " MM", name + " MM DRILL");
		}
		return dice.pick("DRILL " + name, name + " DRILL", name + " MM DRILL", "D" + name + " DRILL", "DRILL D=" + name,
				"DRILL DIA " + name, "BOHRER " + name, "TWIST DRILL " + name + "MM");
	}

	/** A diameter in the program's unit. */
	String diameter(double mm) {
		String number = inch ? Figures.trim(mm / 25.4, 4) : Figures.trim(mm, 2);
		return dice.pick("D" + number, "DIA " + number, "D=" + number);
	}

	String length(double mm) {
		return inch ? Figures.trim(mm / 25.4, 4) : Figures.trim(mm, 3);
	}

	String maybeLower(String text) {
		return dice.chance(0.05) ? text.toLowerCase(Locale.ROOT) : text;
	}
}
