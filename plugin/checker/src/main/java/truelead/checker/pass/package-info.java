/**
 * Passes of thread mills: once round and down at a hole, or at thousands of them that are alike.
 *
 * <p>A {@link truelead.checker.pass.Pass} is a helix before its hole is known, {@link truelead.checker.pass.CopiedPasses} are those that
 * come again at place after place; both are {@link truelead.checker.pass.PassRow}s. {@link truelead.checker.pass.PassStretches} keeps the
 * rows of an operation with their holes and tells the passes that differ in place and time alone, so that rules judge a few; each
 * {@link truelead.checker.pass.MillPass} is made when somebody asks for it, through a list, {@link truelead.checker.pass.MillPasses}.
 * {@link truelead.checker.pass.PassSplice} puts those of an edit in the place of others.
 */
package truelead.checker.pass;
