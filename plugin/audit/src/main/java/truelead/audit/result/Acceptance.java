package truelead.audit.result;

/**
 * Why a finding is accepted.
 *
 * @param inProgram whether a note in the program says so, as against the accept file
 * @param reason    in the words of whoever accepted it
 * @param person    who; empty where nobody says
 * @param date      when, as written; empty where nobody says
 */
public record Acceptance(boolean inProgram, String reason, String person, String date) {
}
