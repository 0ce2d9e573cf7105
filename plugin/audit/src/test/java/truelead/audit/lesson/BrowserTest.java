package truelead.audit.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.google.gson.Gson;
import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.audit.Recorded;
import truelead.checker.lesson.Control;
import truelead.checker.lesson.Lesson;
import truelead.checker.lesson.Lessons;
import truelead.checker.lesson.Outcome;
import truelead.checker.lesson.Values;

/** The pages in a headless Chromium, where there is one; the checker's own test runs the script without a browser. */
class BrowserTest {

	private static final int SETTINGS = 1000;

	@TempDir(cleanup = CleanupMode.ON_SUCCESS)
	private Path folder;

	@ParameterizedTest
	@ValueSource(strings = {"feed", "depth", "helix", "passes"})
	void scriptAndJavaAgreeInTheBrowser(String name) throws Exception {
		Lesson lesson = Lessons.named(name).orElseThrow();
		Random random = new Random(8);
		List<Values> all = new ArrayList<>();
		List<Map<String, Double>> given = new ArrayList<>();
		for (int i = 0; i < SETTINGS; i++) {
			Values values = any(lesson, random);
			all.add(values);
			Map<String, Double> one = new LinkedHashMap<>();
			lesson.controls().forEach(control -> one.put(control.name(), values.of(control.name())));
			given.add(one);
		}
		String page = "<!DOCTYPE html><pre id=\"answer\"></pre><script>" + Lessons.script()
				+ "document.getElementById('answer').textContent = JSON.stringify(" + new Gson().toJson(given)
				+ ".map(function (v) { var o = truelead." + name + "(v); return {numbers: o.numbers, says: o.says}; }));</script>";

		JsonArray answers = JsonParser.parseString(answer(page)).getAsJsonArray();

		assertThat(answers).hasSize(SETTINGS);
		for (int i = 0; i < SETTINGS; i++) {
			compare(lesson.outcome(all.get(i)), answers.get(i).getAsJsonObject());
		}
	}

	@Test
	void aSliderThatMovesMovesSentencesNumbersAndPlots() throws Exception {
		Lesson lesson = Lessons.named("feed").orElseThrow();
		String page = Recorded.run("lesson", "feed").out();
		String moving =
				"<pre id=\"answer\"></pre><script>(function () { var before = document.querySelector('.plot').innerHTML; var slider = "
				+ "document.querySelector('[data-for=speed]');"
				+ " slider.value = 1000; slider.dispatchEvent(new Event('input', {bubbles: true})); "
				+ "document.getElementById('answer').textContent = JSON.stringify({"
				+ " typed: document.querySelector('[name=speed]').value, lag: document.getElementById('r-lag').textContent, said: "
				+ "document.querySelector('#said li').textContent,"
				+ " redrawn: before !== document.querySelector('.plot').innerHTML}); })();</script></body>";

		JsonObject shown = JsonParser.parseString(answer(page.replace("</body>", moving))).getAsJsonObject();

		Outcome outcome = lesson.outcome(Values.usual(lesson).with("speed", 1000));
		assertThat(shown.get("typed").getAsString()).isEqualTo("1000");
		assertThat(shown.get("lag").getAsString()).isEqualTo("-3.150 mm");
		assertThat(shown.get("said").getAsString()).isEqualTo(lesson.said(outcome).get(0));
		assertThat(shown.get("redrawn").getAsBoolean()).isTrue();
	}

	private static Values any(Lesson lesson, Random random) {
		Values values = Values.usual(lesson);
		for (Control control : lesson.controls()) {
			values = values.with(control.name(), control.least() + random.nextDouble() * (control.most() - control.least()));
		}
		return values;
	}

	private static void compare(Outcome java, JsonObject script) {
		JsonObject numbers = script.getAsJsonObject("numbers");
		java.numbers().forEach((name, value) -> {
			JsonElement answer = numbers.get(name);
			assertThat(answer.isJsonNull()).as(name).isEqualTo(Double.isNaN(value)); // JSON writes NaN as null
			if (!answer.isJsonNull()) {
				assertThat(answer.getAsDouble()).as(name).isCloseTo(value, within(1e-9 * Math.max(1, Math.abs(value))));
			}
		});
		assertThat(script.getAsJsonArray("says").asList().stream().map(JsonElement::getAsInt)).containsExactlyElementsOf(java.says());
	}

	/** What a page has written into its element "answer" when it has loaded. */
	private String answer(String page) throws IOException, InterruptedException {
		Optional<String> browser = browser();
		assumeTrue(browser.isPresent(), "no Chromium on the PATH");
		Path file = Files.writeString(folder.resolve("page.html"), page);
		File dom = folder.resolve("dom.html").toFile();
		Process process = new ProcessBuilder(browser.get(), "--headless", "--no-sandbox", "--disable-gpu", "--user-data-dir="
				+ folder.resolve("profile"), "--dump-dom", file.toUri().toString()).redirectOutput(dom)
				.redirectError(ProcessBuilder.Redirect.DISCARD).start();
		if (!process.waitFor(90, TimeUnit.SECONDS)) {
			process.descendants().forEach(ProcessHandle::destroyForcibly);
			process.destroyForcibly().waitFor();
		}
		String written = Files.readString(dom.toPath());
		int start = written.indexOf("<pre id=\"answer\">");
		assumeTrue(start >= 0, "Chromium is there and does not run here");
		return written.substring(start + 17, written.indexOf("</pre>", start)).replace("&lt;", "<").replace("&gt;", ">")
				.replace("&amp;", "&");
	}

	private static Optional<String> browser() {
		return Stream.of(System.getenv("PATH").split(File.pathSeparator)).flatMap(place -> Stream.of("chromium", "chromium-browser")
				.map(name -> place + File.separator + name)).filter(path -> new File(path).canExecute()).findFirst();
	}
}
