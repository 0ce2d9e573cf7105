/**
 * Where holes are and what is done there other than threading.
 *
 * <p>{@link truelead.checker.hole.HoleBook} takes {@link truelead.checker.hole.Cut}s as they come and finds the
 * {@link truelead.checker.hole.Hole} that each is at; {@link truelead.checker.hole.Holes} hands them out. A plate may have a hundred
 * thousand: they are kept as plain numbers, rows of cuts as one, and each hole is made anew when somebody asks for it.
 */
package truelead.checker.hole;
