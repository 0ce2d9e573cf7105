package truelead.checker.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import truelead.checker.machine.Point;
import truelead.checker.program.LengthUnit;

class DrawingsTest {

	@Test
	void aTapThatHitsTheConeIsSaidAndShown() {
		Drawing drawing = section(12.5, 14, 14.5).draw(Ink.BLACK);
		assertThat(drawing.text()).contains("The tap goes 2 mm below the full diameter.");
		assertThat(drawing.svg()).contains("fill=\"#c62828\"");
	}

	@Test
	void aHoleDeepEnoughShowsNoAlarm() {
		Drawing drawing = section(17.5, 19, 14.5).draw(Ink.BLACK);
		assertThat(drawing.text()).contains("3 mm clear below the tap.");
		assertThat(drawing.svg()).doesNotContain("#c62828");
	}

	@Test
	void inchesAreShownInInches() {
		HoleSection inch = new HoleSection(6.35, 1.27, 5.105, 20, 21.5, 12.7, 10, false, 10, Double.NaN, false, Double.NaN, 5,
				LengthUnit.INCH);
		assertThat(inch.draw(Ink.BLACK).text()).startsWith("Hole 0.201 in in diameter");
	}

	@Test
	void labelsOfLevelsCloseTogetherDoNotOverlap() {
		assertThat(labelHeights(section(14.52, 14.53, 14.51).draw(Ink.BLACK).svg()))
				.allSatisfy(gap -> assertThat(gap).isGreaterThanOrEqualTo(12.0));
	}

	@Test
	void aFeedBehindThePitchIsMeasuredAtTheBottom() {
		assertThat(new FeedDrift(1, 500 / 520.0, 14.5, LengthUnit.MM).draw(Ink.BLACK).text())
				.isEqualTo("In 14.5 turns the thread advances 14.5 mm and the feed 13.94 mm: 0.56 mm behind.");
	}

	@Test
	void aPlanCountsItsHolesByState() {
		PatternPlan plan = new PatternPlan(List.of(hole(0, PlanHole.State.THREADED), hole(20, PlanHole.State.THREADED),
				hole(40, PlanHole.State.FINDING)), "XY", LengthUnit.MM);
		assertThat(plan.draw(Ink.BLACK).text()).isEqualTo("Plan of 3 holes: 2 threaded, 1 threaded, with a finding.");
	}

	@Test
	void textOfAProgramCannotBecomeMarkup() {
		String svg = new PatternPlan(List.of(new PlanHole("<script>&\u0000", 0, 0, 5, PlanHole.State.DRILLED)), "XY", LengthUnit.MM)
				.draw(Ink.BLACK).svg();
		assertThat(svg).contains("&lt;script&gt;&amp;\uFFFD").doesNotContain("<script");
	}

	@Property(tries = 200)
	void anyNumbersGiveAPicture(@ForAll double a, @ForAll double b, @ForAll double c, @ForAll double d) throws Exception {
		wellFormed(new HoleSection(a, b, c, d, a, b, c, a > c, d, a, a > b, b, c, LengthUnit.MM).draw(Ink.OF_PAGE));
		wellFormed(new FeedDrift(a, b, c, LengthUnit.INCH).draw(Ink.WHITE));
		wellFormed(new HelixPlan(a, b, c, d, new Point(a, b, 0), List.of(new Point(a, b, 0), new Point(c, d, 0)), LengthUnit.MM)
				.draw(Ink.BLACK));
		wellFormed(new PatternPlan(List.of(new PlanHole("1", a, b, c, PlanHole.State.NO_HOLE),
				new PlanHole("2", c, d, a, PlanHole.State.DRILLED)), "ZX", LengthUnit.MM).draw(Ink.BLACK));
	}

	@Test
	void thePlanOfAHelixShowsWhereTheCutterComesInAndWhichWayItGoes() {
		Point in = new Point(0, 0, 0);
		List<Point> path = List.of(in, new Point(4, 0, 0), new Point(0, 4, 0), new Point(-4, 0, 0), new Point(0, -4, 0),
				new Point(4, 0, 0), in);
		Drawing drawing = new HelixPlan(18.5, 20, 20, 12, in, path, LengthUnit.MM).draw(Ink.BLACK);
		assertThat(drawing.svg()).contains("in, dot; out, ring", "way of its centre, arrow");
		assertThat(drawing.text()).endsWith("major diameter 20 mm, its centre goes counter-clockwise.");
	}

	private static void wellFormed(Drawing drawing) throws Exception {
		DocumentBuilderFactory.newInstance().newDocumentBuilder()
				.parse(new ByteArrayInputStream(drawing.svg().getBytes(StandardCharsets.UTF_8)));
		assertThat(drawing.svg()).doesNotContain("NaN\"", "Infinity\"");
	}

	private static List<Double> labelHeights(String svg) {
		List<Double> heights = new ArrayList<>();
		for (String part : svg.split("<text x=\"236\" y=\"")) {
			if (!part.startsWith("<svg")) {
				heights.add(Double.parseDouble(part.substring(0, part.indexOf('"'))));
			}
		}
		heights.sort(null);
		List<Double> gaps = new ArrayList<>();
		for (int i = 1; i < heights.size(); i++) {
			gaps.add(heights.get(i) - heights.get(i - 1));
		}
		return gaps;
	}

	private static HoleSection section(double full, double point, double tip) {
		return new HoleSection(6, 1, 5, full, point, tip, tip - 2.5, false, 10, Double.NaN, false, Double.NaN, 5, LengthUnit.MM);
	}

	private static PlanHole hole(double x, PlanHole.State state) {
		return new PlanHole("h", x, 0, 5, state);
	}
}
