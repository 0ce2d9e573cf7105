package truelead.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import truelead.audit.terminal.ExitStatus;

/** Whatever is given instead of a program: one clear line, status 2, no stack trace. */
class BadInputTest {

	@TempDir
	Path folder;

	@Test
	void missingFile() {
		assertComplaint(Recorded.run("check", folder.resolve("gone.nc")), "gone.nc: no such file or folder");
	}

	@Test
	void emptyFolder() {
		assertComplaint(Recorded.run("check", folder), "no programs in this folder");
	}

	@Test
	void emptyFile() throws IOException {
		Path file = Files.createFile(folder.resolve("empty.nc"));
		assertComplaint(Recorded.run("check", file), "empty.nc: empty file, nothing to check");
	}

	@Test
	void binaryFile() throws IOException {
		byte[] bytes = new byte[5000];
		new Random(7).nextBytes(bytes);
		Path file = Files.write(folder.resolve("picture.nc"), bytes);
		assertComplaint(Recorded.run("check", file), "picture.nc: binary file, not a program");
	}

	@Test
	void oneLineOfAHundredMegabytes() throws IOException {
		Path file = folder.resolve("line.nc");
		byte[] piece = new byte[1 << 20];
		Arrays.fill(piece, (byte) 'X');
		try (OutputStream out = Files.newOutputStream(file)) {
			for (int i = 0; i < 100; i++) {
				out.write(piece);
			}
		}
		assertComplaint(Recorded.run("check", file), "line.nc: line 1 is 104,857,600 characters long; no program has such a line");
	}

	@Test
	void oneBadFileDoesNotStopTheOthers() throws IOException {
		Files.createFile(folder.resolve("a.nc"));
		Files.writeString(folder.resolve("b.nc"), "G21\nM30\n");
		Recorded run = Recorded.run("check", folder);
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.out()).contains("1 program, ").contains("1 file could not be checked");
	}

	@Test
	void unknownOption() {
		assertComplaint(Recorded.run("check", "--frobnicate", "a.nc"), "no option \"--frobnicate\"");
		assertComplaint(Recorded.run("check"), "PATH is missing");
		assertComplaint(Recorded.run("plan", "M8", "M10"), "\"M10\" is one name too many");
	}

	@Test
	void aValueThatIsNone() {
		assertComplaint(Recorded.run("check", "a.nc", "--gauge-every", "some"), "--gauge-every takes a whole number, not \"some\"");
		assertComplaint(Recorded.run("check", "a.nc", "--gauge-every", "-5"), "--gauge-every takes a number of holes from 1, not -5");
		assertComplaint(Recorded.run("thread", "M8", "--depth", "deep"), "--depth takes a number, not \"deep\"");
		assertComplaint(Recorded.run("thread", "M8", "--report", "pdf"), "--report takes text, json, not \"pdf\"");
		assertComplaint(Recorded.run("plan", "M8", "--count"), "--count needs a value: N");
	}

	@Test
	void aProgramNamedTwiceIsCheckedOnce() throws IOException {
		Path program = Files.writeString(folder.resolve("b.nc"), "G21\nM30\n");
		assertThat(Recorded.run("check", folder, program, program).out()).contains("1 program, ");
	}

	@Test
	void aProgramFromStandardInput() {
		InputStream before = System.in;
		try {
			String program = "G21\nT3 M6 (M6X1 TAP)\nG84 Z-12 R5 F520 (S MISSING)\nM30\n";
			System.setIn(new ByteArrayInputStream(program.getBytes(StandardCharsets.US_ASCII)));
			Recorded run = Recorded.run("check", "-");
			assertThat(run.status()).isEqualTo(1);
			assertThat(run.out()).contains("stdin:3:").contains("1 program, ");
		} finally {
			System.setIn(before);
		}
	}

	@Test
	void everyLineOfAProfileThatCannotBeUsedIsNamed() throws IOException {
		Path profile = Files.writeString(folder.resolve("bay2.properties"),
				"base = milling-metric\nfrob = 3\nM29 = rigid-tap-on\ntravel-rigid = lots\n");
		assertThat(Recorded.run("check", "--machine", profile, "a.nc").err()).contains("bay2.properties:2: 'frob' is neither", "; ",
				"bay2.properties:4: ").doesNotContain("more");
	}

	@Test
	void whatIsNoTextIsNoProfile() throws IOException {
		Path picture = Files.write(folder.resolve("bay2.png"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 0, 0, 13, 0, 1, 2, 3});
		assertComplaint(Recorded.run("check", "--machine", folder, "a.nc"), "is a folder");
		assertComplaint(Recorded.run("check", "--machine", picture, "a.nc"), "bay2.png: binary file");
	}

	@Test
	void aRowOfTheToolListIsShownInItsOwnFile() throws IOException {
		Path program = Files.writeString(folder.resolve("a.nc"), "G21\nM30\n");
		Path tools = Files.writeString(Files.createDirectory(folder.resolve("lists")).resolve("tools.csv"), "TOOL,KIND\nxx,DRILL\n");
		assertThat(Recorded.run("check", program, "--tools", tools).out()).startsWith(tools + ":2:1 ");
	}

	@Test
	void unknownReport() {
		assertComplaint(Recorded.run("check", "--report", "pdf", "a.nc"), "no report \"pdf\"");
	}

	@Test
	void unknownSeverity() {
		assertComplaint(Recorded.run("check", "--fail-on", "fatal", "a.nc"),
				"--fail-on takes error, warning or information, not \"fatal\"");
	}

	@Test
	void twoReportsOnStandardOutput() {
		assertComplaint(Recorded.run("check", "--report", "text", "--report", "sarif", "a.nc"),
				"only one report can go to standard output");
	}

	@Test
	void reportWhereAFolderIs() throws IOException {
		Path program = Files.writeString(folder.resolve("b.nc"), "M30\n");
		assertComplaint(Recorded.run("check", program, "--report", "sarif:" + folder), "cannot write " + folder + ": is a folder");
	}

	@Test
	void noReportIsWrittenOverWhatIsRead() throws IOException {
		String text = "G21\nM30\n";
		Path program = Files.writeString(folder.resolve("b.nc"), text);
		Path other = Files.writeString(folder.resolve("c.nc"), text);
		Path plain = Files.writeString(folder.resolve("O0012"), text);
		Path link = Files.createSymbolicLink(folder.resolve("page.html"), program);
		Path tools = Files.writeString(folder.resolve("tools.csv"), "TOOL\n");
		assertComplaint(Recorded.run("check", program, "--report", "text:" + program), "b.nc: it is read in this run; give another name");
		assertComplaint(Recorded.run("check", folder, "--report", "html:" + folder.resolve("./b.nc")), "it is read in this run");
		assertComplaint(Recorded.run("check", plain, "--report", "sarif:" + plain), "it is read in this run");
		assertComplaint(Recorded.run("check", program, "--report", "html:" + link), "it is read in this run");
		assertComplaint(Recorded.run("check", program, "--tools", tools, "--report", "gauge-csv:" + tools), "it is read in this run");
		assertComplaint(Recorded.run("check", program, "--report", "json:" + other),
				"it is there already, and a program by its name; give another name");
		assertComplaint(Recorded.run("compare", program, other, "--report", "html:" + other), "it is read in this run");
		assertComplaint(Recorded.run("lesson", "feed", "--exercise", "1", "--out", program),
				"it is there already, and a program by its name");
		assertThat(program).hasContent(text);
		assertThat(other).hasContent(text);
		assertThat(plain).hasContent(text);
		assertThat(tools).hasContent("TOOL\n");
	}

	@Test
	void everyCommandTakesAFileBehindItsReport() throws IOException {
		Path program = Files.writeString(folder.resolve("b.nc"), "G21\nM30\n");
		for (String command : new String[] {"check " + program, "compare " + program + " " + program, "plan M8", "thread M8"}) {
			Path report = folder.resolve(command.substring(0, command.indexOf(' ')) + ".txt");
			Recorded run = Recorded.run((Object[]) (command + " --report text:" + report).split(" "));
			assertThat(run.status()).as(run.err()).isEqualTo(ExitStatus.CLEAN);
			assertThat(report).isNotEmptyFile();
		}
		assertComplaint(Recorded.run("plan", "M8", "--report", "html:" + folder), "cannot write " + folder + ": is a folder");
		assertComplaint(Recorded.run("plan", "M8", "--report", "html:"), "no file name behind --report html:");
		assertComplaint(Recorded.run("compare", program, program, "--report", "sarif"), "--report takes text, html, not \"sarif\"");
	}

	@Test
	void twoReportsUnderTwoNamesOfOneFile() {
		assertComplaint(Recorded.run("check", "b.nc", "--report", "html:out.html", "--report", "sarif:./out.html"),
				"two reports cannot go to the same file");
	}

	@Test
	void whatIsMistypedIsToldTheNearest() {
		assertComplaint(Recorded.run("check", "a.nc", "--rule", "feed-of-pitch=off"),
				"no rule \"feed-of-pitch\"; the nearest is feed-off-pitch");
		assertComplaint(Recorded.run("check", "a.nc", "--machine", ""), "--machine is empty; there are milling-metric, ");
		assertComplaint(Recorded.run("check", "a.nc", "--stock", "STEEL", "--stock", "BRASS"), "--stock is given twice");
		assertComplaint(Recorded.run("check", "a.nc", "--fail-on", "error", "--fail-on", "warning"), "--fail-on is given twice");
		assertComplaint(Recorded.run("check", "-x"), "no option \"-x\"");
		assertComplaint(Recorded.run("check", folder, "--include", "*.xyz"),
				"no programs in this folder that --include and --exclude leave");
	}

	@Test
	void listsThatAreNotThere() throws IOException {
		Path program = Files.writeString(folder.resolve("b.nc"), "M30\n");
		assertComplaint(Recorded.run("check", program, "--accept", folder.resolve("gone.csv")), "gone.csv: no such file or folder");
		assertComplaint(Recorded.run("check", program, "--baseline", folder.resolve("gone.sarif")), "gone.sarif: no such file or folder");
		assertComplaint(Recorded.run("check", program, "--baseline", program), "b.nc: is no SARIF log that Truelead wrote");
	}

	@Test
	void aLinkInACircle() throws IOException {
		Path loop = folder.resolve("loop.nc");
		Files.createSymbolicLink(loop, loop);
		Recorded run = Recorded.run("check", loop);
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.err()).startsWith("truelead: " + loop + ": cannot be read: ").doesNotContain("loop.nc: cannot be read: " + loop);
	}

	@Test
	void aMistypedCommandIsToldWhichThereAre() {
		Recorded run = Recorded.run("chekc", "a.nc");
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.err()).startsWith("truelead: no command \"chekc\"; there are check, compare, ");
	}

	@Test
	void aFullDisk() throws IOException {
		assumeTrue(Files.exists(Path.of("/dev/full")), "only some systems have a device that is always full");
		Path program = Files.writeString(folder.resolve("plain.nc"), "G21\nM30\n");
		Recorded run = Recorded.run("check", program, "--report", "html:/dev/full");
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.err()).startsWith("truelead: cannot write /dev/full: ");
	}

	@Test
	void nothingAtAll() {
		Recorded run = Recorded.run();
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.err()).contains("check");
	}

	private static void assertComplaint(Recorded run, String line) {
		assertThat(run.err()).contains(line).doesNotContain("\tat ").doesNotContain("Exception");
		assertThat(run.status()).isEqualTo(ExitStatus.TROUBLE);
	}
}
