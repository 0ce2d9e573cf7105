/** A page of the guide as text on the screen, in the guide and at the side of dialogs. */
package truelead.editor.page;
