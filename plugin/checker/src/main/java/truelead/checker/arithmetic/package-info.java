/**
 * Variables and expressions of programs, as controls work them out.
 *
 * <p>A {@link truelead.checker.arithmetic.Value} that is not known says why, and so does all that is worked out from it; nothing here
 * throws. Angles are degrees, as programs have them.
 */
package truelead.checker.arithmetic;
