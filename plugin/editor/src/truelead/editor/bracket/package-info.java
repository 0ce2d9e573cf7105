/** Brackets of comments and expressions: the pair at the caret, and the closing one that is typed by itself. */
package truelead.editor.bracket;
