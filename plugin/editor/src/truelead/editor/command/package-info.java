/** The commands that change a program: comments, block delete, numbers, capitals; long changes are made piece by piece. */
package truelead.editor.command;
