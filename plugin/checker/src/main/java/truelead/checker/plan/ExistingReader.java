package truelead.checker.plan;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.CheckResult;
import truelead.checker.job.Fact;
import truelead.checker.job.Stock;
import truelead.checker.job.StockGroup;
import truelead.checker.plan.Existing.Part;
import truelead.checker.rule.Figures;
import truelead.checker.rule.TapLead;
import truelead.checker.sheet.HoleSheet;
import truelead.checker.sheet.OperationSheet;
import truelead.checker.sheet.Sheets;
import truelead.checker.thread.DrillPoint;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.wanted.Wanted;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;

/** Takes from a program what a plan asks for, each part with who says it: programmed, called out, or assumed. */
public final class ExistingReader {

	/** As many holes as can be asked for by hand ({@link WishReader}; a choice of ours). */
	private static final int MOST_HOLES = 10_000;
	/** Of a drill's diameter, left below a blind hole: the limit of the rule wall-too-thin (common practice, no source). */
	private static final double LEAST_WALL = 0.25;

	private final ThreadingOperation operation;
	private final CheckResult result;
	private final Wanted wanted;
	private final OperationSheet sheet;
	private final Optional<HoleSheet> hole;
	private final Map<Part, String> origins = new EnumMap<>(Part.class);

	private ExistingReader(ThreadingOperation operation, CheckResult result) {
		this.operation = operation;
		this.result = result;
		this.wanted = operation.wanted();
		this.sheet = Sheets.of(operation);
		this.hole = sheet.holes().stream().filter(one -> !Double.isNaN(one.tip())).max(Comparator.comparingDouble(HoleSheet::tip));
	}

	/** The thread of an operation as a plan would be asked for it; empty where nothing names or implies a thread. */
	public static Optional<Existing> of(ThreadingOperation operation, CheckResult result) {
		ExistingReader reader = new ExistingReader(operation, result);
		return reader.wanted.thread().map(thread -> reader.read(thread.value(), thread.origin()));
	}

	/** The same where the program names no thread, or another is to be made in its place. */
	public static Existing of(ThreadingOperation operation, CheckResult result, ThreadSpec thread, String who) {
		return new ExistingReader(operation, result).read(thread, who);
	}

	private Existing read(ThreadSpec thread, String who) {
		origins.put(Part.THREAD, who);
		boolean through = wanted.through().map(Fact::value).orElse(false);
		origins.put(Part.HOLE, wanted.through().map(Fact::origin).orElse("assumed: nobody says that it goes through"));
		double depth = depth(thread, through);
		OptionalDouble bottom = through ? OptionalDouble.empty() : bottom(thread);
		origins.putIfAbsent(Part.BOTTOM, through ? "it goes through" : "nobody says how deep a tool may go");
		int count = count();
		Optional<Stock> stock = wanted.stock().map(fact -> spoken(fact.value()));
		origins.put(Part.STOCK, wanted.stock().map(Fact::origin).orElse("nobody says it"));
		origins.put(Part.MACHINE, result.assumptions().stream().filter(sentence -> sentence.contains("machine")).findFirst()
				.orElse("the machine profile that was given"));
		Request request = new Request(thread, stock, depth, bottom, through, count, result.work().shop().profile());
		double wall = wanted.wall().map(Fact::value).orElse(depth);
		return new Existing(sheet, hole, through ? request.inWall(Math.max(depth, wall)) : request, origins);
	}

	private double depth(ThreadSpec thread, boolean through) {
		Optional<Fact<Double>> said = wanted.depth().or(() -> through ? wanted.wall() : Optional.empty());
		if (said.filter(fact -> fact.value() > 0).isPresent()) {
			origins.put(Part.DEPTH, said.get().origin());
			return said.get().value();
		}
		double programmed = hole.map(one -> one.tip() - lead(thread)).orElse(Double.NaN);
		if (programmed > 0) {
			boolean formed = operation instanceof Tapping;
			origins.put(Part.DEPTH, "programmed: the tool goes to " + new Figures(sheet.unit()).length(hole.orElseThrow().tip())
					+ (formed ? ", less its " + TapLead.of(operation.tool().facts()).said() : "")
					+ (through ? "; nobody says how thick the wall is" : ""));
			return programmed;
		}
		origins.put(Part.DEPTH, "assumed: 1.5 diameters, as neither callout nor program tells it");
		return Request.usualDepth(thread);
	}

	/** What the tool makes no full thread with, mm. */
	private double lead(ThreadSpec thread) {
		return operation instanceof Tapping ? TapLead.of(operation.tool().facts()).length(thread.pitch()) : 0;
	}

	private OptionalDouble bottom(ThreadSpec thread) {
		double drill = thread.diameter() - thread.pitch();
		double cone = hole.map(one -> one.drillTip() - one.drillFull()).filter(length -> length > 0)
				.orElse(DrillPoint.length(drill, DrillPoint.ORDINARY));
		Optional<Double> full = wanted.holeBottom().map(fact -> fact.value() + cone);
		Optional<Double> wall = wanted.wall().map(fact -> fact.value() - LEAST_WALL * drill);
		if (full.isPresent() && full.get() <= wall.orElse(Double.MAX_VALUE)) {
			origins.put(Part.BOTTOM, wanted.holeBottom().orElseThrow().origin() + ", and the drill's point");
		} else if (wall.isPresent()) {
			origins.put(Part.BOTTOM, wanted.wall().orElseThrow().origin() + ", less a quarter of the drill (common practice)");
		}
		double limit = Math.min(full.orElse(Double.MAX_VALUE), wall.orElse(Double.MAX_VALUE));
		return limit > 0 && limit < Double.MAX_VALUE ? OptionalDouble.of(limit) : OptionalDouble.empty();
	}

	private int count() {
		int threaded = (int) Math.min(MOST_HOLES, result.work().group(operation).stream().flatMap(one -> one.holes()
				.stream()).distinct().count());
		if (wanted.count().filter(fact -> fact.value() >= 1 && fact.value() <= MOST_HOLES).isPresent()) {
			origins.put(Part.COUNT, wanted.count().get().origin());
			return wanted.count().get().value();
		}
		origins.put(Part.COUNT, threaded == 0 ? "assumed: no place is known" : "programmed: so many are threaded");
		return Math.max(1, threaded);
	}

	/** A stock whose words say its hardness too, as a note in a program is to say it. */
	private static Stock spoken(Stock stock) {
		String name = stock.words().isEmpty() && stock.group() != StockGroup.OTHER ? stock.group().name().replace('_', ' ') : stock.words();
		String hard = stock.hardness().isPresent() ? Figures.number(stock.hardness().getAsDouble(), 0) + " HRC" : "";
		return new Stock(stock.group(), name.isEmpty() ? hard : hard.isEmpty() ? name : name + ", " + hard, stock.hardness());
	}
}
