package truelead.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What every source of ours keeps to, so that it can be read. */
class SourcesTest {

	private static final int LONGEST = 450;
	private static final int LONG = 300;
	private static final int WIDEST = 140;
	private static final int TAB = 4;
	private static final Pattern CONSTANT = Pattern.compile("\\n\\t+private static final [\\w<>\\[\\], ]+ (\\w+) =");
	private static final Pattern METHOD =
			Pattern.compile("\\n\\t+private (?:static |final )*(?:<[^>]*> )?(?!record )[\\w<>\\[\\], .?]+ (\\w+)\\(([^)]*)\\)[^{;]*\\{");
	private static final Pattern PARAMETER = Pattern.compile("(\\w+)(?:,|$)");

	@Test
	void noClassIsLong() {
		assertThat(House.shipped().stream().filter(source -> source.lines() > LONGEST).map(source -> source.path() + ", " + source.lines()
				+ " lines")).as("a class of more than " + LONGEST + " lines does several things: find the one that can stand alone")
				.isEmpty();
	}

	@Test
	void fewClassesAreOfMiddleLength() {
		List<JavaSource> shipped = House.shipped();
		List<String> longer = shipped.stream().filter(source -> source.lines() >= LONG).map(source -> source.path() + ", " + source.lines()
				+ " lines").toList();
		assertThat(longer).as("at most 5 % of " + shipped.size() + " classes have " + LONG + " lines or more")
				.hasSizeLessThanOrEqualTo(shipped.size() / 20);
	}

	@Test
	void noLineIsWiderThanAScreen() {
		List<String> wide = House.JAVA.stream().flatMap(source -> source.widerThan(WIDEST, TAB).stream()).toList();
		assertThat(wide).as("fold lines of more than " + WIDEST + " columns, and write programs in strings as text blocks").isEmpty();
	}

	@Test
	void everyImportIsUsed() {
		List<String> idle = new ArrayList<>();
		for (JavaSource source : House.JAVA) {
			Set<String> words = new HashSet<>(List.of(source.body().split("\\W+")));
			for (JavaSource.Import one : source.imports()) {
				boolean hidden = Pattern.compile("\\b(class|record|interface|enum) " + Pattern.quote(one.name()) + "\\b")
						.matcher(source.code()).find();
				if (hidden || !words.contains(one.name()) || !one.member() && one.from().equals(source.packageName())) {
					idle.add(source.path() + " imports " + one.name());
				}
			}
		}
		assertThat(idle).as("take out imports that nothing uses, or that a class of the file hides by its own name, and name the classes "
				+ "instead of a *").isEmpty();
	}

	@Test
	void everyPrivateConstantAndParameterIsRead() {
		assertThat(House.shipped().stream().flatMap(source -> unread(source).stream())).as("take out what nothing reads").isEmpty();
	}

	@Test
	void theSearchSeesWhatNothingReads() {
		JavaSource source = JavaSource.of("plugin/checker/src/main/java/truelead/checker/hole/Cone.java", """
				final class Cone {

					private static final double POINT = 118;
					private static final double WIDE = 3;

					private record Side(double slant) {
					}

					private static double half(double angle, Side side) {
						return angle / 2 * WIDE;
					}
				}
				""");
		assertThat(unread(source)).containsExactly(source.path() + " never reads POINT", source.path() + " never reads side of half");
	}

	/** Constants, and parameters of methods, that are private and read nowhere. */
	private static List<String> unread(JavaSource source) {
		List<String> unread = new ArrayList<>();
		String code = source.code();
		for (Matcher found = CONSTANT.matcher(code); found.find();) {
			if (!named(found.group(1), code.replaceFirst("\\b" + found.group(1) + "\\b", ""))
					&& !found.group(1).equals("serialVersionUID")) {
				unread.add(source.path() + " never reads " + found.group(1));
			}
		}
		for (Matcher found = METHOD.matcher(code); found.find();) {
			String body = body(code, found.end());
			String method = found.group(1);
			PARAMETER.matcher(found.group(2).replaceAll("<[^>]*>", "")).results().map(one -> one.group(1)).filter(one -> !named(one, body))
					.forEach(one -> unread.add(source.path() + " never reads " + one + " of " + method));
		}
		return unread;
	}

	private static boolean named(String word, String code) {
		return Pattern.compile("\\b" + word + "\\b").matcher(code).find();
	}

	/** From behind an opening brace to its closing one. */
	private static String body(String code, int from) {
		int open = 1;
		int at = from;
		for (; open > 0 && at < code.length(); at++) {
			open += code.charAt(at) == '{' ? 1 : code.charAt(at) == '}' ? -1 : 0;
		}
		return code.substring(from, at);
	}

	@Test
	void everyPackageSaysWhatItIsFor() {
		Set<String> folders = new HashSet<>();
		House.JAVA.stream().filter(source -> source.ships())
				.forEach(source -> folders.add(source.path().substring(0, source.path().lastIndexOf('/'))));
		House.JAVA.stream().filter(source -> source.fileName().equals("package-info.java"))
				.forEach(source -> folders.remove(source.path().substring(0, source.path().lastIndexOf('/'))));
		assertThat(folders).as("write a package-info.java with a sentence for the newcomer").isEmpty();
	}

	@Test
	void everyPublicTypeSaysWhatItIs() {
		Pattern type =
				Pattern.compile("^\\t*public (?:static |final |abstract |sealed |non-sealed "
						+ ")*(?:class|record|interface|enum|@interface) (\\w+)");
		List<String> silent = new ArrayList<>();
		for (JavaSource source : House.shipped()) {
			boolean said = false;
			for (String line : source.text().split("\n")) {
				said |= line.strip().startsWith("/**");
				if (type.matcher(line).find() && !said) {
					silent.add(source.path() + ": " + line.strip());
				}
				said &= !line.isBlank();
			}
		}
		assertThat(silent).as("a public type has one sentence of Javadoc: what it is, units of its numbers, what bad input gets").isEmpty();
	}

	@Test
	void linesAreIndentedWithTabs() {
		Pattern spaces = Pattern.compile("(?m)^ {2,}\\S");
		assertThat(House.JAVA.stream().filter(source -> spaces.matcher(source.text()).find()).map(JavaSource::path))
				.as("a tab a level, so that a change shows what it changes").isEmpty();
	}

	@Test
	void namesAreOfTheTrade() {
		Pattern empty = Pattern.compile("(Manager|Helper|Utils?|Impl)(Test)?\\.java$");
		assertThat(House.JAVA.stream().map(JavaSource::fileName).filter(name -> empty.matcher(name).find()))
				.as("Manager, Helper, Util and Impl say nothing: name the thing as the trade does").isEmpty();
	}

	@Test
	void everyTextAndNumberHasItsLocale() {
		assertThat(places("String\\.format\\((?!\\s*Locale)|\\.to(Lower|Upper)Case\\(\\)|\\.formatted\\(|\\.getBytes\\(\\)|new "
				+ "(FileReader|FileWriter)\\(|Charset\\.defaultCharset"))
				.as("a decimal comma or a Turkish i must change nothing: Locale.ROOT, and UTF-8 by name").isEmpty();
	}

	private static List<String> places(String pattern) {
		Pattern compiled = Pattern.compile(pattern);
		return House.shipped().stream().flatMap(source -> source.places(compiled).stream()).toList();
	}
}
