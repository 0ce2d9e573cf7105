package truelead.checker.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.mozilla.javascript.Context;
import org.mozilla.javascript.NativeArray;
import org.mozilla.javascript.NativeObject;
import org.mozilla.javascript.Scriptable;
import org.mozilla.javascript.ScriptableObject;

/** The script on a lesson's page and the Java model say the same, within 1e-9 of the number, for a thousand settings each. */
class AgreementTest {

	private static final int SETTINGS = 1000;

	@ParameterizedTest
	@ValueSource(strings = {"feed", "depth", "helix", "passes"})
	void script_and_java_agree(String name) {
		Lesson lesson = Lessons.named(name).orElseThrow();
		Random random = new Random(20261125);
		try (Context context = Context.enter()) {
			Scriptable scope = context.initStandardObjects();
			context.evaluateString(scope, Lessons.script(), "lesson-model.js", 1, null);
			NativeObject models = (NativeObject) ScriptableObject.getProperty(scope, "truelead");
			for (int i = 0; i < SETTINGS; i++) {
				Values values = any(lesson, random);
				Scriptable given = context.newObject(scope);
				lesson.controls().forEach(control -> ScriptableObject.putProperty(given, control.name(), values.of(control.name())));
				NativeObject answer = (NativeObject) ScriptableObject.callMethod(context, models, name, new Object[] {given});
				compare(lesson.outcome(values), answer);
			}
		}
	}

	static Values any(Lesson lesson, Random random) {
		Values values = Values.usual(lesson);
		for (Control control : lesson.controls()) {
			values = values.with(control.name(), control.least() + random.nextDouble() * (control.most() - control.least()));
		}
		return values;
	}

	private static void compare(Outcome java, NativeObject script) {
		Map<?, ?> numbers = (Map<?, ?>) script.get("numbers");
		assertThat(numbers.keySet()).hasSameSizeAs(java.numbers().keySet());
		java.numbers().forEach((key, value) -> same(key, value, ((Number) numbers.get(key)).doubleValue()));
		Map<?, ?> tracks = (Map<?, ?>) script.get("tracks");
		assertThat(tracks.keySet()).hasSameSizeAs(java.tracks().keySet());
		java.tracks().forEach((key, track) -> {
			List<?> points = (NativeArray) tracks.get(key);
			assertThat(points).as(key).hasSize(track.size());
			for (int i = 0; i < track.size(); i++) {
				List<?> point = (List<?>) points.get(i);
				same(key, track.across(i), ((Number) point.get(0)).doubleValue());
				same(key, track.up(i), ((Number) point.get(1)).doubleValue());
			}
		});
		List<?> says = (NativeArray) script.get("says");
		assertThat(says.stream().map(n -> ((Number) n).intValue()).toList()).isEqualTo(java.says());
	}

	private static void same(String name, double java, double script) {
		if (Double.isNaN(java)) {
			assertThat(script).as(name).isNaN();
		} else {
			assertThat(script).as(name).isCloseTo(java, within(1e-9 * Math.max(1, Math.abs(java))));
		}
	}
}
