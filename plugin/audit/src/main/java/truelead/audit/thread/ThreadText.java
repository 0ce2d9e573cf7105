package truelead.audit.thread;

import java.io.PrintStream;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.BlindHole;
import truelead.checker.thread.BoltLimits;
import truelead.checker.thread.Countersink;
import truelead.checker.thread.DrillPoint;
import truelead.checker.thread.DrillSizes;
import truelead.checker.thread.FormHole;
import truelead.checker.thread.LeadForm;
import truelead.checker.thread.Limits;
import truelead.checker.thread.TapDrill;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;

/** Writes a thread for the person at the bench: drills, countersink and hole, limits, pins and leads, with the source of each. */
final class ThreadText {
	private static final double DEPTH_IN_DIAMETERS = 1.5;

	private final PrintStream out;
	private final ThreadSheet sheet;
	private final ThreadSpec spec;
	private final Optional<Double> depth;

	ThreadText(PrintStream out, ThreadSheet sheet, Optional<Double> depth) {
		this.out = out;
		this.sheet = sheet;
		this.spec = sheet.spec();
		this.depth = depth;
	}

	void print() {
		line("%s   (%s)", spec.designation(), unit());
		sheet.assumed().forEach(note -> line("  %s", note));
		if (!ThreadTable.standard().isStandard(spec)) {
			line("  diameter and pitch are in no series of the standard");
		}
		String lead = spec.starts() > 1 ? ", lead " + length(spec.lead()) + " (" + spec.starts() + " starts)" : "";
		String tpi = spec.tpi() > 0 ? ", " + BigDecimal.valueOf(spec.tpi()).stripTrailingZeros().toPlainString() + " threads an inch" : "";
		line("  nominal %s, pitch %s%s%s", length(spec.diameter()), length(spec.pitch()), tpi, lead);
		// the drill is what most look up
		drills();
		if (!spec.system().pipe()) {
			line("  countersink %s to %s; DIN 76-1 (from memory)", length(Countersink.smallest(spec)), length(Countersink.largest(spec)));
			blindHole();
		}
		pipe();
		boolean classOfScrews = spec.threadClass().isPresent() && !sheet.bolts().isEmpty();
		if (!classOfScrews) {
			limits();
		}
		outside();
		if (!spec.system().pipe()) {
			leads();
		}
		line("");
	}

	private void limits() {
		line("  class  minor diameter      pitch diameter      major diameter");
		for (ThreadSheet.ClassLine each : sheet.classes()) {
			String name = each.spec().threadClass().orElse("-");
			if (each.limits().isEmpty()) {
				line("  %-5s  %s", name, ThreadSheet.ClassLine.NOT_IN_TABLE);
				continue;
			}
			Limits l = each.limits().get();
			line("  %-5s  %-18s  %-18s  %s min", name, range(l.minorMin(), l.minorMax()), range(l.pitchMin(), l.pitchMax()),
					number(l.majorMin()));
			line("         %s", l.source());
		}
		for (ThreadSheet.ClassLine each : sheet.classes()) {
			each.limits().ifPresent(l -> pins(each.spec(), l));
		}
	}

	/** Limits of screws; the ring gauge carries the designation (ISO 1502, from memory). */
	private void outside() {
		for (BoltLimits l : sheet.bolts()) {
			line("  outside %s: major diameter %s to %s, pitch diameter %s to %s; ring gauge %s, go and no-go", l.threadClass(),
					l.majorMin().toPlainString(), l.majorMax().toPlainString(), l.pitchMin().toPlainString(), l.pitchMax().toPlainString(),
					spec.withClass(l.threadClass()).designation());
			line("         %s", l.source());
		}
	}

	/** Pins for the hole are its limits; the plug gauge carries the designation (ISO 1502, from memory). */
	private void pins(ThreadSpec classed, Limits l) {
		if (l.minorMin().isPresent() && l.minorMax().isPresent()) {
			line("  pins%s: go %s, no-go %s; plug gauge %s, go and no-go", l.threadClass().isEmpty() ? "" : " " + l.threadClass(),
					number(l.minorMin()), number(l.minorMax()), classed.designation());
		}
	}

	private void pipe() {
		ThreadTable table = ThreadTable.standard();
		say("pitch diameter at the small end E0", table.smallEndPitchDiameter(spec));
		say("hand-tight or gauge length", table.gaugeLength(spec));
		say("effective or useful length", table.usefulLength(spec));
		if (spec.taperOnDiameter() > 0) {
			line("  taper 1 in 16 on the diameter");
		}
	}

	private void say(String what, OptionalDouble mm) {
		mm.ifPresent(value -> line("  %s %s", what, length(value)));
	}

	private void drills() {
		sheet.tapDrill().ifPresentOrElse(d -> {
			line("  drill for cutting %s (%s)%s; %s", d.name(), length(d.diameter()), percent(d), d.source());
		}, () -> line("  drill for cutting: not in the table"));
		boolean formed = spec.system().formable();
		if (formed && sheet.formDrill().isEmpty()) {
			line("  hole for forming %s; no drill is made near it; Machinery's Handbook, 65 %% of thread",
					length(FormHole.diameter(spec, FormHole.RECOMMENDED_PERCENT)));
		}
		sheet.formDrill().ifPresent(d ->
				line("  drill for forming %s (%s), %.0f %% thread, formed minor diameter about %s; Machinery's Handbook: 65 %% "
						+ "recommended, 60 %% the least%s", d.name(), length(d.diameter()), FormHole.percent(spec, d.diameter()),
						length(FormHole.formedMinorDiameter(spec, d.diameter())), formedLimit()));
	}

	/** A formed crest is not full, so that the minor diameter is commonly let go to the limit of 7H. */
	private String formedLimit() {
		return spec.system() != ThreadSystem.METRIC ? "" : ThreadTable.standard().limits(spec, "7H").flatMap(Limits::minorMax)
				.map(l -> "; minor diameter commonly accepted up to 7H, " + l.toPlainString() + " (from memory)").orElse("");
	}

	private String percent(TapDrill drill) {
		if (spec.system().taper()) {
			return "";
		}
		if (!spec.system().formable()) {
			return String.format(Locale.ROOT, ", %.1f %% thread by %.3f P", TapDrill.percentOfThread(spec, drill.diameter()),
					2 * spec.system().depthOverPitch());
		}
		return String.format(Locale.ROOT, ", %.1f %% thread by 1.299 P, %.1f %% by the basic depth 1.083 P",
				TapDrill.percentOfThread(spec, drill.diameter()), TapDrill.percentOfBasicDepth(spec, drill.diameter()));
	}

	private void leads() {
		for (LeadForm form : LeadForm.all()) {
			line("  lead %-20s %4s to %-4s threads, %s to %s: %s; %s", (form.forming() ? "forming " : "") + form.name(), trim(form.least()),
					trim(form.most()), length(LeadForm.length(spec, form.least())), length(LeadForm.length(spec, form.most())), form.use(),
					form.source());
		}
	}

	private void blindHole() {
		double threads = depth.map(d -> d * spec.unit().mm()).orElse(DEPTH_IN_DIAMETERS * spec.diameter());
		sheet.tapDrill().ifPresent(d -> blindHole("cut", threads, false, d.diameter()));
		sheet.formDrill().map(DrillSizes.Drill::diameter).ifPresent(d -> blindHole("formed", threads, true, d));
	}

	private void blindHole(String how, double threads, boolean forming, double drill) {
		LeadForm lead = LeadForm.of("C", forming).orElseThrow();
		BlindHole hole = BlindHole.shortest(spec, threads, lead.most(), forming, drill, DrillPoint.ORDINARY);
		line("  shortest blind hole for %s of thread, %s: full diameter to %s, tip of a 118 degree drill at %s (lead %s threads; pitches "
				+ "left below the tap: %s; common practice, no source)", length(threads), how, length(hole.fullDiameterDepth()),
				length(hole.drillTipDepth()), trim(lead.most()), trim(forming ? BlindHole.CLEARANCE_FORM : BlindHole.CLEARANCE_CUT));
	}

	private String unit() {
		return spec.unit() == LengthUnit.MM ? "mm" : "inch";
	}

	private String length(double mm) {
		return String.format(Locale.ROOT, spec.unit() == LengthUnit.MM ? "%.3f" : "%.4f", mm / spec.unit().mm());
	}

	private static String range(Optional<BigDecimal> least, Optional<BigDecimal> most) {
		return least.isEmpty() && most.isEmpty() ? "-" : number(least) + " to " + number(most);
	}

	private static String number(Optional<BigDecimal> value) {
		return value.map(BigDecimal::toPlainString).orElse("-");
	}

	private static String trim(double value) {
		return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
	}

	private void line(String format, Object... values) {
		out.print(String.format(Locale.ROOT, format, values) + "\n");
	}
}
