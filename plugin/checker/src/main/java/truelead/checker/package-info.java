/**
 * The checker as a function: {@link truelead.checker.Checker} checks a program once, {@link truelead.checker.EditedProgram} again and again while it is
 * edited, with the same findings.
 */
package truelead.checker;
