/** The Five-Minute Walk. */
package truelead.editor.walk;
