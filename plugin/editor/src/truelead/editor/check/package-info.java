/**
 * The check of an open program while it is typed in, of a project by its builder, and what is shown of findings: annotations, markers,
 * their tips.
 */
package truelead.editor.check;
