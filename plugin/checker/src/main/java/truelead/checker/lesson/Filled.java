package truelead.checker.lesson;

/**
 * A lesson with the numbers of an operation of a program.
 *
 * @param lesson the lesson
 * @param values its controls where the operation has them
 * @param about  which operation, and what was found, in one line
 */
public record Filled(Lesson lesson, Values values, String about) {
}
