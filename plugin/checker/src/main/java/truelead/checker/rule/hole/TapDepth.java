package truelead.checker.rule.hole;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.hole.Place;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.machine.Step;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.TapLead;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;

/**
 * How deep a tap goes, from the surface of the hole; all in mm.
 *
 * @param tapping the operation
 * @param stroke  the stroke
 * @param surface level of the surface
 * @param pitch   the thread's pitch
 * @param lead    the tap's lead
 */
record TapDepth(Tapping tapping, TapStroke stroke, Fact<Double> surface, double pitch, TapLead lead) {

	/** No tap is coarser than this, mm: M64 has 6. */
	private static final double COARSEST = 8;

	/** The depth of a stroke of a tapping operation; empty where levels or pitch are not known. */
	static Optional<TapDepth> of(Tapping tapping, TapStroke stroke) {
		boolean known = !Double.isNaN(stroke.bottom()) && !Double.isNaN(stroke.start()) && tapping.method().taps();
		double pitch = tapping.wanted().thread().map(t -> t.value().pitch()).orElseGet(stroke::advance);
		return known && pitch > 0 && pitch <= COARSEST
				? Optional.of(new TapDepth(tapping, stroke, tapping.surface(stroke), pitch, TapLead.of(tapping.tool().facts())))
				: Optional.empty();
	}

	/** The deepest stroke of an operation. */
	static Optional<TapDepth> deepest(Tapping tapping) {
		return farthest(tapping, tapping.strokes().typical(), 1);
	}

	/** The shallowest stroke of an operation; of a hole that is tapped in several bites the deepest one counts. */
	static Optional<TapDepth> shallowest(Tapping tapping) {
		return farthest(tapping, lastBites(tapping.strokes().typical()), -1);
	}

	private static Collection<TapStroke> lastBites(List<TapStroke> strokes) {
		Map<Place, TapStroke> last = new LinkedHashMap<>();
		strokes.forEach(stroke -> last.merge(stroke.place(), stroke, (one, other) -> one.direction() * (one.bottom() - other.bottom()) >= 0
				? one : other));
		return last.values();
	}

	private static Optional<TapDepth> farthest(Tapping tapping, Collection<TapStroke> strokes, int way) {
		Optional<TapDepth> farthest = Optional.empty();
		for (TapStroke stroke : strokes) {
			Optional<TapDepth> depth = of(tapping, stroke);
			if (depth.isPresent() && (farthest.isEmpty() || way * Double.compare(depth.get().tip(), farthest.get().tip()) > 0)) {
				farthest = depth;
			}
		}
		return farthest;
	}

	/** Depth of a level below the surface, positive into the part. */
	double below(double level) {
		return stroke.direction() * (level - surface.value());
	}

	/** The level at a depth below the surface. */
	double level(double depth) {
		return surface.value() + stroke.direction() * depth;
	}

	/** Depth of the tap's tip. */
	double tip() {
		return below(stroke.bottom());
	}

	/** Whether the surface was said, or is the level 0 that stands above the tip; a guess from the R plane proves nothing. */
	boolean surfaceKnown() {
		return surface.stated() || surface.source() == FactSource.DEFAULT && tip() > 0 && below(stroke.start()) < pitch / 2;
	}

	/** The same from the lower one of the R levels of tap and drill, above which no hole opens: the tap goes no deeper than that says. */
	TapDepth fromLowestStart() {
		int into = stroke.direction();
		double drill = stroke.hole().deepestBefore(stroke.order()).map(cut -> into * cut.start()).filter(start -> !Double.isNaN(start))
				.orElse(Double.NEGATIVE_INFINITY);
		double lowest = into * Math.max(into * stroke.start(), drill);
		return new TapDepth(tapping, stroke, Fact.of(lowest, FactSource.IMPLIED, "the lowest R"), pitch, lead);
	}

	Figures figures() {
		return new Figures(stroke.modal().unit());
	}

	/** The word that says the depth. */
	Setting depthWord() {
		return stroke.step() instanceof Step.Stroke s ? s.cycle().word("XYZ".charAt(stroke.place().plane().axis())).orElse(Setting.NONE)
				: Setting.NONE;
	}

	/** How a message names the depth: {@code Z-12}, or {@code the tap}. */
	String said() {
		return depthWord().word().map(WordRef::written).map(Figures::tight).orElse("the block");
	}

	/** Adds depth, surface and lead to a finding. */
	Draft evidence(Draft draft) {
		Figures figures = figures();
		draft.programmed("depth of the tap's tip", figures.length(tip()), depthWord()).known("surface", figures.length(surface.value()),
				surface).known("lead of the tap", figures.length(lead.length(pitch)), lead.turns());
		String shown = figures.advance(pitch) + " " + figures.symbol();
		return tapping.wanted().thread().map(t -> draft.known("pitch", shown, t))
				.orElseGet(() -> draft.from("pitch", shown, "the feed a turn, no thread is named"));
	}
}
