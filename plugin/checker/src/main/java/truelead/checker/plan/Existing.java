package truelead.checker.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.job.ToolFacts;
import truelead.checker.rule.Evidence;
import truelead.checker.rule.Figures;
import truelead.checker.rule.ToolName;
import truelead.checker.sheet.HoleSheet;
import truelead.checker.sheet.OperationSheet;
import truelead.checker.thread.TapStyle;
import truelead.checker.work.ThreadMilling;

/**
 * A thread that a program makes already, asked for as a plan would be: what else could make it?
 *
 * @param sheet   the operation in numbers
 * @param hole    its deepest hole; empty where no place is known
 * @param request the same thread as a request
 * @param origins who says each part of the request
 */
public record Existing(OperationSheet sheet, Optional<HoleSheet> hole, Request request, Map<Part, String> origins) {

	/** The parts of a request that come from somewhere. */
	public enum Part {
		THREAD("thread"), DEPTH("depth"), HOLE("hole"), BOTTOM("deepest point"), COUNT("holes"), STOCK("stock"), MACHINE("machine");

		private final String title;

		Part(String title) {
			this.title = title;
		}

		private String value(Request request) {
			Figure figure = new Figure(request.unit());
			return switch (this) {
				case THREAD -> request.thread().designation();
				case DEPTH -> figure.said(request.depth());
				case HOLE -> request.through() ? "through a wall of " + figure.said(request.wall()) : "blind";
				case BOTTOM -> request.bottom().isPresent() ? figure.said(request.bottom().getAsDouble()) : "no limit";
				case COUNT -> Integer.toString(request.count());
				case STOCK -> request.stock().map(s -> s.words()).orElse("not said");
				case MACHINE -> request.profile().name();
			};
		}
	}

	public Existing {
		origins = new EnumMap<>(origins);
	}

	/** The same with what a person changed; a part that is another now is from that person. */
	public Existing with(Request changed, String who) {
		Map<Part, String> now = new EnumMap<>(origins);
		for (Part part : Part.values()) {
			if (!part.value(request).equalsIgnoreCase(part.value(changed))) {
				now.put(part, who);
			}
		}
		return new Existing(sheet, hole, changed, now);
	}

	/** Every number with where it comes from, those of the request first, then the tool and what it does now. */
	public List<Evidence> numbers() {
		List<Evidence> numbers = new ArrayList<>();
		for (Part part : Part.values()) {
			numbers.add(new Evidence(part.title, part.value(request), origins.getOrDefault(part, ""), Optional.empty()));
		}
		Figures figures = new Figures(sheet.unit());
		String line = "programmed, line " + (sheet.block().outermost().line() + 1);
		numbers.add(new Evidence("tool now", sheet.tool().name() + ", " + way().map(Method::title).orElse("kind not said"),
				way().isPresent() ? "as the program names it" : line, Optional.empty()));
		if (!Double.isNaN(sheet.speed())) {
			numbers.add(new Evidence("speed now", "S" + Figures.number(sheet.speed(), 1) + surface().map(v -> ", " + Figures.number(v, 1)
					+ " m/min").orElse(""), line, Optional.empty()));
		}
		hole.filter(one -> one.made() && !Double.isNaN(one.drill()))
				.ifPresent(one -> numbers.add(new Evidence("hole now", figures.fine(one.drill()) + " by " + one.maker()
						+ (Double.isNaN(one.drillTip()) ? "" : ", point at " + figures.length(one.drillTip())), "programmed",
						Optional.empty())));
		return numbers;
	}

	/** How the thread is made now; empty where the program does not tell, as for a tap of which nobody says how its chips go. */
	public Optional<Method> way() {
		if (sheet.operation() instanceof ThreadMilling) {
			return Optional.of(sheet.tool().facts().comb().map(Fact::value).orElse(false) ? Method.COMB_MILL : Method.THREAD_MILL);
		}
		ToolFacts tap = sheet.tool().facts();
		return ToolName.forms(tap) ? Optional.of(Method.FORM_TAP) : tap.has(TapStyle.SPIRAL_POINT) ? Optional.of(Method.SPIRAL_POINT)
				: tap.has(TapStyle.SPIRAL_FLUTE) ? Optional.of(Method.SPIRAL_FLUTE) : tap.has(TapStyle.STRAIGHT_FLUTE)
				? Optional.of(Method.STRAIGHT_FLUTE) : Optional.empty();
	}

	/** The cutting speed of the tool now, m/min; empty where its diameter or its speed is not known. */
	private Optional<Double> surface() {
		double diameter = way().filter(way -> !way.tap()).isPresent()
				? sheet.tool().facts().diameter().map(d -> d.value()).orElse(Double.NaN) : request.thread().diameter();
		double surface = Math.PI * diameter * sheet.speed() / 1000;
		return Double.isNaN(surface) || surface <= 0 ? Optional.empty() : Optional.of(surface);
	}

	/**
	 * What a way has to do with the program as it is: whether it is made so now, its speed against the usual band, and the hole it would
	 * need.
	 */
	public List<String> beside(Weighing weighing) {
		List<String> beside = new ArrayList<>();
		boolean same = way().filter(weighing.method()::equals).isPresent();
		if (same) {
			SpeedBand band = SpeedBand.of(weighing.method(), request);
			beside.add("made so now by " + sheet.tool().name() + surface().map(v -> ", " + Figures.number(v, 1) + " m/min, "
					+ (v < band.low() - 1e-9 ? "below" : v > band.high() + 1e-9 ? "above" : "within")
					+ " the band from memory").orElse(""));
		}
		weighing.hole().ifPresent(needed -> hole.filter(HoleSheet::made).ifPresent(now -> beside.addAll(hole(needed, now))));
		return beside;
	}

	private List<String> hole(HolePlan needed, HoleSheet now) {
		List<String> beside = new ArrayList<>();
		Figure figure = new Figure(request.unit());
		double drill = needed.drill().diameter();
		if (!Double.isNaN(now.drill()) && Math.abs(now.drill() - drill) > 0.0005) {
			beside.add("another drill: " + figure.said(drill) + ", the program makes " + figure.said(now.drill()));
		}
		if (!request.through() && now.drillTip() < needed.drillTip() - 1e-6) {
			beside.add("a deeper hole: to " + figure.said(needed.drillTip()) + ", the program drills to " + figure.said(now.drillTip())
					+ "; see that there is room");
		}
		return beside.isEmpty() && !Double.isNaN(now.drill()) && !Double.isNaN(now.drillTip())
				? List.of("the hole can stay as it is") : beside;
	}
}
