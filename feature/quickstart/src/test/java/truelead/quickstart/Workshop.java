package truelead.quickstart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.IntToLongFunction;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Every kind of lambda, method reference and record that our code has, and what comes of them as text. */
public final class Workshop {

	record Tap(String name, double pitch, int pocket) {
	}

	record Every(boolean flag, byte small, short number, char letter, int whole, long big, float rough, double fine, String[] rows,
			List<Tap> taps) {
	}

	record Nothing() {
	}

	record Box<T>(T value) {
	}

	interface Rule {
		double limit(double pitch);

		default Supplier<String> said(double pitch) {
			return () -> text(limit(pitch));
		}

		private String text(double limit) {
			return String.format(Locale.ROOT, "%.3f", limit);
		}
	}

	enum Hand {
		RIGHT(turn -> turn), LEFT(turn -> -turn);

		final DoubleUnaryOperator way;

		Hand(DoubleUnaryOperator way) {
			this.way = way;
		}
	}

	private abstract static class Shift {
		private int parts = 7;

		Supplier<Integer> count() {
			return () -> parts;
		}

		protected String greet(String who) {
			return "morning " + who;
		}
	}

	private static final class Night extends Shift {
		@Override
		Supplier<Integer> count() {
			Supplier<Integer> before = super.count();
			return () -> before.get() + 1;
		}

		@Override
		protected String greet(String who) {
			Function<String, String> usual = super::greet;
			return usual.apply(who).toUpperCase(Locale.ROOT);
		}
	}

	private final int pocket = 4;

	private int own(int more) {
		return pocket + more;
	}

	private static String join(Object... parts) {
		return Arrays.toString(parts);
	}

	/** One line for each kind. */
	public static List<String> lines() {
		List<String> lines = new ArrayList<>();
		Workshop shop = new Workshop();
		List<Tap> taps = List.of(new Tap("M8", 1.25, 2), new Tap("M6", 1.0, 1), new Tap("M10", 1.5, 3));
		long base = 10L;
		double half = 0.5;
		char mark = 'T';
		lines.add(taps.stream().sorted(Comparator.comparingDouble(Tap::pitch).reversed()).map(Tap::name).collect(Collectors.joining(",")));
		lines.add(taps.stream().collect(Collectors.toMap(Tap::pocket, tap -> mark + tap.name(), (one, other) -> one, TreeMap::new))
				.toString());
		lines.add(IntStream.range(0, 3).mapToObj(shop::own).map(String::valueOf).toList().toString());
		lines.add(IntStream.range(0, 3).mapToLong(i -> i + base).sum() + " "
				+ IntStream.of(1, 2).asDoubleStream().map(d -> d * half).sum());
		ToDoubleFunction<Integer> widened = Integer::intValue;
		ToLongFunction<Integer> longer = i -> i;
		IntToLongFunction wide = Math::abs;
		lines.add(widened.applyAsDouble(5) + " " + longer.applyAsLong(6) + " " + wide.applyAsLong(7));
		IntFunction<int[][]> rows = int[][]::new;
		BiFunction<String, Double, Tap> maker = (name, pitch) -> new Tap(name, pitch, 9);
		Function<Integer, List<String>> lists = ArrayList::new;
		lines.add(rows.apply(2).length + " " + maker.apply("M3", 0.5) + " " + lists.apply(3));
		BiFunction<Object, Object, String> joined = Workshop::join;
		Supplier<Supplier<String>> nested = () -> () -> mark + "" + base + half;
		lines.add(joined.apply(1, "a") + nested.get().get());
		lines.add(((Rule) pitch -> pitch * 0.613).said(1.5).get());
		lines.add(Stream.of(Hand.values()).map(hand -> hand + "=" + hand.way.applyAsDouble(2)).toList().toString());
		Shift shift = new Night();
		lines.add(shift.count().get() + shift.greet("all"));
		Map<Tap, Integer> counts = new TreeMap<>(Comparator.comparing(Tap::name).thenComparing(Tap::pocket, Comparator.reverseOrder()));
		taps.forEach(tap -> counts.merge(tap, 1, Integer::sum));
		lines.add(counts.toString());
		UnaryOperator<String> trimmed = String::trim;
		Runnable answerUnused = () -> counts.remove(taps.get(0));
		answerUnused.run();
		lines.add(trimmed.apply(" a ") + counts.size());
		records(lines, taps);
		return lines;
	}

	private static void records(List<String> lines, List<Tap> taps) {
		record Local(int one) {
		}
		String[] rows = {"a"};
		Every every = new Every(true, (byte) -3, (short) 300, 'x', -7, 1L << 40, Float.NaN, -0.0, rows, taps);
		Every same = new Every(true, (byte) -3, (short) 300, 'x', -7, 1L << 40, Float.NaN, -0.0, rows, taps);
		Every zero = new Every(true, (byte) -3, (short) 300, 'x', -7, 1L << 40, Float.NaN, 0.0, rows, taps);
		lines.add(every.equals(same) + " " + every.equals(zero) + " " + every.equals(null) + " " + every.equals(taps.get(0)) + " "
				+ (every.hashCode() == same.hashCode()));
		lines.add(every.toString().replaceAll("@[0-9a-f]+", "@"));
		lines.add(taps.get(0).hashCode() + " " + taps.get(0) + new Nothing() + new Nothing().hashCode()
				+ new Nothing().equals(new Nothing()));
		lines.add(new Box<>(null) + " " + new Box<>(null).hashCode() + new Box<>(null).equals(new Box<>(null)) + new Local(3)
				+ new Box<>(new Box<>("b")).hashCode());
	}
}
