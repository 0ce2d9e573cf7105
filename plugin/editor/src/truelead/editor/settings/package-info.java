/**
 * What a person has set for the workspace and for a project.
 *
 * <p>{@code CheckSettings} is a scope, workspace or project; {@code ScopedPage} is the page of either, {@code Sheet} its table with a field
 * to look for words. A page is a class and, in plugin.xml, its lines with search words. What a page shows comes from the checker:
 * {@code ProfileSheet} (a profile as keys and lines), {@code ToolListSheet}, {@code RulePage}. F1 on it opens the chapter it names
 * ({@code PageTray}). Whatever a check of a project depends on must be known to {@code SettingsFiles}: a change of these files has open
 * editors check again and the builder check all. A change of the workspace's goes to the editors by the preference node and to the builder
 * by {@code Rebuild}.
 */
package truelead.editor.settings;
