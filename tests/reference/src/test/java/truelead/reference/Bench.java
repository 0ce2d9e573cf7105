package truelead.reference;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import truelead.audit.Main;
import truelead.audit.terminal.Terminal;

/** Asks the command {@code thread --report json}, as a person or script would. */
record Bench(int status, String out, String err) {

	static Bench ask(String... arguments) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		PrintStream outText = new PrintStream(out, false, StandardCharsets.UTF_8);
		PrintStream errText = new PrintStream(err, false, StandardCharsets.UTF_8);
		List<String> all = new ArrayList<>(List.of("thread"));
		all.addAll(Arrays.asList(arguments));
		int status = Main.run(all, new Terminal(outText, errText, false));
		outText.flush();
		errText.flush();
		return new Bench(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	/** The single object for a callout with a class, or the first of several. */
	static JsonObject thread(String callout) {
		return array(callout).get(0).getAsJsonObject();
	}

	static JsonArray array(String... callouts) {
		List<String> all = new ArrayList<>(List.of("--report", "json"));
		all.addAll(Arrays.asList(callouts));
		return JsonParser.parseString(ask(all.toArray(String[]::new)).out()).getAsJsonArray();
	}

	static BigDecimal number(JsonObject thread, String key) {
		return thread.get(key).getAsBigDecimal();
	}
}
