/** Proposals while typing, and templates. */
package truelead.editor.complete;
