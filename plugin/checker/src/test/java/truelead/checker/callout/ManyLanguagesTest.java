package truelead.checker.callout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import truelead.checker.thread.ToolKind;

/**
 * What people write in twenty languages, a line each in comments.txt, with the thread, tool, depth and size that it says and nothing else.
 */
class ManyLanguagesTest {
	private static final Map<String, ToolKind> KINDS = Map.ofEntries(Map.entry("TAP", ToolKind.TAP), Map.entry("CUT", ToolKind.CUTTING_TAP),
			Map.entry("FORM", ToolKind.FORM_TAP), Map.entry("DRILL", ToolKind.DRILL), Map.entry("CENTRE", ToolKind.CENTRE_DRILL),
			Map.entry("SPOT", ToolKind.SPOT_DRILL), Map.entry("REAM", ToolKind.REAMER), Map.entry("BORE", ToolKind.BORING),
			Map.entry("CSK", ToolKind.COUNTERSINK), Map.entry("CBORE", ToolKind.COUNTERBORE), Map.entry("EM", ToolKind.END_MILL),
			Map.entry("TM", ToolKind.THREAD_MILL));

	static Stream<String> lines() {
		try (var in = ManyLanguagesTest.class.getResourceAsStream("/truelead/checker/comments.txt")) {
			return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> !line.startsWith("# ")).toList().stream();
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	@ParameterizedTest
	@MethodSource("lines")
	void saysThisAndNothingElse(String line) {
		List<String> cells = Stream.of(line.split(";;", -1)).map(String::strip).toList();
		CommentReading reading = CalloutReader.readComment(cells.get(0));
		Map<String, String> said = new TreeMap<>();
		Stream.of(cells.get(3).split(" ")).filter(item -> !item.isEmpty())
				.forEach(item -> said.put(item.split("=")[0], item.contains("=") ? item.split("=")[1] : ""));

		if (!cells.get(1).equals(".")) {
			assertThat(threads(reading, cells.get(1))).isEqualTo(cells.get(1));
			assertThat(callout(reading)).isEqualTo(said.entrySet().stream().filter(e -> !e.getKey().equals("dia"))
					.map(e -> e.getKey() + (e.getValue().isEmpty() ? "" : "=" + number(e.getValue()))).collect(Collectors.joining(" ")));
		}
		if (!cells.get(2).equals(".")) {
			ToolKind kind = reading.tool().map(ToolDescription::kind).orElse(null);
			assertThat(cells.get(2).equals("TAP") && kind == ToolKind.CUTTING_TAP ? ToolKind.TAP : kind).isEqualTo(KINDS.get(cells.get(2)));
			assertThat(reading.tool().flatMap(ToolDescription::diameter).map(Dimension::value))
					.isEqualTo(Optional.ofNullable(said.get("dia")).map(Double::valueOf));
		}
	}

	/** The threads as the line tells them: those that are not certain only where it asks for them. */
	private static String threads(CommentReading reading, String asked) {
		String all = reading.callouts().stream().filter(c -> c.certain() || !asked.equals("-?"))
				.map(c -> c.spec().designation() + (c.certain() && !asked.endsWith("?") ? "" : "?")).collect(Collectors.joining(","));
		return all.isEmpty() ? asked.equals("-?") ? "-?" : "-" : all;
	}

	private static String callout(CommentReading reading) {
		Optional<Callout> first = reading.callouts().stream().findFirst();
		Map<String, String> found = new TreeMap<>();
		first.flatMap(Callout::depth).ifPresent(depth -> found.put("d", "=" + depth.value()));
		first.filter(c -> c.count().isPresent()).ifPresent(c -> found.put("n", "=" + (double) c.count().getAsInt()));
		first.flatMap(Callout::holeEnd).ifPresent(end -> found.put(end == HoleEnd.THROUGH ? "T" : "B", ""));
		first.filter(Callout::wireInsert).ifPresent(c -> found.put("wi", ""));
		return found.entrySet().stream().map(e -> e.getKey() + e.getValue()).collect(Collectors.joining(" "));
	}

	private static double number(String text) {
		return Double.parseDouble(text);
	}
}
