package truelead.editor.settings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ProjectScope;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import truelead.checker.machine.MachineProfile;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Severity;
import truelead.editor.EditorIds;

/**
 * The settings of a workspace or a project: severities of rules, and the machine. A project's go before the workspace's, rule by rule.
 * A project's stand in its folder {@code .settings}, so that they are shared with it.
 */
public final class CheckSettings {

	/** Key of the machine: the name of a profile that comes with Truelead. */
	public static final String MACHINE = "machine";
	/** The severity that switches a rule off. */
	public static final String OFF = "off";

	private static final String SEVERITY = "severity.";

	private final IEclipsePreferences node;

	private CheckSettings(IEclipsePreferences node) {
		this.node = node;
	}

	/** Those of the workspace. */
	public static CheckSettings ofWorkspace() {
		return new CheckSettings(InstanceScope.INSTANCE.getNode(EditorIds.BUNDLE));
	}

	/** Those of a project alone. */
	public static CheckSettings of(IProject project) {
		return new CheckSettings(new ProjectScope(project).getNode(EditorIds.BUNDLE));
	}

	/** The severities in force in a project, or outside any. */
	public static RuleSettings rules(Optional<IProject> project) {
		Map<String, Severity> severities = new HashMap<>();
		Set<String> off = new HashSet<>();
		for (CheckSettings scope : scopes(project)) {
			scope.severities().forEach((rule, word) -> {
				off.remove(rule);
				severities.remove(rule);
				if (OFF.equals(word)) {
					off.add(rule);
				} else {
					severity(word).ifPresent(severity -> severities.put(rule, severity));
				}
			});
		}
		return new RuleSettings(severities, off);
	}

	/** The machine in force in a project, or outside any; the generic milling machine where none is chosen. */
	public static MachineProfile machine(Optional<IProject> project) {
		String name = "";
		for (CheckSettings scope : scopes(project)) {
			name = scope.machine().isEmpty() ? name : scope.machine();
		}
		return MachineProfile.shipped().contains(name) ? MachineProfile.named(name) : MachineProfile.generic();
	}

	private static List<CheckSettings> scopes(Optional<IProject> project) {
		List<CheckSettings> scopes = new ArrayList<>(List.of(ofWorkspace()));
		project.filter(IProject::isAccessible).map(CheckSettings::of).ifPresent(scopes::add);
		return scopes;
	}

	/** The machine chosen here; empty for none. */
	public String machine() {
		return node.get(MACHINE, "");
	}

	/** Chooses a machine here; an empty name takes the choice back. */
	public void machine(String name) {
		put(MACHINE, name);
	}

	/** The word for a rule's severity here: error, warning, information, off, or empty where nothing is set. */
	public String severityOf(String rule) {
		return node.get(SEVERITY + rule, "");
	}

	/** Sets the word for a rule's severity here; an empty word takes it back. */
	public void severityOf(String rule, String word) {
		put(SEVERITY + rule, word);
	}

	/** Writes what was set. */
	public void save() {
		try {
			node.flush();
		} catch (BackingStoreException cannotSave) {
			ILog.of(CheckSettings.class).error("Cannot save settings", cannotSave);
		}
	}

	private void put(String key, String value) {
		if (value.isEmpty()) {
			node.remove(key);
		} else {
			node.put(key, value);
		}
	}

	private Map<String, String> severities() {
		Map<String, String> severities = new HashMap<>();
		try {
			for (String key : node.keys()) {
				if (key.startsWith(SEVERITY)) {
					severities.put(key.substring(SEVERITY.length()), node.get(key, ""));
				}
			}
		} catch (BackingStoreException | IllegalStateException gone) {
			return Map.of();
		}
		return severities;
	}

	private static Optional<Severity> severity(String word) {
		for (Severity severity : Severity.values()) {
			if (severity.name().toLowerCase(Locale.ROOT).equals(word)) {
				return Optional.of(severity);
			}
		}
		return Optional.empty();
	}
}
