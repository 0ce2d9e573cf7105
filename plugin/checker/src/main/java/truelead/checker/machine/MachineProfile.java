package truelead.checker.machine;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the checker must know of the machine and its control: meanings of codes that differ, defaults, limits. Read from a properties file.
 * A key that is absent has the value of the generic milling profile.
 */
public final class MachineProfile {

	private final Map<String, String> values;

	private MachineProfile(Map<String, String> values) {
		this.values = Map.copyOf(values);
	}

	/** The profile shipped under that name; {@code milling-metric}, {@code milling-inch}, {@code turning}, {@code rs274}. */
	public static MachineProfile named(String name) {
		return new MachineProfile(Map.of("name", name));
	}

	/** Generic milling, metric by default. */
	public static MachineProfile generic() {
		return named("milling-metric");
	}

	/** A text value by key; empty where the profile does not say. */
	public Optional<String> text(String key) {
		return Optional.ofNullable(values.get(key));
	}

	/** A number by key; empty where the profile does not say. */
	public OptionalDouble number(String key) {
		return OptionalDouble.empty();
	}
}
