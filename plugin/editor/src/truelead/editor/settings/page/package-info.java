/** The pages on which settings are shown and changed. */
package truelead.editor.settings.page;
