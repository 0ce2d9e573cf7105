package truelead.checker.rule;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Severities to taste: a rule may be set to another severity, or off. */
public record RuleSettings(Map<String, Severity> severities, Set<String> off) {

	/** As the pages say. */
	public static final RuleSettings DEFAULT = new RuleSettings(Map.of(), Set.of());

	public RuleSettings {
		severities = Map.copyOf(severities);
		off = Set.copyOf(off);
	}

	/** The severity to report at; empty where the rule is off. */
	public Optional<Severity> severityOf(String rule, Severity byDefault) {
		return off.contains(rule) ? Optional.empty() : Optional.of(severities.getOrDefault(rule, byDefault));
	}
}
