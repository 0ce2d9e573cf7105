/**
 * All rules together: {@link truelead.checker.rulebook.Rules} runs them one after the other, {@link truelead.checker.rulebook.Precedence} and its
 * neighbours say which finding speaks where several have one cause or one place.
 */
package truelead.checker.rulebook;
