package truelead.faults;

/** What the checker said of a program: the rule, its level (error, warning, note), the line from 1, the message. */
record Said(String rule, String level, int line, String message) {

    /** True for errors and warnings. */
    boolean loud() {
        return !level.equals("note") && !level.equals("none");
    }
}
