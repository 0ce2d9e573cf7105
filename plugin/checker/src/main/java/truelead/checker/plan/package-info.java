/**
 * Choosing how to make a thread, and the program for it. Pure: no file, clock or screen. Lengths mm, speeds m/min and rev/min.
 *
 * <p>Wish (what a person typed) ──► Request ──► Weigher (for, against, ruled out) ──► Plan ──► ProgramBlocks, LatheBlocks
 *
 * <p>{@code ExistingReader} makes a {@code Request} of an operation of a program, each part with who says it; {@code NearestOperation}
 * finds the operation of a line for command, lesson and editor. {@code HolePlan} gives the drill and the depths, {@code MillCut} cutter,
 * feeds and radial passes, {@code Demand} torque, power and time, {@code SpeedBand} the speeds; {@code Plan} takes the first possible
 * {@code Method} in the order that suits the stock. Codes of the blocks come from the profile ({@code Dialect}), numbers through
 * {@code Figure}, so that F is S times the pitch to the last digit. {@code PlanPropertyTest} holds every thread of the tables, with seeded
 * options, to {@code PlainMachine}, which follows a program by itself, and to our own check: nothing above information (a part of them in
 * the build; all by {@code -Dplan.every=1}). Limits are those of the rules; a new one belongs into both. Text, page, JSON and the editor's
 * wizard show the same {@code Plan}: no machining is in them.
 */
package truelead.checker.plan;
