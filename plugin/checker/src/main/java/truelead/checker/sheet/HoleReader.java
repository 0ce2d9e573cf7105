package truelead.checker.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.job.Fact;
import truelead.checker.machine.WorkOffset;
import truelead.checker.pass.MillPass;
import truelead.checker.program.BlockRef;
import truelead.checker.program.LengthUnit;
import truelead.checker.rule.Figures;
import truelead.checker.stroke.TapStroke;
import truelead.checker.wanted.Wanted;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;

/** Reads the holes of an operation: what made each, how deep it is, how deep the tool goes. */
final class HoleReader {

	private static final String AXES = "XYZ";

	private final double surface;
	/** Where countersinks are measured: the surface where a person says it, else level 0. */
	private final double top;
	private final double tapered;
	/** Major diameter of the thread, mm; NaN where none is known. */
	private final double thread;
	private final LengthUnit unit;

	/** {@code tapered} is the length of the tool that forms no full thread, mm. */
	HoleReader(Wanted wanted, double tapered, LengthUnit unit) {
		this.surface = wanted.surface().value();
		this.top = wanted.surface().stated() ? surface : 0;
		this.tapered = tapered;
		this.thread = wanted.thread().map(known -> known.value().diameter()).orElse(Double.NaN);
		this.unit = unit;
	}

	List<HoleSheet> tapped(Tapping tapping) {
		Map<Place, HoleSheet> holes = new LinkedHashMap<>();
		for (TapStroke stroke : tapping.strokes()) {
			int down = stroke.direction();
			holes.putIfAbsent(stroke.place(), sheet(stroke.hole(), stroke.block(), stroke.order(), depth(stroke.bottom(), down),
					-depth(stroke.start(), down)));
		}
		return new ArrayList<>(holes.values());
	}

	List<HoleSheet> milled(ThreadMilling milling) {
		Map<Place, HoleSheet> holes = new LinkedHashMap<>();
		for (MillPass pass : milling.passes()) {
			int into = pass.direction();
			double one = depth(pass.startLevel(), into);
			double other = depth(pass.endLevel(), into);
			holes.putIfAbsent(pass.place(), sheet(pass.hole(), pass.block(), pass.order(), Math.max(one, other), -Math.min(one, other)));
		}
		return new ArrayList<>(holes.values());
	}

	private HoleSheet sheet(Hole hole, BlockRef block, int order, double tip, double start) {
		Optional<Cut> sized = hole.threadedBefore(order, thread);
		Optional<Cut> deepest = hole.deepestBefore(order);
		double edge = hole.edgeBefore(order).stream().map(cut -> cut.widthAt(top)).flatMap(Optional::stream).mapToDouble(Fact::value).max()
				.orElse(Double.NaN);
		return new HoleSheet(label(hole.place()), block, hole.place().u(), hole.place().v(), hole.madeBefore(order),
				sized.flatMap(Cut::diameter).map(Fact::value).orElse(Double.NaN),
				deepest.map(cut -> depth(cut.shoulder(), cut.direction())).orElse(Double.NaN),
				deepest.map(cut -> depth(cut.tip(), cut.direction())).orElse(Double.NaN), tip, tip - tapered, start, edge,
				deepest.map(cut -> cut.tool().name() + " " + cut.kind().name().toLowerCase(Locale.ROOT)).orElse(""));
	}

	/** Depth below the top of a level, for a tool that goes in that direction. */
	private double depth(double level, int direction) {
		return direction * (level - surface);
	}

	private String label(Place place) {
		if (!place.known()) {
			return "place not known";
		}
		return WorkOffset.name(place.workOffset()) + " " + AXES.charAt(place.plane().first()) + shown(place.u()) + " "
				+ AXES.charAt(place.plane().second()) + shown(place.v());
	}

	private String shown(double mm) {
		return Figures.number(mm / unit.mm(), unit == LengthUnit.INCH ? 4 : 3);
	}
}
