/** Folds of tools, cycles and notes. */
package truelead.editor.folding;
