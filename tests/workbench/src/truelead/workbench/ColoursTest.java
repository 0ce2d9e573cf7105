package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Colours can be read in both themes, and say what the words are. */
class ColoursTest {

	private static final RGB WHITE = new RGB(255, 255, 255);
	/** Background of lists in the platform's dark theme; that of its editors is darker still. */
	private static final RGB DARK = new RGB(0x2f, 0x2f, 0x2f);
	/** Least contrast of what a picture is told by, by WCAG 2.1, success criterion 1.4.11. */
	private static final double LEAST_OF_PICTURES = 3;
	/** Least contrast of text, by WCAG 2.1, success criterion 1.4.3. */
	private static final double LEAST = 4.5;

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void everyColourStandsOutInTheLightTheme() {
		assertThat(light()).isNotEmpty().allSatisfy((id, colour) -> assertThat(contrast(colour, WHITE)).as(id)
				.isGreaterThanOrEqualTo(LEAST));
	}

	@Test
	void everyColourHasADarkOneThatStandsOut() throws IOException {
		Map<String, RGB> dark = dark();
		assertThat(dark.keySet()).isEqualTo(light().keySet());
		assertThat(dark).allSatisfy((id, colour) -> assertThat(contrast(colour, DARK)).as(id).isGreaterThanOrEqualTo(LEAST));
	}

	@Test
	void whatUnderlinesAFindingStandsOutInBothThemes() throws IOException {
		Map<String, RGB> light = new TreeMap<>();
		for (IConfigurationElement element : Platform.getExtensionRegistry()
				.getConfigurationElementsFor("org.eclipse.ui.editors.markerAnnotationSpecification")) {
			String key = element.getAttribute("colorPreferenceKey");
			if (key != null && key.startsWith("truelead.")) {
				light.put(key, colour(element.getAttribute("colorPreferenceValue")));
			}
		}
		assertThat(light).containsKeys("truelead.editor.error.colour", "truelead.editor.warning.colour",
				"truelead.editor.information.colour");
		assertThat(light).allSatisfy((key, colour) -> assertThat(contrast(colour, WHITE)).as(key)
				.isGreaterThanOrEqualTo(LEAST_OF_PICTURES));
		Map<String, RGB> dark = new TreeMap<>(light);
		sheet().filter(line -> line.strip().startsWith("'truelead.")).map(line -> line.strip().split("['=]"))
				.forEach(parts -> assertThat(dark.put(parts[1], colour(parts[2]))).as(parts[1]).isNotNull());
		assertThat(dark).allSatisfy((key, colour) -> assertThat(contrast(colour, DARK)).as(key).isGreaterThanOrEqualTo(LEAST_OF_PICTURES));
	}

	@Test
	void aCycleAndACalloutAreBold() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("colours.nc", "G84 Z-10. F500 (M6X1 TAP)\nG0 X1. (CLEAR)\n/G1 Y2."));
		Screen.waitUntil("colours", () -> styleAt(program, "G84") != null);
		assertThat(styleAt(program, "G84").fontStyle).isEqualTo(SWT.BOLD);
		assertThat(styleAt(program, "G0").fontStyle).isEqualTo(SWT.NORMAL);
		assertThat(styleAt(program, "(M6X1").fontStyle).isEqualTo(SWT.BOLD | SWT.ITALIC);
		assertThat(styleAt(program, "(CLEAR").fontStyle).isEqualTo(SWT.ITALIC);
		assertThat(styleAt(program, "Y2.").fontStyle).as("behind a block delete").isEqualTo(SWT.ITALIC);
	}

	@Test
	void linesThatComeOnScreenAreColouredWhoeverScrolls() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("long.nc", "G0 X1.\n".repeat(400) + "G84 Z-10. F500 (M6X1 TAP)\n"
				+ "G0 X1.\n".repeat(40)));
		program.widget().setTopIndex(390);
		Screen.waitUntil("colours where the widget was scrolled to", () -> styleAt(program, "G84") != null);
	}

	@Test
	void everyViewHasAnIconOfItsOwnThatStandsOutInBothThemes() throws IOException {
		Map<String, String> icons = new TreeMap<>();
		for (IConfigurationElement element : Platform.getExtensionRegistry().getConfigurationElementsFor("org.eclipse.ui.views")) {
			if (element.getName().equals("view") && element.getAttribute("id").startsWith("truelead.")) {
				icons.put(element.getAttribute("id"), element.getAttribute("icon"));
			}
		}
		assertThat(icons).hasSizeGreaterThan(4);
		assertThat(icons.values()).doesNotHaveDuplicates();
		for (String icon : icons.values()) {
			assertThat(coloursOf(icon)).as(icon).isNotEmpty().allSatisfy(colour -> {
				assertThat(contrast(colour, WHITE)).isGreaterThanOrEqualTo(LEAST_OF_PICTURES);
				assertThat(contrast(colour, DARK)).isGreaterThanOrEqualTo(LEAST_OF_PICTURES);
			});
		}
	}

	private static List<RGB> coloursOf(String icon) throws IOException {
		try (InputStream svg = Platform.getBundle("truelead.editor").getEntry(icon).openStream()) {
			String text = new String(svg.readAllBytes(), StandardCharsets.UTF_8);
			List<RGB> colours = new ArrayList<>();
			for (int at = text.indexOf("\"#"); at >= 0; at = text.indexOf("\"#", at + 1)) {
				int value = Integer.parseInt(text.substring(at + 2, at + 8), 16);
				colours.add(new RGB(value >> 16, value >> 8 & 255, value & 255));
			}
			return colours;
		}
	}

	private static StyleRange styleAt(OpenProgram program, String text) {
		return program.widget().getStyleRangeAtOffset(program.widget().getText().indexOf(text));
	}

	private static Map<String, RGB> light() {
		Map<String, RGB> colours = new TreeMap<>();
		for (IConfigurationElement element : Platform.getExtensionRegistry().getConfigurationElementsFor("org.eclipse.ui.themes")) {
			String id = element.getAttribute("id");
			if (element.getName().equals("colorDefinition") && id.startsWith("truelead.")) {
				colours.put(id, colour(element.getAttribute("value")));
			}
		}
		return colours;
	}

	private static RGB colour(String value) {
		int[] parts = Arrays.stream(value.split(",")).mapToInt(Integer::parseInt).toArray();
		return new RGB(parts[0], parts[1], parts[2]);
	}

	private static Stream<String> sheet() throws IOException {
		try (InputStream sheet = Platform.getBundle("truelead.editor").getEntry("css/dark.css").openStream()) {
			return new String(sheet.readAllBytes(), StandardCharsets.UTF_8).lines();
		}
	}

	private static Map<String, RGB> dark() throws IOException {
		Map<String, RGB> colours = new TreeMap<>();
		for (String line : sheet().filter(line -> line.startsWith("ColorDefinition#")).toList()) {
			String id = line.substring(line.indexOf('#') + 1, line.indexOf(' ')).replace('-', '.');
			int at = line.indexOf("color: #") + 8;
			int value = Integer.parseInt(line.substring(at, at + 6), 16);
			colours.put(id, new RGB(value >> 16, value >> 8 & 255, value & 255));
		}
		return colours;
	}

	private static double contrast(RGB a, RGB b) {
		double first = luminance(a);
		double second = luminance(b);
		return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
	}

	private static double luminance(RGB colour) {
		return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
	}

	private static double linear(int part) {
		double value = part / 255.0;
		return value <= 0.03928 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
	}
}
