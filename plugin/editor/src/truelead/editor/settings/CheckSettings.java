package truelead.editor.settings;

import java.util.HashMap;
import java.util.HashSet;
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
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.RuleSettings;
import truelead.checker.rule.Severity;
import truelead.editor.EditorIds;

/**
 * The settings of a workspace or a project by which programs are checked. A project's go before the workspace's. They stand in its folder
 * {@code .settings}, so that they are shared with it; its machine is a file of its own, which the command reads too.
 */
public final class CheckSettings {

	/** The severity that switches a rule off. */
	public static final String OFF = "off";

	private static final String SEVERITY = "severity.";
	private static final String SEVERITIES_COUNT = "severities.count";
	private static final String MACHINE = "machine";
	private static final String TOOLS = "tools";
	private static final String STOCK = "stock";

	private final IEclipsePreferences node;
	private final Optional<IProject> project;
	private boolean changed;

	private CheckSettings(IEclipsePreferences node, Optional<IProject> project) {
		this.node = node;
		this.project = project;
	}

	/** Those of the workspace. */
	public static CheckSettings ofWorkspace() {
		return new CheckSettings(InstanceScope.INSTANCE.getNode(EditorIds.BUNDLE), Optional.empty());
	}

	/** Those of a project alone. */
	public static CheckSettings of(IProject project) {
		return new CheckSettings(new ProjectScope(project).getNode(EditorIds.BUNDLE), Optional.of(project));
	}

	/** The severities in force in a project, or outside any. */
	public static RuleSettings rules(Optional<IProject> project) {
		Map<String, String> words = new HashMap<>(ofWorkspace().severities());
		project.filter(IProject::isAccessible).map(CheckSettings::of).filter(CheckSettings::severitiesCount)
				.ifPresent(own -> words.putAll(own.severities()));
		Map<String, Severity> severities = new HashMap<>();
		Set<String> off = new HashSet<>();
		words.forEach((rule, word) -> {
			if (OFF.equals(word)) {
				off.add(rule);
			} else {
				severity(word).ifPresent(severity -> severities.put(rule, severity));
			}
		});
		return new RuleSettings(severities, off);
	}

	/** The workspace's machine; the generic milling machine, which a program's own words may overrule, where none is set. */
	public static MachineProfile machine() {
		String text = ofWorkspace().machineText();
		return text.isEmpty() ? MachineProfile.generic() : MachineProfile.read(text, "the workspace's machine").profile();
	}

	/** The text of the workspace's machine profile; empty where none is set. */
	public String machineText() {
		return get(MACHINE);
	}

	/** Sets the workspace's machine profile; an empty text takes it back. */
	public void machineText(String text) {
		put(MACHINE, text);
	}

	/** The tool list: the way to its file from the project's folder, or from the root of the disk; empty for none. */
	public String tools() {
		return get(TOOLS);
	}

	/** Sets the tool list; an empty way takes it back. */
	public void tools(String way) {
		put(TOOLS, way);
	}

	/** What the parts are cut from where no program says, in the words of a STOCK note; empty where nothing is set. */
	public String stock() {
		return get(STOCK);
	}

	/** Sets what the parts are cut from; an empty text takes it back. */
	public void stock(String words) {
		put(STOCK, words);
	}

	/** Whether a project's severities count; the workspace's always do. */
	public boolean severitiesCount() {
		return project.isEmpty() || Boolean.parseBoolean(get(SEVERITIES_COUNT));
	}

	/** Says whether a project's severities count. */
	public void severitiesCount(boolean count) {
		put(SEVERITIES_COUNT, count ? "true" : "");
	}

	/** The word for a rule's severity here: error, warning, information, off, or empty where nothing is set. */
	public String severityOf(String rule) {
		return get(SEVERITY + rule);
	}

	/** Sets the word for a rule's severity here; an empty word takes it back. */
	public void severityOf(String rule, String word) {
		put(SEVERITY + rule, word);
	}

	/** Writes what was set; programs are checked again where it changes anything. */
	public void save() {
		try {
			node.flush();
		} catch (BackingStoreException cannotSave) {
			ILog.of(CheckSettings.class).error("Cannot save settings", cannotSave);
		}
		if (changed && project.isEmpty()) {
			Rebuild.all();
		}
		changed = false;
	}

	private String get(String key) {
		try {
			return node.get(key, "");
		} catch (IllegalStateException projectGone) {
			return "";
		}
	}

	private void put(String key, String value) {
		if (value.equals(get(key))) {
			return;
		}
		changed = true;
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
