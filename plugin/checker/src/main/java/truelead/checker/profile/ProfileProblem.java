package truelead.checker.profile;

/**
 * Something in a machine profile's file that cannot be used; the rest of the file is used.
 *
 * @param line    line in the file, from 0
 * @param message one sentence, with what is allowed
 */
public record ProfileProblem(String file, int line, String message) {
}
