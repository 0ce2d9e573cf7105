package truelead.audit.plan;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import truelead.audit.report.SafeJson;
import truelead.checker.plan.Demand;
import truelead.checker.plan.Existing;
import truelead.checker.plan.Figure;
import truelead.checker.plan.HolePlan;
import truelead.checker.plan.MillCut;
import truelead.checker.plan.Plan;
import truelead.checker.plan.SpeedBand;
import truelead.checker.plan.Weighing;
import truelead.checker.program.LengthUnit;

/**
 * Writes a plan as one JSON object, lengths in the unit that {@code unit} names; {@code blocks} is the program, empty where no way makes
 * the thread.
 */
final class PlanJson {
	private static final Gson GSON = new GsonBuilder().serializeNulls().setPrettyPrinting().disableHtmlEscaping().create();

	private PlanJson() {
	}

	static String write(Plan plan, Optional<Existing> existing) {
		LengthUnit unit = plan.request().unit();
		JsonObject object = new JsonObject();
		object.addProperty("designation", plan.request().thread().designation());
		object.addProperty("unit", unit == LengthUnit.MM ? "mm" : "inch");
		object.addProperty("depth", length(plan.request().depth(), unit));
		object.addProperty("through", plan.request().through());
		object.addProperty("wall", plan.request().through() ? length(plan.request().wall(), unit) : null);
		object.addProperty("count", plan.request().count());
		existing.ifPresent(one -> object.add("from", from(one)));
		object.addProperty("recommended", plan.chosen().map(c -> name(c)).orElse(null));
		object.addProperty("why", plan.why());
		object.addProperty("deepestMethod", plan.deepest().map(d -> name(d)).orElse(null));
		object.addProperty("deepestDepth", plan.deepest().map(d -> length(d.deepest(), unit)).orElse(null));
		JsonArray methods = new JsonArray();
		plan.weighings().forEach(weighing -> methods.add(method(plan, weighing, existing)));
		object.add("methods", methods);
		object.add("blocks", strings(plan.blocks()));
		return SafeJson.escaped(GSON.toJson(object)) + "\n";
	}

	private static JsonObject method(Plan plan, Weighing weighing, Optional<Existing> existing) {
		JsonObject object = new JsonObject();
		object.addProperty("method", name(weighing));
		object.addProperty("title", weighing.method().title());
		object.add("for", strings(weighing.pros()));
		object.add("against", strings(weighing.cons()));
		object.add("ruledOut", strings(weighing.ruledOut()));
		object.addProperty("source", "common practice, no source");
		existing.ifPresent(one -> {
			object.addProperty("now", one.way().filter(weighing.method()::equals).isPresent());
			object.add("beside", strings(one.beside(weighing)));
		});
		weighing.hole().ifPresent(hole -> hole(object, hole, plan.request().unit()));
		weighing.demand().ifPresent(demand -> demand(object, demand));
		if (weighing.method().tap()) {
			weighing.demand().ifPresent(demand -> feeds(object, plan, demand));
		}
		MillCut.in(weighing, plan.request()).ifPresent(cut -> mill(object, cut, plan.request().unit()));
		SpeedBand band = SpeedBand.of(weighing.method(), plan.request());
		object.addProperty("speedLow", band.low());
		object.addProperty("speedHigh", band.high());
		object.addProperty("speedSource", "m/min, from memory; sources differ by two to three times");
		return object;
	}

	private static JsonObject from(Existing existing) {
		JsonObject object = new JsonObject();
		object.addProperty("file", existing.sheet().block().file().name());
		object.addProperty("line", existing.sheet().block().line() + 1);
		object.addProperty("operation", existing.sheet().index());
		JsonArray numbers = new JsonArray();
		existing.numbers().forEach(number -> {
			JsonObject one = new JsonObject();
			one.addProperty("name", number.name());
			one.addProperty("value", number.value());
			one.addProperty("from", number.origin());
			numbers.add(one);
		});
		object.add("numbers", numbers);
		return object;
	}

	private static void hole(JsonObject object, HolePlan hole, LengthUnit unit) {
		object.addProperty("drill", hole.drill().name());
		object.addProperty("drillDiameter", length(hole.drill().diameter(), unit));
		object.addProperty("drillSource", hole.source());
		object.addProperty("toolDepth", length(hole.toolTip(), unit));
		object.addProperty("fullDiameterDepth", length(hole.full(), unit));
		object.addProperty("drillTipDepth", length(hole.drillTip(), unit));
	}

	/** The feed of a tap in both modes. */
	private static void feeds(JsonObject object, Plan plan, Demand demand) {
		Figure figure = new Figure(plan.request().unit());
		double lead = plan.request().thread().lead();
		object.addProperty("feedPerMinute", new BigDecimal(figure.feed(lead, demand.speed(), false)));
		object.addProperty("feedPerRev", new BigDecimal(figure.feed(lead, demand.speed(), true)));
	}

	private static void mill(JsonObject object, MillCut cut, LengthUnit unit) {
		object.addProperty("cutterDiameter", length(cut.cutter(), unit));
		object.addProperty("teeth", cut.teeth());
		object.addProperty("feedATooth", length(cut.toothFeed(), unit));
		object.addProperty("edgeFeed", length(cut.edge(), unit));
		object.addProperty("centreFeed", length(cut.centre(), unit));
		object.addProperty("entryArcRadius", length(cut.entry(), unit));
		JsonArray radii = new JsonArray();
		cut.radii().forEach(radius -> radii.add(length(radius, unit)));
		object.add("pathRadii", radii);
	}

	private static void demand(JsonObject object, Demand demand) {
		object.addProperty("speed", rounded(demand.speed()));
		object.addProperty("torqueNm", demand.torque().isPresent() ? rounded(demand.torque().getAsDouble()) : null);
		object.addProperty("powerKw", demand.power().isPresent() ? rounded(demand.power().getAsDouble()) : null);
		object.addProperty("secondsAHole", rounded(demand.seconds()));
		object.addProperty("gaugeEvery", demand.interval());
		object.addProperty("demandSource", "estimates: torque and power from memory, gauging interval common practice, no source");
	}

	private static BigDecimal rounded(double value) {
		return new BigDecimal(Figure.plain(value, 2));
	}

	private static String name(Weighing weighing) {
		return weighing.method().name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	private static BigDecimal length(double mm, LengthUnit unit) {
		return new BigDecimal(Figure.plain(mm / unit.mm(), unit == LengthUnit.MM ? 3 : 4));
	}

	private static JsonArray strings(List<String> lines) {
		JsonArray array = new JsonArray();
		lines.forEach(array::add);
		return array;
	}
}
