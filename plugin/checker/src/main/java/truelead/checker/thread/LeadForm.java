package truelead.checker.thread;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * The lead of a tap: the ground-down threads at its end that do the work.
 *
 * @param standard the standard that names it, or {@code forming} for practice with forming taps
 * @param name     {@code C}, {@code plug}
 * @param least    the shortest, in threads
 * @param most     the longest, in threads
 * @param forming  for forming taps
 * @param use      what it is for
 * @param source   where the numbers come from
 */
public record LeadForm(String standard, String name, double least, double most, boolean forming, String use, String source) {
	private static final List<LeadForm> ALL = DataFile.rows(LeadForm.class, "tap-lead.csv").stream()
			.map(r -> new LeadForm(r.get("standard"), r.get("name"), DataFile.number(r, "least"), DataFile.number(r, "most"),
					r.get("kind").equals("form"), r.get("use"), r.get("source"))).toList();

	/** Every form and name. */
	public static List<LeadForm> all() {
		return ALL;
	}

	/** A form by its letter ({@code C}) or name ({@code plug}), for cutting or forming taps; empty for one that is none. */
	public static Optional<LeadForm> of(String name, boolean forming) {
		String wanted = name.toLowerCase(Locale.ROOT);
		return ALL.stream().filter(f -> f.forming() == forming && f.name().toLowerCase(Locale.ROOT).equals(wanted)).findFirst();
	}

	/** The lead that a tap most likely has: what its comment says, else B with spiral point, C otherwise; for forming taps C. */
	public static LeadForm typical(ToolKind kind, Set<TapStyle> styles) {
		if (kind == ToolKind.FORM_TAP) {
			return of("C", true).orElseThrow();
		}
		String name = styles.contains(TapStyle.TAPER_LEAD) ? "taper" : styles.contains(TapStyle.PLUG_LEAD) ? "plug"
				: styles.contains(TapStyle.MODIFIED_BOTTOMING_LEAD) ? "modified bottoming"
				: styles.contains(TapStyle.BOTTOMING_LEAD) ? "bottoming" : styles.contains(TapStyle.SPIRAL_POINT) ? "B" : "C";
		return of(name, false).orElseThrow();
	}

	/** The middle of the range, threads. */
	public double typicalThreads() {
		return (least + most) / 2;
	}

	/** The length in mm of so many threads of lead. */
	public static double length(ThreadSpec spec, double threads) {
		return threads * spec.pitch();
	}
}
