/** The view of the thread at the caret, drawn. */
package truelead.editor.thread;
