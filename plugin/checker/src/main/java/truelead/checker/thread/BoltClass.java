package truelead.checker.thread;

import java.util.Locale;
import java.util.Optional;

/**
 * A tolerance class of external metric threads: a grade of the pitch diameter, one of the major diameter, and a position, h from the basic
 * size down, g a little below it (ISO 965-1). The positions e and f are not held.
 *
 * @param name       as the standard writes it: {@code 6g}, {@code 5g6g}
 * @param pitchGrade the grade of the pitch diameter, 3 to 9
 * @param majorGrade the grade of the major diameter: 4, 6 or 8
 * @param position   {@code g} or {@code h}
 */
record BoltClass(String name, int pitchGrade, int majorGrade, char position) {

	/** Read from its name, in small letters or in the capitals that many programs have alone; empty for anything that is no such class. */
	static Optional<BoltClass> of(String written) {
		String name = written.toLowerCase(Locale.ROOT);
		if (name.length() != 2 && name.length() != 4) {
			return Optional.empty();
		}
		int pitchGrade = name.charAt(0) - '0';
		int majorGrade = name.charAt(name.length() - 2) - '0';
		char position = name.charAt(1);
		boolean known = pitchGrade >= 3 && pitchGrade <= 9 && (majorGrade == 4 || majorGrade == 6 || majorGrade == 8)
				&& (position == 'g' || position == 'h') && name.charAt(name.length() - 1) == position;
		return known ? Optional.of(new BoltClass(name, pitchGrade, majorGrade, position)) : Optional.empty();
	}
}
