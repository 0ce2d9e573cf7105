/** The program editor itself, put together of all the others. */
package truelead.editor.program;
