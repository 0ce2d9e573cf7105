/** The view of the guide, and what a person asks it about. */
package truelead.editor.guide;
