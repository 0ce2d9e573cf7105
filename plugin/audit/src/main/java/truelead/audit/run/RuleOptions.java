package truelead.audit.run;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import truelead.audit.terminal.Complaint;
import truelead.checker.callout.NearestSpelling;
import truelead.checker.rule.Rule;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Severity;
import truelead.checker.rulebook.Rules;

/** Reads {@code --rule NAME=SEVERITY} and severities in general. */
final class RuleOptions {

	private RuleOptions() {
	}

	/** Settings from texts such as {@code edge-not-broken=off}; a rule or severity that is none ends the command with a complaint. */
	static RuleSettings settings(List<String> written) {
		Map<String, Severity> severities = new HashMap<>();
		Set<String> off = new HashSet<>();
		for (String one : written) {
			int equals = one.indexOf('=');
			String name = equals < 0 ? one : one.substring(0, equals);
			if (equals < 0 || Rules.named(name).isEmpty()) {
				throw new Complaint(equals < 0 ? "--rule takes NAME=SEVERITY, not \"" + one + "\""
						: "no rule \"" + name + "\"; the nearest is " + NearestSpelling.among(name,
								Rules.ALL.stream().map(Rule::name).toList()));
			}
			String value = one.substring(equals + 1);
			if (value.equalsIgnoreCase("off")) {
				off.add(name);
			} else {
				severities.put(name, severity("--rule " + name, "off, ", value));
			}
		}
		return new RuleSettings(severities, off);
	}

	/** A severity by its name. */
	static Severity severity(String option, String written) {
		return severity(option, "", written);
	}

	private static Severity severity(String option, String further, String written) {
		try {
			return Severity.valueOf(written.toUpperCase(Locale.ROOT));
		} catch (IllegalArgumentException unknown) {
			throw new Complaint(option + " takes " + further + "error, warning or information, not \"" + written + "\"");
		}
	}
}
