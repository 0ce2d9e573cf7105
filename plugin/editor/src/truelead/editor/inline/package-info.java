/** What is shown in the text without being of it: the notes at the end of operations, and all places of a name. */
package truelead.editor.inline;
