package truelead.checker.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.pass.MillPass;
import truelead.checker.program.BlockRef;
import truelead.checker.rule.Figures;
import truelead.checker.stroke.TapStroke;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** Tells which blocks touch a hole: those that spot, drill and countersink it and those that thread it. */
public final class HoleBlocks {

	private static final int MOST_HOLES = 50;

	/**
	 * A block that does something at a hole.
	 *
	 * @param line in the program itself, from 0; for a block of a called program the line of the call
	 * @param text what it does, with the tool and the level it goes down to
	 */
	public record Touch(int line, String text) {
	}

	private record Timed(int order, Touch touch) {
	}

	private final Work work;
	private final Figures figures;
	private final Map<Place, List<Timed>> touches = new LinkedHashMap<>();
	private final Map<Place, Hole> holes = new LinkedHashMap<>();

	private HoleBlocks(Work work) {
		this.work = work;
		this.figures = new Figures(work.shop().unit().value());
		work.holes().forEach(hole -> holes.put(hole.place(), hole));
		for (ThreadingOperation operation : work.operations()) {
			operation.holes().forEach(hole -> holes.putIfAbsent(hole.place(), hole));
		}
		holes.values().forEach(hole -> hole.cuts().forEach(cut -> add(hole.place(), cut.order(), cut.block(),
				name(cut.tool()) + cut.kind().name().toLowerCase(Locale.ROOT) + level(cut.tip()))));
		for (ThreadingOperation operation : work.operations()) {
			if (operation instanceof Tapping tapping) {
				for (TapStroke stroke : tapping.strokes()) {
					add(stroke.place(), stroke.order(), stroke.block(), name(stroke.tool()) + "tap" + level(stroke.bottom()));
				}
			} else if (operation instanceof ThreadMilling milling) {
				for (MillPass pass : milling.passes()) {
					add(pass.place(), pass.order(), pass.block(), name(pass.tool()) + "thread mill"
							+ level(Math.min(pass.startLevel(), pass.endLevel())));
				}
			}
		}
	}

	/** The holes that a line's block touches, each with all blocks that touch it in the order of execution; empty where it touches none. */
	public static Map<String, List<Touch>> at(Work work, int line) {
		HoleBlocks reading = new HoleBlocks(work);
		Map<String, List<Touch>> found = new LinkedHashMap<>();
		reading.touches.forEach((place, timed) -> {
			if (found.size() < MOST_HOLES && timed.stream().anyMatch(one -> one.touch.line == line)) {
				timed.sort((a, b) -> Integer.compare(a.order, b.order));
				found.put(reading.name(place), timed.stream().map(Timed::touch).toList());
			}
		});
		return found;
	}

	private void add(Place place, int order, BlockRef block, String text) {
		boolean here = block.file().name().equals(work.shop().program().name());
		int line = here ? block.line() : block.outermost().line();
		List<Timed> timed = touches.computeIfAbsent(place, fresh -> new ArrayList<>());
		Optional<Timed> same = timed.stream().filter(one -> one.order == order).findFirst();
		if (same.isEmpty()) {
			timed.add(new Timed(order, new Touch(line, text)));
		}
	}

	private static String name(ToolUse tool) {
		return (tool.number() >= 0 ? tool.name() : "tool") + " ";
	}

	private String level(double level) {
		return Double.isNaN(level) ? "" : " to " + figures.length(level);
	}

	private String name(Place place) {
		return place.known() ? "Hole at " + figures.length(place.u()) + ", " + figures.length(place.v())
				: "Hole at a place that is not known";
	}
}
