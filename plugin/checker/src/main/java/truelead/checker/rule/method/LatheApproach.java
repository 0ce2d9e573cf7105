package truelead.checker.rule.method;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import truelead.checker.hole.Cut;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/**
 * A drill of a lathe that comes in rapid to behind the face, Z0, where nothing has been drilled yet, while the tap of its hole and all
 * other tools in it start before the face: the sign of its approach is lost.
 */
final class LatheApproach {

	/** How near to the centre line a hole is on it, mm. */
	private static final double CENTRE = 0.05;
	/** So far behind the face a tool comes at least that is not meant, mm (a choice of ours). */
	private static final double BEHIND = 0.5;
	private static final double SAME = 1e-3;
	/** So many lines above a drill the block is looked for that brings it there. */
	private static final int LINES = 6;

	private LatheApproach() {
	}

	/** The findings of a work on a lathe, each about a tool. */
	static List<Draft> of(Rule rule, Work work) {
		List<Draft> drafts = new ArrayList<>();
		Set<Integer> told = new HashSet<>();
		for (Tapping tapping : work.tappings()) {
			for (TapStroke stroke : tapping.strokes().typical()) {
				boolean centre = stroke.place().plane().axis() == 2 && Math.hypot(stroke.place().u(), stroke.place().v()) <= CENTRE;
				if (centre && stroke.direction() < 0 && stroke.start() > 0) {
					behind(stroke).stream().filter(cut -> told.add(cut.tool().index())).forEach(cut -> drafts.add(draft(rule, cut)
							.on(tapping)));
				}
			}
		}
		return drafts;
	}

	/** The one drill of a stroke's hole that begins behind the face in the full; none where several do. */
	private static List<Cut> behind(TapStroke stroke) {
		List<Cut> behind = new ArrayList<>();
		double open = 0;
		for (Cut cut : stroke.hole().cuts()) {
			if (cut.order() < stroke.order() && cut.direction() < 0) {
				if (begin(cut) < -BEHIND && begin(cut) < open - BEHIND) {
					behind.add(cut);
				}
				if (Double.isNaN(cut.tip())) {
					return List.of();
				}
				open = Math.min(open, cut.tip());
			}
		}
		return behind.size() == 1 && behind.get(0).kind().drills() ? behind : List.of();
	}

	/** Where a tool comes to in rapid before it is fed, mm. */
	private static double begin(Cut cut) {
		return cut.step() instanceof Step.Stroke cycle ? cycle.initial() : cut.start();
	}

	private static Draft draft(Rule rule, Cut cut) {
		Figures figures = new Figures(cut.step().modal().unit());
		String level = Figures.number(begin(cut) / figures.unit().mm(), 4);
		return Draft.of(rule, Severity.ERROR, approach(cut), cut.tool().name() + " comes to Z" + level
				+ " in rapid, behind the face, where nothing is drilled yet, and its tap starts before the face: it is driven into the "
				+ "part; see the sign of Z").programmed("level", figures.length(begin(cut)), cut.block());
	}

	/** The word that says the level, in a block right above the drill's; else that block. */
	private static Location approach(Cut cut) {
		BlockRef block = cut.block();
		double level = begin(cut) / cut.step().modal().unit().mm();
		for (int line = block.line(); line >= Math.max(0, block.line() - LINES); line--) {
			for (Element.Word word : block.file().text().block(line).words()) {
				if (word.address() == 'Z' && word.value() instanceof Expression.Number number && Math.abs(number.value() - level) < SAME) {
					return new Location(block.file(), line, word.span());
				}
			}
		}
		return Location.of(block);
	}
}
