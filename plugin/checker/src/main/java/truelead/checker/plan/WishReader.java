package truelead.checker.plan;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.callout.Callout;
import truelead.checker.callout.CalloutReader;
import truelead.checker.callout.NamedFamily;
import truelead.checker.job.Fact;
import truelead.checker.job.Job;
import truelead.checker.job.Stock;
import truelead.checker.job.StockGroup;
import truelead.checker.plan.Wish.Field;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.InsertThread;
import truelead.checker.thread.ThreadSpec;

/** Makes a request of what a person typed, or says of each field why it cannot be used. */
final class WishReader {
	/** So many sizes are named where one is not known (a choice of ours). */
	private static final int SUGGESTIONS = 3;
	/** More holes are a slip of the keys (a choice of ours). */
	private static final int MOST_HOLES = 10_000;
	/** A callout is quoted up to so many characters (a choice of ours). */
	private static final int LONGEST_NAME = 60;
	private final Wish wish;
	private final MachineProfile profile;
	private final Optional<Request> known;
	private final Map<Field, String> problems = new EnumMap<>(Field.class);

	WishReader(Wish wish, MachineProfile profile, Optional<Request> known) {
		this.wish = wish;
		this.profile = profile;
		this.known = known;
	}

	Wish.Understood read() {
		Optional<Callout> callout = wish.text(Field.CALLOUT).flatMap(this::callout);
		Optional<ThreadSpec> thread = wish.text(Field.CALLOUT).isPresent() ? callout.map(Callout::spec) : known.map(Request::thread);
		if (thread.isEmpty()) {
			problems.putIfAbsent(Field.CALLOUT, "a thread as drawings write it is missing, such as M8 or 1/4-20 UNC");
		}
		LengthUnit unit = thread.map(ThreadSpec::unit).orElse(LengthUnit.MM);
		OptionalDouble wall = length(Field.THROUGH, unit);
		OptionalDouble bottom = length(Field.BOTTOM, unit);
		OptionalDouble typed = length(Field.DEPTH, unit);
		if (wish.text(Field.BOTTOM).isPresent() && wish.text(Field.THROUGH).isPresent()) {
			problems.putIfAbsent(Field.BOTTOM, "a hole is blind or goes through; give bottom or through");
		}
		if (typed.isPresent() && wall.isPresent() && typed.getAsDouble() > wall.getAsDouble() + 1e-9) {
			problems.put(Field.DEPTH, wish.text(Field.DEPTH).orElseThrow() + " is more than the wall of "
					+ wish.text(Field.THROUGH).orElseThrow());
		}
		Optional<Stock> stock = stock();
		int count = count(callout);
		if (!problems.isEmpty()) {
			return new Wish.Understood(Optional.empty(), problems);
		}
		ThreadSpec made = thread.orElseThrow();
		boolean through = wall.isPresent() || bottom.isEmpty() && known.map(Request::through).orElse(false);
		OptionalDouble limit = bottom.isPresent() || through ? bottom : known.map(Request::bottom).orElse(OptionalDouble.empty());
		double depth = depth(made, callout, wall, typed);
		Request request = new Request(made, stock, depth, limit, through, count, profile);
		double before = known.filter(k -> through && k.through()).map(Request::wall).orElse(depth);
		return new Wish.Understood(Optional.of(through ? request.inWall(wall.orElse(Math.max(depth, before))) : request), problems);
	}

	private Optional<Callout> callout(String typed) {
		Optional<Callout> read = CalloutReader.readExactly(typed);
		if (read.filter(Callout::wireInsert).isPresent()) {
			problems.put(Field.CALLOUT, "\"" + typed + "\" " + InsertThread.instead(read.get().spec()));
		} else if (read.isEmpty()) {
			problems.put(Field.CALLOUT, "\"" + typed + "\" " + NamedFamily.refusal(typed, SUGGESTIONS));
		}
		return read.filter(callout -> !callout.wireInsert());
	}

	private double depth(ThreadSpec thread, Optional<Callout> callout, OptionalDouble wall, OptionalDouble typed) {
		if (typed.isPresent()) {
			return typed.getAsDouble();
		}
		if (wall.isPresent() && !thread.system().taper()) {
			return callout.flatMap(Callout::depth).map(depth -> depth.mm(thread.unit())).filter(depth -> depth < wall.getAsDouble())
					.orElse(wall.getAsDouble());
		}
		return callout.flatMap(Callout::depth).map(depth -> depth.mm(thread.unit())).or(() -> known.map(Request::depth))
				.orElse(Request.usualDepth(thread));
	}

	private OptionalDouble length(Field field, LengthUnit bare) {
		Optional<String> typed = wish.text(field);
		if (typed.isEmpty()) {
			return OptionalDouble.empty();
		}
		OptionalDouble length = Lengths.mm(typed.get(), bare);
		if (length.isEmpty()) {
			problems.put(field, "\"" + typed.get() + "\" is no length up to 1000 mm; 12, 12mm or 0.5in is");
		}
		return length;
	}

	private int count(Optional<Callout> callout) {
		Optional<String> typed = wish.text(Field.COUNT);
		double count = typed.map(Lengths::number).orElseGet(() -> (double) callout.filter(c -> c.count().isPresent())
				.map(c -> c.count().getAsInt()).or(() -> known.map(Request::count)).orElse(1));
		if (!(count >= 1 && count <= MOST_HOLES && count == Math.rint(count))) {
			problems.put(Field.COUNT, typed.orElseGet(() -> Figure.plain(count, 0)) + " is no number of holes from 1 to " + MOST_HOLES);
		}
		return (int) count;
	}

	private Optional<Stock> stock() {
		Optional<String> name = wish.text(Field.STOCK);
		Optional<String> hardness = wish.text(Field.HARDNESS);
		if (name.isEmpty() && hardness.isEmpty()) {
			return known.flatMap(Request::stock);
		}
		if (!(name.map(this::plain).orElse(true) & hardness.map(this::hardness).orElse(true))) {
			return Optional.empty();
		}
		Optional<Stock> before = name.isPresent() ? Optional.empty() : known.flatMap(Request::stock);
		String words = name.orElse(before.map(WishReader::name).orElse(""));
		String note = words + (!words.isEmpty() && hardness.isPresent() ? ", " : "") + hardness.map(WishReader::spaced).orElse("");
		Optional<Stock> read = Job.EMPTY.withStock(note).stock().map(Fact::value);
		if (read.isEmpty()) {
			problems.put(Field.STOCK, "\"" + name.orElse(note)
					+ "\" is no stock that is known here; steel, stainless, cast iron, aluminium, brass, bronze, copper, titanium,"
					+ " nickel, magnesium, zinc or plastic");
			return Optional.empty();
		}
		return Optional.of(new Stock(before.map(Stock::group).orElse(read.get().group()), note.toUpperCase(Locale.ROOT),
				read.get().hardness()));
	}

	/** What a stock is called, its hardness left out. */
	private static String name(Stock stock) {
		return stock.group() == StockGroup.OTHER ? "" : stock.name().isEmpty() ? stock.group().name().replace('_', ' ') : stock.name();
	}

	/** Only what can stand in a comment of the program that is written. */
	private boolean plain(String name) {
		boolean plain = name.length() <= LONGEST_NAME
				&& name.chars().allMatch(c -> c < 128 && (Character.isLetterOrDigit(c) || " .,-".indexOf(c) >= 0));
		if (!plain) {
			problems.put(Field.STOCK, "takes a name of letters, digits, spaces, commas, dots and dashes, up to " + LONGEST_NAME
					+ " characters");
		}
		return plain;
	}

	private boolean hardness(String written) {
		String text = written.toUpperCase(Locale.ROOT);
		int scale = scale(text);
		double value = scale == 0 ? Double.NaN : Lengths.number(text.substring(0, text.length() - scale).strip());
		boolean known = value > 0 && value <= (scale == 3 ? 70 : 1000);
		if (!known) {
			problems.put(Field.HARDNESS, "\"" + written + "\" is no hardness; 28HRC, 220HB or 230HV is");
		}
		return known;
	}

	private static int scale(String text) {
		return text.endsWith("HRC") ? 3 : List.of("HB", "HV").stream().anyMatch(text::endsWith) ? 2 : 0;
	}

	private static String spaced(String written) {
		String text = written.toUpperCase(Locale.ROOT);
		int scale = scale(text);
		return text.substring(0, text.length() - scale).strip() + " " + text.substring(text.length() - scale);
	}
}
