/**
 * What is found in a program, and the rules that find it. A rule is its class in a package below this one, its page
 * {@code pages/<name>.md} in the resources beside this package, and one line in {@link truelead.checker.rulebook.Rules#ALL}. Its tests are the
 * samples of its page (form: see the comment of {@code PageSample} among the tests); a test class of its own is written only for what a sample
 * cannot say. Messages take their numbers from {@link truelead.checker.rule.Figures}, fixes their text from
 * {@link truelead.checker.rule.WordText}. Where two rules would explain one number, a {@link truelead.checker.rule.Slip} says which speaks.
 */
package truelead.checker.rule;
