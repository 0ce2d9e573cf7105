package truelead.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.audit.terminal.ExitStatus;
import truelead.audit.terminal.Printable;

/**
 * Whatever names, comments, job files and arguments hold: nothing that is printed moves the cursor of a terminal or turns its text round.
 */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "no such file names there")
class HostileTextTest {

	/** Clears the screen, rings, turns the text round, begins a title of the window, a line of its own. */
	private static final String NASTY = "\u001b[2J\u0007\u202e\u009d0;\n=x";

	@TempDir
	Path top;

	private Path folder;
	private Path program;

	@BeforeEach
	void aProgramThatMeansHarm() throws IOException {
		folder = Files.createDirectory(top.resolve("shop" + NASTY));
		String nasty = NASTY.replace("\n", "");
		program = Files.writeString(folder.resolve("=part" + NASTY + ".nc"), """
				%
				O0012 (BRACKET NASTY)
				(T5 = TAP M6 NASTY)
				G21 G17 G90 G94
				T="TAP_NASTY" M6 (DRILL 5. NASTY)
				S520 M3 F100
				G43 H5 Z50.
				G81 X0 Y0 Z-20. R3.
				G80
				T5 M6 (M6X1 TAP NASTY)
				(THREAD: M6X1, NASTY)
				(ALLOW: feed-off-pitch, NASTY)
				(MACHINE PROFILE: NASTY)
				S520 M3
				G43 H5 Z50.
				G84 X0 Y0 Z-14.5 R3. F500
				X20. F480
				G80
				#<_NASTY> = 3 NASTY
				CALL NASTY
				M98 P9 (NASTY)
				M30
				%
				""".replace("NASTY", nasty) + "(" + "-".repeat(5000) + ")\n");
		Files.writeString(folder.resolve("truelead-machine.properties"), "base = milling-metric\nname = Mill " + nasty + "\n" + nasty
				+ " = " + nasty + "\n");
	}

	@ParameterizedTest
	@ValueSource(strings = {"text", "html", "first-run", "gauge", "gauge-csv", "sarif", "json", "junit", "accept-list"})
	void noReportPassesItOn(String format) throws IOException {
		Recorded run = Recorded.run("check", program, "--report", format);
		assertThat(run.status()).as("it is checked").isEqualTo(ExitStatus.FINDINGS);
		assertHarmless(run);
		assertHarmless(Recorded.run("check", folder, "--report", format));
		Path file = top.resolve("report");
		Recorded.run("check", program, "--report", format + ":" + file);
		assertThat(offences(Files.readString(file))).as("in the file").isEmpty();
	}

	@Test
	void noCommandPassesItOn() throws IOException {
		Path before = Files.writeString(folder.resolve("before.nc"), Files.readString(program).replace("F500", "F520"));
		assertThat(Recorded.run("compare", before, program).status()).as("both are checked").isNotEqualTo(ExitStatus.TROUBLE);
		assertThat(Recorded.run("plan", "M6", "--from", program + ":16").status()).as("it is planned").isEqualTo(ExitStatus.CLEAN);
		for (String report : List.of("text", "html")) {
			assertHarmless(Recorded.run("compare", before, program, "--report", report));
			assertHarmless(Recorded.run("lesson", "--from", program + ":16", "--report", report));
			assertHarmless(Recorded.run("plan", "M6", "--from", program + ":16", "--report", report));
		}
		assertHarmless(Recorded.run("plan", "M6", "--from", program + ":16", "--report", "json"));
		assertHarmless(Recorded.run("lesson", "feed", "--exercise", "1", "--check", program));
	}

	@Test
	void noComplaintPassesItOn() throws IOException {
		Path tools = Files.writeString(folder.resolve("tools" + NASTY + ".csv"), "TOOL,KIND," + NASTY.replace("\n", "") + "\n5,TAP" + NASTY
				+ ",\n\u001b[2J,,\n");
		Path accept = Files.writeString(folder.resolve("accept" + NASTY + ".csv"),
				"fingerprint,rule,program,reason,person,date\n0000,,\"=part\",\"" + NASTY + "\",,\n1,2" + NASTY + "\n");
		Path baseline = Files.writeString(folder.resolve("before" + NASTY + ".sarif"), "{ \"version\": \"" + NASTY + "\", " + NASTY);
		for (List<Object> arguments : List.<List<Object>>of(List.of("check", program, "--tools", tools),
				List.of("check", program, "--accept", accept),
				List.of("check", program, "--baseline", baseline), List.of("check", program, "--machine", tools),
				List.of("check", program, "--machine", NASTY),
				List.of("check", program, "--stock", NASTY), List.of("check", program, "--holder", NASTY),
				List.of("check", program, "--rule", NASTY),
				List.of("check", program, "--rule", "not-followed=" + NASTY), List.of("check", program, "--fail-on", NASTY),
				List.of("check", program, "--report", NASTY),
				List.of("check", program, "--report", "html:" + folder), List.of("check", program, "--gauge-every", NASTY),
				List.of("check", folder.resolve(NASTY)),
				List.of("check", "--" + NASTY), List.of(NASTY), List.of("thread", NASTY), List.of("thread", "M8" + NASTY),
				List.of("thread", "M8", "--depth", NASTY),
				List.of("plan", NASTY), List.of("plan", "M8", "--stock", NASTY), List.of("plan", "M8", "--hardness", NASTY),
				List.of("plan", "M8", "--feed", NASTY),
				List.of("plan", "--from", NASTY), List.of("lesson", NASTY), List.of("lesson", "feed", "--set", NASTY),
				List.of("lesson", "feed", "--out", folder),
				List.of("lesson", "feed", "--exercise", "1", "--check", tools), List.of("compare", program, tools, "--report", NASTY),
				List.of("compare", program, NASTY))) {
			assertHarmless(Recorded.run(arguments.toArray()));
		}
	}

	@Test
	void aNameThatIsNoPlainTextIsAcceptedByTheList() throws IOException {
		Path list = top.resolve("accepted.csv");
		assertThat(Recorded.run("check", program, "--report", "accept-list:" + list))
				.satisfies(run -> assertThat(run.status()).as(run.err()).isEqualTo(1));
		Files.writeString(list, Files.readString(list).replace(",,,\r\n", ",known,,\r\n"));
		assertThat(Recorded.run("check", program, "--accept", list, "--fail-on", "information").out()).contains("0 errors, 0 warnings");
	}

	private static void assertHarmless(Recorded run) {
		assertThat(offences(run.out())).as("standard output").isEmpty();
		assertThat(offences(run.err())).as("standard error").isEmpty();
		assertThat(run.err()).doesNotContain("a fault of Truelead's own");
	}

	private static String offences(String text) {
		return text.replaceAll("[\r\n\t]", "").chars().filter(c -> !Printable.shows((char) c)).mapToObj(c -> String.format("U+%04X ", c))
				.distinct().reduce("", String::concat);
	}
}
