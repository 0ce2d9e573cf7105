/** The operations of a program as a tree, in the Outline view and at a key. */
package truelead.editor.outline;
