/** The lesson view: numbers to move, what comes of them, exercises. */
package truelead.editor.lesson;
