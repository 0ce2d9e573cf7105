package truelead.checker.work;

/** What a program does to the part: tools, holes and threading operations, and the facts known of them. A stub until the work room lands. */
public final class Work {
}
