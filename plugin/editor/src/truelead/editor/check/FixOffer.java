package truelead.editor.check;

import java.util.ArrayList;
import java.util.List;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;

/**
 * A way to remove a finding, as it is offered: nothing has to be checked to show it.
 *
 * @param choice     which of the finding's fixes
 * @param everywhere whether all findings of its rule in the program are fixed the same way
 * @param label      what it says on the screen
 * @param why        why it is safe, or what to look at first
 */
public record FixOffer(int choice, boolean everywhere, String label, String why) {

	/** A fix of more lines than this is not told by them. */
	private static final int MOST_LINES = 3;
	private static final String LOOK_FIRST = " (look first)";
	private static final String PARTS = "\t";
	private static final String OFFERS = "\n";

	/**
	 * The offers for a finding, best first: one a fix, and, where the rule was found more than once and its best fix is safe, one for all
	 * of its kind.
	 */
	public static List<FixOffer> of(CheckedText checked, Finding finding) {
		List<FixOffer> offers = new ArrayList<>();
		List<Fix> fixes = finding.fixes();
		for (int choice = 0; choice < fixes.size(); choice++) {
			if (possible(checked, fixes.get(choice))) {
				offers.add(new FixOffer(choice, false, said(fixes.get(choice).title() + elsewhere(fixes.get(choice), finding),
						fixes.get(choice)), fixes.get(choice).why()));
			}
		}
		if (!offers.isEmpty() && fixes.get(0).safe() && severalOf(checked, finding)) {
			offers.add(new FixOffer(0, true, said("Fix every " + finding.rule() + " in this program", fixes.get(0)), fixes.get(0).why()));
		}
		return offers;
	}

	/** Whether to look first, and at what; else why it is safe. */
	public String advice() {
		return (label.endsWith(LOOK_FIRST) ? "Look first: " : "Safe to take: ") + why;
	}

	/** Whether all that a fix changes is in the checked program itself. */
	public static boolean possible(CheckedText checked, Fix fix) {
		return !fix.edits().isEmpty() && fix.edits().stream().allMatch(edit -> checked.here(edit.at()));
	}

	/** Where it changes the program, if that is not the line of the finding. */
	private static String elsewhere(Fix fix, Finding finding) {
		List<String> lines = fix.edits().stream().map(Edit::at).filter(at -> at.line() != finding.at().line()
				|| at.file() != finding.at().file()).map(at -> "line " + (at.line() + 1)).distinct().limit(MOST_LINES + 1L).toList();
		return lines.isEmpty() || lines.size() > MOST_LINES ? "" : " in " + String.join(", ", lines);
	}

	private static String said(String title, Fix fix) {
		return fix.safe() ? title : title + LOOK_FIRST;
	}

	private static boolean severalOf(CheckedText checked, Finding finding) {
		return checked.shown().stream().filter(other -> other.rule().equals(finding.rule())).filter(other -> !other.fixes().isEmpty())
				.filter(other -> other.fixes().get(0).safe()).map(Finding::at).distinct().limit(2).count() > 1;
	}

	/** The offers as a marker keeps them. */
	static String written(List<FixOffer> offers) {
		StringBuilder text = new StringBuilder();
		for (FixOffer offer : offers) {
			text.append(text.isEmpty() ? "" : OFFERS)
					.append(String.join(PARTS, Integer.toString(offer.choice), Boolean.toString(offer.everywhere), plain(offer.label),
							plain(offer.why)));
		}
		return text.toString();
	}

	/** The offers that a marker keeps; what it does not say as we write it is left out. */
	public static List<FixOffer> read(String written) {
		List<FixOffer> offers = new ArrayList<>();
		for (String line : written.split(OFFERS)) {
			String[] parts = line.split(PARTS, -1);
			if (parts.length == 4 && parts[0].length() == 1 && Character.isDigit(parts[0].charAt(0))) {
				offers.add(new FixOffer(parts[0].charAt(0) - '0', Boolean.parseBoolean(parts[1]), parts[2], parts[3]));
			}
		}
		return offers;
	}

	private static String plain(String words) {
		return words.replace('\t', ' ').replace('\n', ' ');
	}
}
