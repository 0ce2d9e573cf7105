package truelead.reference;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;

/** The command asked for every thread of the tables: all are answered, and the numbers lie as metal must. */
class WholeTableTest {

	@ParameterizedTest
	@EnumSource
	void everyThreadIsAnsweredAndSound(ThreadSystem system) {
		List<ThreadSpec> threads = ThreadTable.standard().threads(system);
		String[] callouts = threads.stream().map(ThreadSpec::designation).toArray(String[]::new);

		Set<String> answered = new TreeSet<>();
		for (JsonElement answer : Bench.array(callouts)) {
			answered.add(designationWithoutClass(answer.getAsJsonObject()));
			sound(answer.getAsJsonObject());
		}

		assertThat(answered).containsExactlyInAnyOrder(callouts);
	}

	private static String designationWithoutClass(JsonObject thread) {
		String designation = thread.get("designation").getAsString();
		return thread.get("class").isJsonNull() ? designation : designation.substring(0, designation.lastIndexOf('-'));
	}

	private static void sound(JsonObject thread) {
		String name = thread.get("designation").getAsString();
		double nominal = thread.get("nominal").getAsDouble();
		double pitch = thread.get("pitch").getAsDouble();
		ascending(name, thread, "minorMin", "minorMax");
		ascending(name, thread, "minorMax", "pitchMax");
		ascending(name, thread, "minorMin", "pitchMin");
		ascending(name, thread, "pitchMin", "pitchMax");
		ascending(name, thread, "pitchMin", "majorMin");
		if (!thread.get("tapDrill").isJsonNull()) {
			double drill = thread.get("tapDrill").getAsDouble();
			boolean taper = thread.has("e0");
			double from = taper ? thread.get("e0").getAsDouble() : nominal;
			assertThat((from - drill) / pitch).as(name + " drill " + drill).isBetween(taper ? 0.6 : 0.5, taper ? 1 : 1.75);
		}
		if (!thread.get("formDrill").isJsonNull()) {
			assertThat((nominal - thread.get("formDrill").getAsDouble()) / pitch).as(name + " formed").isBetween(0.34, 0.55);
		}
		assertThat(thread.get("source").getAsString()).as(name).isNotBlank();
	}

	private static void ascending(String name, JsonObject thread, String small, String large) {
		if (!thread.get(small).isJsonNull() && !thread.get(large).isJsonNull()) {
			assertThat(thread.get(small).getAsBigDecimal()).as(name + " " + small + " " + large)
					.isLessThan(thread.get(large).getAsBigDecimal());
		}
	}
}
