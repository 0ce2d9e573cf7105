/**
 * All rules together: {@link truelead.checker.rulebook.Rules} runs them one after the other, and lets one finding speak where several have
 * one cause or one place.
 */
package truelead.checker.rulebook;
