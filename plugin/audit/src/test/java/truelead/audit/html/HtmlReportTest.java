package truelead.audit.html;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import truelead.audit.Recorded;

/** Pages made of real checks, among them a program that tries to be a page itself. */
class HtmlReportTest {

	private static final String HOSTILE = """
			%
			O0001 (<script>document.title='run'</script>)
			(--><img src=x onerror=alert(1)>)
			N1 T1 M6 (<svg onload=alert(2)> DRILL 5.0)
			N2 G54 G90 G0 X10 Y10 S3000 M3
			N3 G81 Z-20. R2. F300
			N4 G80
			N5 T2 M6 ("><iframe src=javascript:alert(3)> M6X1 TAP)
			N6 G0 X10 Y10 S520 M3
			N7 G84 Z-12. R5. F520
			N8 G80
			N9 ??? </pre><script>alert(4)</script>
			M30
			""";

	private static final String SHAFT = """
			O0042 (M20X1.5 SHAFT END)
			G21 G40 G99
			T0303 (THREAD M20X1.5)
			G97 S600 M3
			G0 X24. Z6.
			G92 X19.3 Z-27. F1.5
			X18.7
			X18.16
			G0 X100. Z100.
			M30
			""";

	@TempDir
	Path folder;

	private Path program;

	@BeforeEach
	void aHostileProgram() throws IOException {
		program = Files.writeString(folder.resolve("a&b'<b onclick=x>.nc"), HOSTILE);
	}

	@Test
	void nothingOfAProgramBecomesMarkup() throws IOException {
		String page = page("html");
		assertThat(page).contains("&lt;iframe").doesNotContain("<script", "<iframe", "<img", "<svg onload", "<b onclick");
	}

	@Test
	void thePageLoadsNothing() throws IOException {
		assertThat(page("html")).doesNotContainPattern("(?:src|href)=\"(?!#)");
		assertThat(page("html")).contains("default-src 'none'");
	}

	@Test
	void theVerdictComesFirst() throws IOException {
		String page = page("html");
		assertThat(page.indexOf("class=\"verdict")).isPositive().isLessThan(page.indexOf("<h2>"));
	}

	@Test
	void thePageIsWellFormedApartFromItsHead() throws Exception {
		String page = page("html");
		String main = page.substring(page.indexOf("<main>"), page.indexOf("</main>") + 7);
		javax.xml.parsers.DocumentBuilderFactory.newInstance().newDocumentBuilder()
				.parse(new java.io.ByteArrayInputStream(main.getBytes(java.nio.charset.StandardCharsets.UTF_8)));
	}

	@Test
	void aChangeInAnotherBlockNamesItsLine() throws IOException {
		program = Files.writeString(folder.resolve("cap.nc"), """
				G21 G90 G94 G54
				T1 M6 (DRILL 5.0)
				G0 X10. Y10. S1900 M3
				G43 Z20. H1
				G81 Z-14. R2. F190
				G80
				T2 M6 (TAP M6X1)
				G0 X10. Y10. S520 M3
				G43 Z20. H2
				G84 Z-14.5 R5. F520
				G80
				M30
				""");
		assertThat(page("html")).contains("G21", "programmed: &quot;G21&quot;").containsPattern("Change Z-14\\. to Z-[0-9.]+ in line 5<");
	}

	@Test
	void holesThatAreAlikeStandTogetherAndAnAssumedLeadProvesNothing() throws IOException {
		program = Files.writeString(folder.resolve("plate.nc"), """
				G21 G90 G94 G54
				T1 M6 (DRILL 5.0)
				G0 X10. Y10. S1900 M3
				G43 Z20. H1
				G81 Z-22. R2. F190
				X30.
				Y30. Z-19.
				G80
				T2 M6 (TAP M6X1 14 DEEP)
				G0 X10. Y10. S520 M3
				G43 Z20. H2
				G84 Z-16. R5. F520
				X30.
				Y30.
				G80
				M30
				""");
		assertThat(page("html").replace('\u00a0', ' ')).contains(">2 holes: G54 X10 Y10 \u00b7 G54 X30 Y10<", ">G54 X30 Y30<",
				">about 13.5 mm<", ">about -0.5 mm<", ">+1.5 mm<").contains("2.5 mm, default: a lead of 2.5 threads, form C, is assumed");
		Files.writeString(program, Files.readString(program).replace("14 DEEP)", "14 DEEP)\n(TOOL: TAP, LEAD 2.5)"));
		assertThat(page("html")).contains(">13.5 mm<", ">\u2716 -0.5 mm<");
	}

	@Test
	void aThreadByASinglePointHasACardWithItsFindings() throws IOException {
		program = Files.writeString(folder.resolve("shaft.nc"), SHAFT);
		assertThat(page("html")).contains("<strong>Nothing found</strong>", "No error and no warning in 1 threading operation.",
				"1. M20x1.5, T3, single point outside <span class=\"state\">\u2714 ")
				.contains("<th scope=\"row\">along Z</th><td>Z6 to Z-27</td>",
						"<th scope=\"row\">goes to</th><td>diameter 18.16 mm, line 8</td>")
				.contains("1 threading operation, 1 turned thread<");
		assertThat(page("html")).containsOnlyOnce("<figcaption>Passes from Z6 to Z-27, the first to diameter 19.3 mm, the deepest to "
				+ "diameter 18.16 mm.<");
		Files.writeString(program, SHAFT.replace("F1.5", "F1.25"));
		assertThat(page("html")).contains("<figcaption>In 21.6 turns the thread advances 32.4 mm and the feed 27 mm: 5.4 mm behind.<");
		assertThat(page("html")).contains("single point outside <span class=\"state\">\u2716 1 error",
				"href=\"#p1-op1\">operation 1: M20x1.5<", ">line 6, T3 M20x1.5</a>");
	}

	@Test
	void threadsOfALoopOverPartsStandOnce() throws IOException {
		program = Files.writeString(folder.resolve("bar.nc"), SHAFT.replace("T0303", "#1=0\nWHILE [#1 LT 5] DO1\nT0303").replace("M30",
				"T0101\n#1=#1+1\nEND1\nM30"));
		assertThat(page("html")).containsOnlyOnce("single point outside, 5 times <span");
		assertThat(page("first-run")).containsOnlyOnce("line 8: stop before the pass");
	}

	@Test
	void theFirstRunSheetTellsWhereToStopAtATurnedThread() throws IOException {
		program = Files.writeString(folder.resolve("shaft.nc"), SHAFT);
		assertThat(page("first-run")).contains(">at the first pass<",
				"line 6: stop before the pass, at Z6, look; first pass to diameter 19.3 mm, ends at Z-27; deepest to diameter 18.16 mm.",
				"M1 before line 3: outside measured, 19.732 to 19.968 mm, before T3 M20x1.5",
				"M1 behind line 8, where the tool is clear of the part: thread of T3 M20x1.5 gauged by ring gauge")
				.doesNotContain("first tap goes in", "raised");
	}

	@Test
	void theSheetsStandAlone() throws IOException {
		assertThat(page("first-run")).contains("<h2>First-run sheet</h2>").doesNotContain("<h2>Gauge sheet</h2>", "<h2>Findings</h2>");
		assertThat(page("gauge")).doesNotContain("<h2>First-run sheet</h2>");
		program = Files.writeString(folder.resolve("shaft.nc"), SHAFT);
		assertThat(page("gauge")).contains("<h2>Gauge sheet</h2>",
				"<td>major diameter, micrometer</td><td>19.968 mm</td><td>19.732 mm</td>").doesNotContain("<h2>First-run sheet</h2>");
	}

	@Test
	void aFolderGetsAnIndexAndAPageAProgram() throws IOException {
		Files.writeString(folder.resolve("plain.nc"), "G21\nM30\n");
		Path out = folder.resolve("pages");
		Recorded.run("check", folder, "--report", "html:" + out + "/");
		try (var pages = Files.list(out)) {
			assertThat(pages.map(page -> page.getFileName().toString()).sorted()).containsExactly("0001-abb-onclickx-nc.html",
					"0002-plain-nc.html", "index.html");
		}
		assertThat(Files.readString(out.resolve("index.html"))).contains("href=\"0002-plain-nc.html\"").doesNotContain("<b onclick");
	}

	@Test
	void manyProgramsOnOnePageBeginWithAList() throws IOException {
		Files.writeString(folder.resolve("plain.nc"), "G21\nM30\n");
		String page = Files.readString(report("html", folder));
		assertThat(page).contains("<h1>2 programs</h1>", "href=\"#p2\"", "id=\"p2\"");
	}

	private String page(String format) throws IOException {
		return Files.readString(report(format, program));
	}

	private Path report(String format, Path what) {
		Path file = folder.resolve("out").resolve(format);
		Recorded run = Recorded.run("check", what, "--report", format + ":" + file);
		assertThat(run.err()).isEmpty();
		return file;
	}
}
