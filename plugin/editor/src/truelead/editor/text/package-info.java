/** The text of a program as the platform holds it, with an index of its lines that a first key does not have to build anew. */
package truelead.editor.text;
