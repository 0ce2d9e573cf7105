package truelead.faults;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** Runs the command {@code check} on a folder of programs, in a process of its own, and reads its SARIF report. */
final class Checker {
	private final List<String> extra;
	final Set<String> rules = new LinkedHashSet<>();

	/** More arguments for the command, as {@code --machine FILE}. */
	Checker(String... extra) {
		this.extra = List.of(extra);
	}

	/** What is said of each program, by the name of its file; programs without findings are not in it. */
	Map<String, List<Said>> check(List<Trial> trials) {
		try {
			Path folder = Files.createTempDirectory("truelead-faults");
			try {
				Path programs = Files.createDirectory(folder.resolve("p"));
				write(trials, programs);
				Path report = folder.resolve("report.sarif");
				run(programs, report, folder.resolve("output.txt"));
				return read(Files.readString(report, StandardCharsets.UTF_8));
			} finally {
				delete(folder);
			}
		} catch (IOException failed) {
			throw new UncheckedIOException(failed);
		}
	}

	/** Each program in the folder of its machine. */
	private static void write(List<Trial> trials, Path programs) throws IOException {
		Map<String, Path> folders = new HashMap<>();
		for (Trial trial : trials) {
			Path folder = folders.get(trial.machine());
			if (folder == null) {
				folder = Files.createDirectory(programs.resolve("machine-" + folders.size()));
				folders.put(trial.machine(), folder);
				if (!trial.machine().isEmpty()) {
					Files.writeString(folder.resolve("truelead-machine.properties"), trial.machine(), StandardCharsets.UTF_8);
				}
			}
			Files.writeString(folder.resolve(trial.name()), trial.text(), StandardCharsets.UTF_8);
		}
	}

	private void run(Path programs, Path report, Path output) throws IOException {
		String jar = System.getProperty("truelead.jar", "");
		List<String> line = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xshare:auto",
				"-XX:+UseSerialGC"));
		if (jar.isEmpty()) {
			line.addAll(List.of("-cp", System.getProperty("java.class.path"), "truelead.audit.Main"));
		} else {
			line.addAll(List.of("-jar", jar));
		}
		line.addAll(List.of("check", programs.toString(), "--report", "sarif:" + report));
		line.addAll(extra);
		Process process = new ProcessBuilder(line).redirectErrorStream(true).redirectOutput(output.toFile()).start();
		try {
			int status = process.waitFor();
			if (status == 2 || !Files.exists(report)) {
				throw new IllegalStateException("check ended with " + status + ": " + Files.readString(output, StandardCharsets.UTF_8));
			}
		} catch (InterruptedException stopped) {
			process.destroy();
			Thread.currentThread().interrupt();
			throw new IllegalStateException(stopped);
		}
	}

	private Map<String, List<Said>> read(String sarif) {
		Map<String, List<Said>> said = new HashMap<>();
		JsonObject run = JsonParser.parseString(sarif).getAsJsonObject().getAsJsonArray("runs").get(0).getAsJsonObject();
		for (JsonElement rule : array(run.getAsJsonObject("tool").getAsJsonObject("driver"), "rules")) {
			rules.add(rule.getAsJsonObject().get("id").getAsString());
		}
		for (JsonElement element : array(run, "results")) {
			JsonObject result = element.getAsJsonObject();
			JsonObject place = result.getAsJsonArray("locations").get(0).getAsJsonObject().getAsJsonObject("physicalLocation");
			String uri = place.getAsJsonObject("artifactLocation").get("uri").getAsString();
			int line = place.has("region") ? place.getAsJsonObject("region").get("startLine").getAsInt() : 1;
			said.computeIfAbsent(uri.substring(uri.lastIndexOf('/') + 1), n -> new ArrayList<>())
					.add(new Said(result.get("ruleId").getAsString(), result.get("level").getAsString(), line,
							result.getAsJsonObject("message").get("text").getAsString(), repairs(result)));
		}
		return said;
	}

	private static List<Repair> repairs(JsonObject result) {
		List<Repair> repairs = new ArrayList<>();
		for (JsonElement fix : array(result, "fixes")) {
			List<Repair.Replacement> replacements = new ArrayList<>();
			for (JsonElement change : array(fix.getAsJsonObject(), "artifactChanges")) {
				for (JsonElement replacement : array(change.getAsJsonObject(), "replacements")) {
					JsonObject range = replacement.getAsJsonObject().getAsJsonObject("deletedRegion");
					replacements.add(new Repair.Replacement(range.get("startLine").getAsInt(), range.get("startColumn").getAsInt(),
							range.get("endLine").getAsInt(), range.get("endColumn").getAsInt(),
							replacement.getAsJsonObject().getAsJsonObject("insertedContent").get("text").getAsString()));
				}
			}
			repairs.add(new Repair(fix.getAsJsonObject().getAsJsonObject("description").get("text").getAsString(), replacements));
		}
		return repairs;
	}

	private static JsonArray array(JsonObject object, String name) {
		return object.has(name) ? object.getAsJsonArray(name) : new JsonArray();
	}

	private static void delete(Path folder) throws IOException {
		try (Stream<Path> all = Files.walk(folder)) {
			all.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
		}
	}
}
