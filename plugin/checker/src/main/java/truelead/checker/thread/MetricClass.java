package truelead.checker.thread;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A tolerance class of internal metric threads: grades 4 to 8 and a position, H from the basic size up, G a little above it
 * (ISO 965-1).
 *
 * @param name       as the standard writes it: {@code 6H}, {@code 4H5H}
 * @param pitchGrade the grade of the pitch diameter
 * @param minorGrade the grade of the minor diameter
 * @param position   {@code H} or {@code G}
 */
record MetricClass(String name, int pitchGrade, int minorGrade, char position) {

	/** The classes of ISO 965-1, H first. */
	static final List<String> NAMES = names();

	/** Read from its name; empty for anything that is no class of an internal metric thread, such as {@code 6g}. */
	static Optional<MetricClass> of(String name) {
		if (name.length() != 2 && name.length() != 4) {
			return Optional.empty();
		}
		int pitchGrade = name.charAt(0) - '0';
		int minorGrade = name.charAt(name.length() - 2) - '0';
		char position = name.charAt(1);
		boolean known = grade(pitchGrade) && grade(minorGrade) && (position == 'H' || position == 'G')
				&& name.endsWith(String.valueOf(position));
		return known ? Optional.of(new MetricClass(name, pitchGrade, minorGrade, position)) : Optional.empty();
	}

	private static boolean grade(int grade) {
		return grade >= 4 && grade <= 8;
	}

	private static List<String> names() {
		List<String> names = new ArrayList<>();
		for (String position : List.of("H", "G")) {
			for (int grade = 4; grade <= 8; grade++) {
				names.add(grade + position);
			}
		}
		return List.copyOf(names);
	}
}
