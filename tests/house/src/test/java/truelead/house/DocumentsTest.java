package truelead.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What README.md, DEVELOPERS.md and the descriptions of the packages name is there. */
class DocumentsTest {

	private static final Pattern TYPE = Pattern.compile("\\b(?:class|record|interface|enum|grammar) (\\w+)");
	private static final Pattern NAMED = Pattern.compile("`((?:[a-z]+\\.)*)([A-Z][a-z]\\w*)((?:\\.\\w+)*)[^`\\s]*`");
	private static final Pattern SWITCH = Pattern.compile("-D([a-z]+\\.[a-z]+)=");
	private static final Pattern FOLDER = Pattern.compile("(?:^|[ `(])((?:grammar|plugin|feature|tests)/[\\w./-]*\\w)", Pattern.MULTILINE);

	@Test
	void everyClassThatTheDevelopersPageNamesIsThere() {
		Map<String, List<JavaSource>> types = new HashMap<>();
		for (JavaSource source : House.JAVA) {
			TYPE.matcher(source.code()).results().forEach(found -> types.computeIfAbsent(found.group(1), name -> new ArrayList<>())
					.add(source));
		}
		Set<String> others = new HashSet<>(List.of("Double", "Comparator")); // Java's own
		House.files().stream().filter(file -> file.endsWith(".g4"))
				.forEach(file -> others.add(file.substring(file.lastIndexOf('/') + 1, file.length() - 3)));
		Set<String> gone = new TreeSet<>();
		for (Matcher found = NAMED.matcher(pages()); found.find();) {
			List<JavaSource> known = types.getOrDefault(found.group(2), List.of());
			boolean there = known.stream().anyMatch(source -> (source.packageName() + ".").endsWith(found.group(1))
					&& has(source, found.group(3)));
			if (!there && !others.contains(found.group(2))) {
				gone.add(found.group());
			}
		}
		assertThat(gone).as("DEVELOPERS.md or a package-info names a class, a package before it or something in it that is no longer "
				+ "there: tell what is there now").isEmpty();
	}

	/** DEVELOPERS.md and behind it how each package works, names between the same marks. */
	private static String pages() {
		return House.text("DEVELOPERS.md") + House.JAVA.stream().filter(source -> source.path().endsWith("package-info.java"))
				.map(source -> source.text().replaceAll("\\{@code ([^}]*)}", "`$1`")).collect(Collectors.joining("\n"));
	}

	/** Whether a source speaks of each of some members. */
	private static boolean has(JavaSource source, String members) {
		return Arrays.stream(members.split("\\.")).filter(member -> !member.isEmpty())
				.allMatch(member -> Pattern.compile("\\b" + member + "\\b").matcher(source.code()).find());
	}

	@Test
	void everySwitchOfTheTestsIsThere() {
		Set<String> gone = new TreeSet<>();
		for (Matcher found = SWITCH.matcher(pages()); found.find();) {
			String name = found.group(1);
			if (!name.startsWith("surefire.") && House.JAVA.stream().noneMatch(source -> source.text().contains('"' + name + '"'))) {
				gone.add(name);
			}
		}
		assertThat(gone).as("DEVELOPERS.md or a package-info names a system property that nothing asks for").isEmpty();
	}

	@Test
	void everyPlaceThatThePagesNameIsThere() {
		Set<String> gone = new TreeSet<>();
		List<String> files = House.files();
		for (String page : List.of("README.md", "DEVELOPERS.md")) {
			for (Matcher found = FOLDER.matcher(House.text(page)); found.find();) {
				String place = found.group(1);
				if (!place.contains("/target") && files.stream().noneMatch(file -> file.equals(place) || file.startsWith(place + "/"))) {
					gone.add(page + " names " + place);
				}
			}
		}
		assertThat(gone).as("a path in a page leads nowhere").isEmpty();
	}

	@Test
	void theNoticesNameTheVersionsThatTravel() {
		String pom = House.text("pom.xml");
		String notices = House.text("feature/notices/THIRD-PARTY.txt");
		Set<String> versions = new TreeSet<>();
		for (String pattern : List.of("<artifactId>[\\w-]+</artifactId><version>([\\d.]+)</version></dependency>",
				"<antlr.version>([\\d.]+)<")) {
			Pattern.compile(pattern).matcher(pom).results().forEach(found -> versions.add(found.group(1)));
		}
		assertThat(versions).hasSizeGreaterThan(4);
		assertThat(versions).as("feature/notices/THIRD-PARTY.txt travels with every jar and names what is in it")
				.allSatisfy(version -> assertThat(notices).contains(" " + version));
	}
}
