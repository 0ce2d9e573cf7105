/**
 * Lessons: what a wrong feed, depth or helix does to tap and thread, as functions of numbers a person can move. The same functions stand in
 * {@code lesson-model.js} for pages; a test holds the two together. Lengths in mm, forces in N, torques in N m, angles in degrees as shown.
 */
package truelead.checker.lesson;
