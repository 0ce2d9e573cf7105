package truelead.audit.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import truelead.checker.rule.Figures;
import truelead.checker.sheet.HoleSheet;
import truelead.checker.sheet.OperationSheet;
import truelead.checker.sheet.SheetFigures;
import truelead.checker.sheet.ThreadSheet;
import truelead.checker.sheet.TurnedSheet;

/** What is different between two states of one operation, in the words and unit of the new one. */
final class SheetDifference {

	private static final double SAME = 1e-6;
	private static final int MOST_NAMED = 4;

	private final List<String> changes = new ArrayList<>();
	private final Figures figures;

	private SheetDifference(ThreadSheet after) {
		this.figures = new Figures(after.unit());
	}

	static List<String> of(ThreadSheet before, ThreadSheet after) {
		SheetDifference difference = new SheetDifference(after);
		difference.text("thread", before.name(), after.name());
		difference.text("tool", before.tool().name(), after.tool().name());
		difference.text("way of threading", before.method(), after.method());
		difference.text("feed", before.feed(), after.feed());
		difference.text("speed", speed(before), speed(after));
		difference.text("spindle", before.turning(), after.turning());
		difference.length("advance a turn", before.advance(), after.advance());
		if (before instanceof OperationSheet then && after instanceof OperationSheet now) {
			difference.inHoles(then, now);
		} else if (before instanceof TurnedSheet then && after instanceof TurnedSheet now) {
			difference.turned(then, now);
		}
		return difference.changes;
	}

	private void inHoles(OperationSheet before, OperationSheet after) {
		length("depth called out", before.called(), after.called());
		length("cut diameter", before.cutDiameter(), after.cutDiameter());
		holes(before, after);
	}

	private void turned(TurnedSheet before, TurnedSheet after) {
		text("hand", SheetFigures.hand(before), SheetFigures.hand(after));
		text("starts", SheetFigures.starts(before), SheetFigures.starts(after));
		level("begins at", before.from(), after.from());
		level("ends at", before.to(), after.to());
		length("goes to diameter", before.diameter(), after.diameter());
		passes(before, after);
		length("height by the cycle", before.height(), after.height());
		// what it is cut in or on is known only where that suits the thread
		if (!Double.isNaN(before.bore() + after.bore())) {
			length("bore", before.bore(), after.bore());
		}
		if (!Double.isNaN(before.prepared() + after.prepared())) {
			level((after.cut().inside() ? "bore" : "outside turned") + " to", before.prepared(), after.prepared());
		}
	}

	private void passes(TurnedSheet before, TurnedSheet after) {
		text("passes", SheetFigures.count(before), SheetFigures.count(after));
		text("first pass", SheetFigures.first(before, figures), SheetFigures.first(after, figures));
		List<Double> then = before.diameters();
		List<Double> now = after.diameters();
		if (before.dividedByControl() || after.dividedByControl()) {
			boolean otherwise = !differs(before.diameter(), after.diameter()) && then.size() == now.size()
					&& IntStream.range(0, now.size()).anyMatch(i -> differs(then.get(i), now.get(i)));
			changes.addAll(otherwise ? List.of("the depth is divided into passes otherwise") : List.of());
			return;
		}
		for (int i = 1; then.size() == now.size() && i < then.size(); i++) {
			// where the deepest goes is told already
			boolean told = !differs(then.get(i), before.diameter()) && !differs(now.get(i), after.diameter());
			length("pass " + (i + 1) + " to diameter", then.get(i), told ? then.get(i) : now.get(i));
		}
	}

	private void level(String what, double before, double after) {
		if (differs(before, after)) {
			changes.add(what + " " + SheetFigures.level(before, figures) + " \u2192 " + SheetFigures.level(after, figures));
		}
	}

	private static String speed(ThreadSheet sheet) {
		return Double.isNaN(sheet.speed()) ? "not known" : "S" + Figures.number(sheet.speed(), 3);
	}

	private void text(String what, String before, String after) {
		if (!before.equals(after)) {
			changes.add(what + " " + (before.isEmpty() ? "none" : before) + " \u2192 " + (after.isEmpty() ? "none" : after));
		}
	}

	private void length(String what, double before, double after) {
		if (differs(before, after)) {
			changes.add(what + " " + shown(before, false) + " \u2192 " + shown(after, false));
		}
	}

	private void holes(OperationSheet before, OperationSheet after) {
		Map<String, HoleSheet> then = byLabel(before);
		Map<String, HoleSheet> now = byLabel(after);
		named("position new", now.keySet().stream().filter(label -> !then.containsKey(label)).toList());
		named("position gone", then.keySet().stream().filter(label -> !now.containsKey(label)).toList());
		each("end of the tool", then, now, lengths(HoleSheet::tip));
		each("R plane above the top", then, now, lengths(HoleSheet::start));
		each("hole made by", then, now, (old, hole) -> old.made() == hole.made() ? Optional.empty() : Optional.of(old.madeBy() + " \u2192 "
				+ hole.madeBy()));
		each("diameter before threading", then, now, made(HoleSheet::drill));
		each("full diameter to", then, now, made(HoleSheet::drillFull));
		each("countersink", then, now, made(HoleSheet::edge));
	}

	private void named(String what, List<String> labels) {
		if (!labels.isEmpty()) {
			String more = labels.size() > MOST_NAMED ? " and " + (labels.size() - MOST_NAMED) + " more" : "";
			changes.add(what + " " + labels.stream().limit(MOST_NAMED).collect(Collectors.joining(", ")) + more);
		}
	}

	/** What is different between two states of a hole in a length, mm. */
	private BiFunction<HoleSheet, HoleSheet, Optional<String>> lengths(ToDoubleFunction<HoleSheet> length) {
		return (old, hole) -> differs(length.applyAsDouble(old), length.applyAsDouble(hole))
				? Optional.of(shown(length.applyAsDouble(old), length.applyAsDouble(hole))) : Optional.empty();
	}

	/** The same of a hole that is made in both. */
	private BiFunction<HoleSheet, HoleSheet, Optional<String>> made(ToDoubleFunction<HoleSheet> length) {
		return (old, hole) -> old.made() && hole.made() ? lengths(length).apply(old, hole) : Optional.empty();
	}

	/** One clause for each different pair of values, with the number of holes where it is not all of them. */
	private void each(String what, Map<String, HoleSheet> then, Map<String, HoleSheet> now,
			BiFunction<HoleSheet, HoleSheet, Optional<String>> difference) {
		Map<String, List<String>> clauses = new LinkedHashMap<>();
		now.forEach((label, hole) -> {
			HoleSheet old = then.containsKey(label) ? then.get(label) : then.isEmpty() || now.keySet().stream().anyMatch(then::containsKey)
					? null : then.values().iterator().next();
			if (old != null) {
				difference.apply(old, hole).ifPresent(clause -> clauses.computeIfAbsent(what + " " + clause, any -> new ArrayList<>())
						.add(label));
			}
		});
		clauses.forEach((clause, labels) ->
				changes.add(clause + (labels.size() == now.size() ? "" : " at " + (labels.size() <= 2 ? String.join(", ", labels)
						: labels.size() + " holes"))));
	}

	private static Map<String, HoleSheet> byLabel(OperationSheet sheet) {
		Map<String, HoleSheet> holes = new LinkedHashMap<>();
		sheet.holes().forEach(hole -> holes.putIfAbsent(hole.label(), hole));
		return holes;
	}

	private static boolean differs(double before, double after) {
		return Double.isNaN(before) != Double.isNaN(after) || Math.abs(before - after) > SAME;
	}

	/** Both lengths with the decimals of the drawings, or with more where the difference would not be seen. */
	private String shown(double before, double after) {
		boolean seen = Double.isNaN(before) || Double.isNaN(after) || !figures.length(before).equals(figures.length(after));
		return shown(before, seen) + " \u2192 " + shown(after, seen);
	}

	private String shown(double mm, boolean coarse) {
		return Double.isNaN(mm) ? "not known" : coarse ? figures.length(mm) : figures.fine(mm);
	}
}
