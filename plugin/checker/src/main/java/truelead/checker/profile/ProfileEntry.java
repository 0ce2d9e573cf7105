package truelead.checker.profile;

import java.util.List;

/**
 * A key or code of a machine profile, for whoever shows a profile.
 *
 * @param key     its name: {@code unit}, {@code G84}
 * @param value   what the profile's own line says, good or not; where it has none, what its base says; empty where nobody says anything
 * @param own     whether the profile has a line for it
 * @param base    what holds without such a line; empty for nothing
 * @param purpose what it is for
 * @param takes   what it takes, in words; empty for any text
 * @param choices the values it takes, where they can be counted
 */
public record ProfileEntry(String key, String value, boolean own, String base, String purpose, String takes, List<String> choices) {

	public ProfileEntry {
		choices = List.copyOf(choices);
	}
}
