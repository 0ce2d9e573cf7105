package truelead.audit.lesson;

import com.google.gson.Gson;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import truelead.checker.drawing.Markup;
import truelead.checker.lesson.Control;
import truelead.checker.lesson.Exercise;
import truelead.checker.lesson.Filled;
import truelead.checker.lesson.Lesson;
import truelead.checker.lesson.Lessons;
import truelead.checker.lesson.Outcome;
import truelead.checker.lesson.Plot;
import truelead.checker.lesson.PlotPicture;
import truelead.checker.lesson.Reading;

/** A lesson as one page that needs nothing beside it and loads nothing; without scripts it shows the values it was written with. */
final class LessonPage {

	/** Writes the angle brackets of a text as escapes, so no text can end the element it stands in. */
	private static final Gson GSON = new Gson();
	private final StringBuilder out = new StringBuilder();

	private LessonPage() {
	}

	static String write(Filled filled) {
		return new LessonPage().page(filled);
	}

	private String page(Filled filled) {
		Lesson lesson = filled.lesson();
		Outcome outcome = lesson.outcome(filled.values());
		out.append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"UTF-8\"><meta name=\"viewport\" content=\"width=device-width, "
				+ "initial-scale=1\">"
				+ "<meta name=\"color-scheme\" content=\"light dark\"><meta http-equiv=\"Content-Security-Policy\" content=\"default-src "
				+ "'none'; style-src 'unsafe-inline';" + " script-src 'unsafe-inline'\">");
		element("title", "Lesson: " + lesson.title());
		out.append("<style>\n").append(resource("lesson.css")).append("</style></head><body><main>\n");
		element("h1", lesson.title());
		element("p", lesson.introduction());
		if (!filled.about().isEmpty()) {
			out.append("<p class=\"about\">The numbers are those of ");
			text(filled.about()).append("</p>\n");
		}
		out.append("<noscript><p class=\"about\">Without scripts the numbers stand as they are written here.</p></noscript>\n"
				+ "<div class=\"bench\"><form id=\"controls\">\n");
		lesson.controls().forEach(control -> control(control, filled.values().of(control.name())));
		out.append("</form>\n<section><h2>What happens</h2><ul id=\"said\" aria-live=\"polite\">");
		lesson.said(outcome).forEach(sentence -> element("li", sentence));
		out.append("</ul>\n<div class=\"plots\">");
		lesson.plots().forEach(plot -> plot(plot, outcome));
		out.append("</div></section></div>\n<h2>Numbers</h2><table id=\"readings\"><tbody>");
		lesson.readings().forEach(reading -> reading(reading, outcome));
		out.append("</tbody></table>\n<h2>What it rests on</h2><ul>");
		lesson.grounds().forEach(ground -> element("li", ground));
		out.append("</ul>\n");
		exercises(lesson);
		out.append("<footer><p>A model for learning, not for choosing a feed: a wrong thread scraps the part, and a tap that breaks can "
				+ "hurt. The machine's manual and the tool"
				+ " maker's numbers come first.</p></footer></main>\n<script type=\"application/json\" id=\"lesson\">")
				.append(GSON.toJson(data(lesson))).append("</script>\n<script>\n").append(Lessons.script())
				.append(resource("lesson-page.js")).append("</script></body></html>\n");
		return out.toString();
	}

	private void control(Control control, double value) {
		String id = "c-" + control.name();
		out.append("<p class=\"control\"><label for=\"").append(id).append("\">");
		text(control.label()).append("</label> ");
		if (control.choices().isEmpty()) {
			out.append("<span class=\"set\"><input type=\"number\" id=\"").append(id).append("\" name=\"").append(control.name())
					.append("\" min=\"").append(plain(control.least())).append("\" max=\"").append(plain(control.most()))
					.append("\" step=\"any\" value=\"").append(plain(value)).append("\"> <span class=\"unit\">");
			text(control.unit()).append("</span></span><input type=\"range\" aria-label=\"");
			text(control.label()).append("\" data-for=\"").append(control.name()).append("\" min=\"").append(plain(control.least()))
					.append("\" max=\"").append(plain(control.most())).append("\" step=\"").append(plain(control.step()))
					.append("\" value=\"").append(plain(value)).append("\">");
		} else {
			out.append("<select id=\"").append(id).append("\" name=\"").append(control.name()).append("\">");
			for (int i = 0; i < control.choices().size(); i++) {
				out.append("<option value=\"").append(i).append(i == (int) value ? "\" selected>" : "\">");
				text(control.choices().get(i)).append("</option>");
			}
			out.append("</select>");
		}
		out.append("</p>\n");
	}

	private void plot(Plot plot, Outcome outcome) {
		out.append("<figure><figcaption>");
		text(plot.title()).append("</figcaption><div class=\"plot\">").append(PlotPicture.of(plot, outcome)).append("</div></figure>\n");
	}

	private void reading(Reading reading, Outcome outcome) {
		out.append("<tr><th scope=\"row\">");
		text(reading.label()).append("</th><td id=\"r-").append(reading.name()).append("\">");
		text(reading.said(outcome.number(reading.name()))).append("</td></tr>\n");
	}

	private void exercises(Lesson lesson) {
		out.append("<h2>Exercises</h2><ol>");
		for (Exercise exercise : Exercise.of(lesson.name())) {
			out.append("<li>");
			text(exercise.task()).append(" <code>lesson ").append(lesson.name()).append(" --exercise ").append(exercise.number())
					.append(" --out ").append(exercise.file()).append("</code> writes the program, <code>lesson ").append(lesson.name())
					.append(" --exercise ").append(exercise.number()).append(" --check ").append(exercise.file())
					.append("</code> looks at what you made of it.<details><summary>The program</summary><pre>");
			text(exercise.program()).append("</pre></details></li>\n");
		}
		out.append("</ol>\n");
	}

	private static Map<String, Object> data(Lesson lesson) {
		Map<String, Object> data = new LinkedHashMap<>();
		data.put("name", lesson.name());
		data.put("readings", lesson.readings());
		data.put("sentences", lesson.sentences());
		data.put("plots", lesson.plots().stream().map(LessonPage::data).toList());
		return data;
	}

	private static Map<String, Object> data(Plot plot) {
		List<Map<String, String>> curves = plot.curves().stream()
				.map(curve -> Map.of("name", curve.name(), "label", curve.label(), "dash", curve.dash().pattern())).toList();
		return Map.of("title", plot.title(), "across", plot.across(), "up", plot.up(), "trueToScale", plot.trueToScale(), "curves", curves);
	}

	private void element(String name, String text) {
		out.append('<').append(name).append('>');
		text(text).append("</").append(name).append(">\n");
	}

	private StringBuilder text(String text) {
		return out.append(Markup.escape(text));
	}

	/** A number for an attribute: at most 6 decimals, no exponent. */
	static String plain(double value) {
		return new java.math.BigDecimal(value).setScale(6, java.math.RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
	}

	private static String resource(String name) {
		try (InputStream in = LessonPage.class.getResourceAsStream(name)) {
			return new String(in.readAllBytes(), StandardCharsets.UTF_8);
		} catch (IOException unreadable) {
			throw new UncheckedIOException(unreadable);
		}
	}
}
