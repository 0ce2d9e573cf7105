/**
 * Lessons: what a wrong feed, depth, helix or pass does to tool and thread, as functions of numbers a person can move. The same functions
 * stand in {@code lesson-model.js} for pages; a test holds the two together. Lengths in mm, forces in N, torques in N m, angles in degrees
 * as shown.
 *
 * <p>{@code truelead.checker.lesson} holds each lesson as data ({@code Control}, {@code Reading}, {@code Plot}, sentences with blanks,
 * grounds) and one function from {@code Values} to an {@code Outcome}. {@code lesson-model.js} beside it in the resources is the same
 * function for pages: whoever changes one changes the other, and {@code AgreementTest} compares a thousand seeded settings within 1e-9 in
 * Rhino, {@code BrowserTest} in Chromium where one is on the PATH. A constant of a model says where it comes from, in Javadoc and among the
 * lesson's grounds. {@code Filling} takes the values from an operation of a checked program; {@code Lessons.ofRule} says which rules a
 * lesson explains, and their pages name it. {@code PlotPicture} draws a page's first picture, {@code lesson-page.js} the later ones by the
 * same layout. An exercise is a line in {@code Exercise} and a program in the resources; it is done when the checker finds nothing above
 * information and every thread is still made.
 */
package truelead.checker.lesson;
