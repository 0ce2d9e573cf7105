/**
 * What is wanted at the holes of an operation, and who says so.
 *
 * <p>{@link truelead.checker.wanted.WantedReader} is told where an operation stands in the program
 * ({@link truelead.checker.wanted.Whereabouts}) and what it cuts ({@link truelead.checker.wanted.AsCut}), weighs notes, callouts, the
 * title, the tool and the numbers, the nearest first, and gives {@link truelead.checker.wanted.Wanted}. It knows nothing of how operations
 * are found.
 */
package truelead.checker.wanted;
