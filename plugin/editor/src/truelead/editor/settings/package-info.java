/** What a person has set for the workspace and for a project. */
package truelead.editor.settings;
