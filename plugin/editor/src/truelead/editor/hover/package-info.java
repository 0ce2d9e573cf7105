/** What is told of a word or a finding where the mouse rests, or at a key. */
package truelead.editor.hover;
