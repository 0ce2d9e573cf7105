package truelead.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import truelead.house.JavaSource.Member;

/** Every number that others see says its unit, and every constant of the trade says where it comes from. */
class NumbersTest {

	private static final Pattern NUMBER = Pattern.compile("\\b([dD]ouble|OptionalDouble)\\b");
	private static final Pattern CONSTANT =
			Pattern.compile("(?:public |private )?static final (?:double|int|long|BigDecimal)(?:\\[\\])? (\\w+)$");

	/** Units, and words that say that there is none. */
	private static final Pattern UNIT =
			Pattern.compile("\\b(mm|millimetres?|inch|inches|micrometres?|radians?|degrees?|rev/min|rev/s|rev/s\\^2|mm/min|m/min|N "
					+ "m|N/mm|N|kW|seconds?|ms|minutes?|pixels?"
					+ "|turns?|threads?|teeth|pitches|leads|diameters|characters|bytes|HRC|HB|per "
					+ "cent|percent|(?:own|program's|callout's|thread's|its|that|the given) unit|program units|unit of|unit that"
					+ "|ratio|factor|share|times|part of|plain number|decimals)\\b|N/mm²|as in \\{@link");
	/** Who says so. */
	private static final Pattern SOURCE =
			Pattern.compile("\\b(ISO|ASME|DIN|BS|ANSI|JIS|Machinery's Handbook|common practice|from memory|geometry|by definition|choice "
					+ "of ours|the same)\\b");

	@Test
	void everyNumberThatOthersSeeHasItsUnit() {
		List<String> unitless = new ArrayList<>();
		House.shipped().stream().filter(source -> source.in("grammar/", "plugin/checker/", "plugin/audit/"))
				.forEach(source -> unitless.addAll(unitless(source)));
		assertThat(unitless).as("say the unit in the Javadoc (mm, radians, rev/min, the program's own unit ...), or that it is a ratio, "
				+ "factor, share, part of, or a plain number").isEmpty();
	}

	@Test
	void everyConstantOfTheTradeHasItsSource() {
		assertThat(Stream.of("thread", "plan", "lesson")
				.flatMap(room -> sourceless("plugin/checker/src/main/java/truelead/checker/" + room + "/")))
				.as("say in a Javadoc of the constant who says so: a standard with its number, common practice, from memory, geometry, by "
						+ "definition, or a choice of ours").isEmpty();
	}

	@Test
	void theSearchSeesBoth() {
		JavaSource source = JavaSource.of("plugin/checker/src/main/java/truelead/checker/hole/Cone.java", """
				package truelead.checker.hole;

				/**
				 * A cone.
				 *
				 * @param depth below the top, mm
				 * @param angle full, whatever
				 */
				public record Cone(double depth, double angle) {

					/** Of a drill (DIN 338). */
					static final double POINT = Math.toRadians(118);
					private static final int WHY = 3;

					static final double UNKNOWN = 2;

					/** How wide it is. */
					public double width() {
						return 2 * depth;
					}

					/** How wide it is at a depth, mm. */
					public static double width(double at,
							double angle) {
						return width(1, 2);
					}

					@Override
					public double hidden() {
						return 1;
					}
				}
				""");
		assertThat(unitless(source)).containsExactly("plugin/checker/src/main/java/truelead/checker/hole/Cone.java:9  Cone: angle",
				"plugin/checker/src/main/java/truelead/checker/hole/Cone.java:18  public double width()");
		assertThat(sourceless(source))
				.containsExactly("plugin/checker/src/main/java/truelead/checker/hole/Cone.java:15  static final double UNKNOWN");
	}

	private static List<String> unitless(JavaSource source) {
		boolean allPublic = Pattern.compile("^public (sealed )?interface ", Pattern.MULTILINE).matcher(source.code()).find();
		List<String> unitless = new ArrayList<>();
		for (Member member : source.members()) {
			boolean seen = member.declaration().startsWith("public ") || allPublic && !member.declaration().startsWith("private ");
			if (!seen || member.overrides() || !member.declaration().contains("(") || !NUMBER.matcher(member.declaration()).find()) {
				continue;
			}
			if (member.declaration().matches("(public )?(static )?record .*")) {
				silent(member).forEach(component -> unitless.add(place(source, member) + component));
			} else if (!UNIT.matcher(member.doc()).find()) {
				unitless.add(source.path() + ":" + member.line() + "  " + member.declaration());
			}
		}
		return unitless;
	}

	private static String place(JavaSource source, Member record) {
		return source.path() + ":" + record.line() + "  " + record.declaration().replaceAll("(public |static |record )+(\\w+).*", "$2")
				+ ": ";
	}

	/** The numbers of a record of which neither its own line nor the record's sentences name a unit. */
	private static List<String> silent(Member record) {
		String[] said = record.doc().split("@param ");
		if (UNIT.matcher(said[0]).find()) {
			return List.of();
		}
		String components = record.declaration().substring(record.declaration().indexOf('(') + 1, record.declaration().lastIndexOf(')'));
		List<String> silent = new ArrayList<>();
		for (Matcher number = Pattern.compile("[dD]ouble\\S* (\\w+)(?=,|$)").matcher(components); number.find();) {
			if (Arrays.stream(said).noneMatch(line -> line.startsWith(number.group(1) + " ") && UNIT.matcher(line).find())) {
				silent.add(number.group(1));
			}
		}
		return silent;
	}

	private static Stream<String> sourceless(String folder) {
		return House.shipped().stream().filter(source -> source.in(folder)).flatMap(source -> sourceless(source).stream());
	}

	private static List<String> sourceless(JavaSource source) {
		return source.members().stream().filter(member -> CONSTANT.matcher(member.declaration()).find()
				&& !SOURCE.matcher(member.doc()).find()).map(member -> source.path() + ":" + member.line() + "  " + member.declaration())
				.toList();
	}
}
