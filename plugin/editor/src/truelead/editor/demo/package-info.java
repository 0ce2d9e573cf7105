/** The project with the demo programs. */
package truelead.editor.demo;
