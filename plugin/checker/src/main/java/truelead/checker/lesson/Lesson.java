package truelead.checker.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A lesson: numbers to move, what comes of them, and what that rests on. */
public interface Lesson {

	/** A number in a sentence: its name and its decimals, as in {@code {lag:2}}. */
	Pattern BLANK = Pattern.compile("\\{(\\w+):(\\d)}");

	/** Its name: feed, depth, helix, passes. */
	String name();

	/** Its title. */
	String title();

	/** What it is about, in two or three sentences. */
	String introduction();

	/** What can be moved. */
	List<Control> controls();

	/** What is shown as numbers. */
	List<Reading> readings();

	/** What is drawn. */
	List<Plot> plots();

	/** Sentences that may hold, with blanks for numbers. */
	List<String> sentences();

	/** What the model rests on, one sentence each with its source. */
	List<String> grounds();

	/** What comes of the values. */
	Outcome outcome(Values values);

	/** The sentences that hold for an outcome, with their numbers: the drawings in words. */
	default List<String> said(Outcome outcome) {
		List<String> said = new ArrayList<>();
		for (int number : outcome.says()) {
			Matcher blanks = BLANK.matcher(sentences().get(number));
			said.add(blanks.replaceAll(blank -> Reading.fixed(outcome.number(blank.group(1)), Integer.parseInt(blank.group(2)))));
		}
		return said;
	}
}
