package truelead.audit.thread;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonArray;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import truelead.audit.report.SafeJson;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.BoltLimits;
import truelead.checker.thread.DrillSizes;
import truelead.checker.thread.Limits;
import truelead.checker.thread.TapDrill;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;

/** Writes threads as one flat JSON array, an object a class, lengths in the unit that {@code unit} names. */
final class ThreadJson {
	private static final Gson GSON = new GsonBuilder().serializeNulls().setPrettyPrinting().disableHtmlEscaping().create();
	private static final int MM_PLACES = 3;
	private static final int INCH_PLACES = 5;
	/** ASME B1.1 counts with 8 decimals of the pitch. */
	private static final int PITCH_PLACES = 8;

	private ThreadJson() {
	}

	static String write(List<ThreadSheet> sheets) {
		JsonArray array = new JsonArray();
		sheets.forEach(sheet -> sheet.classes().forEach(line -> array.add(object(sheet, line))));
		return SafeJson.escaped(GSON.toJson(array)) + "\n";
	}

	private static JsonObject object(ThreadSheet sheet, ThreadSheet.ClassLine line) {
		ThreadSpec spec = line.spec();
		JsonObject object = new JsonObject();
		object.addProperty("designation", spec.designation());
		object.addProperty("nominal", length(spec, spec.diameter(), 4));
		object.addProperty("pitch", length(spec, spec.pitch(), PITCH_PLACES));
		add(object, "tpi", spec.tpi() > 0 ? Optional.of(plain(BigDecimal.valueOf(spec.tpi()))) : Optional.empty());
		object.addProperty("class", spec.threadClass().orElse(null));
		add(object, "minorMin", line.limits().flatMap(Limits::minorMin));
		add(object, "minorMax", line.limits().flatMap(Limits::minorMax));
		add(object, "pitchMin", line.limits().flatMap(Limits::pitchMin));
		add(object, "pitchMax", line.limits().flatMap(Limits::pitchMax));
		add(object, "majorMin", line.limits().flatMap(Limits::majorMin));
		add(object, "tapDrill", sheet.tapDrill().map(TapDrill::diameter).map(d -> drill(spec, d)));
		add(object, "formDrill", sheet.formDrill().map(DrillSizes.Drill::diameter).map(d -> drill(spec, d)));
		object.addProperty("unit", spec.unit() == LengthUnit.MM ? "mm" : "in");
		object.addProperty("source", line.source());
		pipe(object, spec);
		bolts(object, sheet);
		return object;
	}

	/** Limits of screws, an object a class, behind the keys of all. */
	private static void bolts(JsonObject object, ThreadSheet sheet) {
		JsonArray bolts = new JsonArray();
		for (BoltLimits limits : sheet.bolts()) {
			JsonObject bolt = new JsonObject();
			bolt.addProperty("class", limits.threadClass());
			bolt.addProperty("majorMin", limits.majorMin());
			bolt.addProperty("majorMax", limits.majorMax());
			bolt.addProperty("pitchMin", limits.pitchMin());
			bolt.addProperty("pitchMax", limits.pitchMax());
			bolt.addProperty("source", limits.source());
			bolts.add(bolt);
		}
		if (!bolts.isEmpty()) {
			object.add("outside", bolts);
		}
	}

	/** What only taper pipe threads have comes behind the keys of all. */
	private static void pipe(JsonObject object, ThreadSpec spec) {
		ThreadTable table = ThreadTable.standard();
		boolean npt = spec.system() == ThreadSystem.NPT || spec.system() == ThreadSystem.NPTF;
		add(object, "e0", spec, table.smallEndPitchDiameter(spec));
		add(object, npt ? "l1" : "gaugeLength", spec, table.gaugeLength(spec));
		add(object, npt ? "l2" : "usefulLength", spec, table.usefulLength(spec));
	}

	private static void add(JsonObject object, String key, ThreadSpec spec, OptionalDouble mm) {
		if (mm.isPresent()) {
			object.addProperty(key, length(spec, mm.getAsDouble(), INCH_PLACES));
		}
	}

	private static void add(JsonObject object, String key, Optional<BigDecimal> value) {
		object.add(key, JsonNull.INSTANCE);
		value.ifPresent(v -> object.addProperty(key, v));
	}

	/** Trade tables of drills round 21/32 = 0.65625 to the even figure, 0.6562. */
	private static BigDecimal drill(ThreadSpec spec, double mm) {
		BigDecimal value = BigDecimal.valueOf(mm / spec.unit().mm()).setScale(6, RoundingMode.HALF_UP);
		return plain(spec.unit() == LengthUnit.MM ? value : value.setScale(4, RoundingMode.HALF_EVEN));
	}

	private static BigDecimal length(ThreadSpec spec, double mm, int inchPlaces) {
		boolean metric = spec.unit() == LengthUnit.MM;
		return plain(BigDecimal.valueOf(mm / spec.unit().mm()).setScale(metric ? MM_PLACES : inchPlaces, RoundingMode.HALF_UP));
	}

	private static BigDecimal plain(BigDecimal value) {
		BigDecimal stripped = value.stripTrailingZeros();
		return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
	}
}
