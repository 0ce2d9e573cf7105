/**
 * A program as all rooms refer to it: its file and the files beside it, blocks as they are executed, words as they are written, numbers
 * with the word that set them, ranges that findings point at, and the units, feed modes and planes that words choose.
 *
 * <p>Values alone; nothing here follows or judges a program.
 */
package truelead.checker.program;
