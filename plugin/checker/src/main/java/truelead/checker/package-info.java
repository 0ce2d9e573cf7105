/**
 * The checker as a function: {@link truelead.checker.Checker} checks a program once, {@link truelead.checker.EditedProgram} again and again
 * while it is edited, with the same findings.
 *
 * <p>An editor checks with an {@code EditedProgram}, which keeps its last check. After an edit it does as little as gives the same answer.
 * {@code Trace} has kept, before each block that changes the tool and before one of the first of each chunk, all that is in force
 * ({@code Restart}, and in a chunk {@code Recorder.Halt}; whatever else an executor remembers must be at rest there,
 * {@code BlockExecutor.atRest}). An edit that changes no number of lines and nothing but motions and their numbers ({@code ChangedLines})
 * is followed from the nearest such block above it to the first one below it where all is as before, within a stay or from tool change to
 * tool change; each line has numbers for four steps, so that those behind stay. Then
 * <ul>
 * <li>where the same is recorded and names none of the changed lines ({@code Recorded}), work and findings stay, and are only put into the
 *     new text;
 * <li>where strokes or runs of arcs of a long stay differ, in a work of few operations ({@code EditedHoles.suits}), the holes beside them
 *     are sorted again ({@code Resorting}), rows of strokes and stretches of passes that differ made anew ({@code EditedStrokes},
 *     {@code PassSplice}), and all operations judged by their kinds: that makes a digit in a stay of a hundred thousand holes cheap;
 * <li>where more of a stay differs, and numbers alone were edited, the stays followed and all that are at their holes or beside them, now
 *     or before ({@code Sections}, {@code HoleStays}), are sorted by themselves and their operations judged as a {@code Work.part}: that
 *     makes one of any number of operations cheap. Of the others the findings stay ({@code FoundByPart}), and so do those about no
 *     operation of a rule that says that they are of one stay ({@code Rule.isOfAStay}) and tells of those alone that {@code Work.judges};
 * <li>in all other cases, in programs that jump, call, set variables or are a lathe's, and where edits of the second and third kind follow
 *     each other (each makes the other's state void), all is checked anew.
 * </ul>
 *
 * <p>What was followed after an edit holds the text as it was then. A part of 500 edits ago is followed once more ({@code EditedPlaces}), a
 * few at each edit, so that old texts are let go and no edit pays for all.
 *
 * <p>Whatever a finding may depend on beyond that is asked for before: {@code Sectioned} (places, coolant, offsets, ...), and {@code Ties},
 * by which a stay is judged together with the one that its feed, speed or mode is left over from. A rule that looks further says what for.
 * What it asks of the whole program it asks by {@code Work.survey}: each stay says by itself what matters, which is compared before and
 * after an edit, and who is told something else now is judged with the part. What it gathers of all tools outlives an edit
 * ({@code Work.ofTools}). Where neither will do, {@code Work.dependsOnAll} has all judged anew, at each key while the finding stands: <b>a
 * new rule that looks at other tools, operations or holes than those at and beside its own operation's holes does one of these.</b> Whoever
 * gives {@code MachineState}, {@code Place} or an executor a field that later blocks depend on copies it, or has {@code atRest} ask for it.
 * {@code EditedProgramTest} holds the answers to those of a check from scratch ({@code -Dedits.programs=1000} for as many programs of 25
 * edits each, {@code -Dedits.long=100} for long ones of few tools, {@code -Dedits.milled=100} for those of milled threads,
 * {@code -Dedits.faulty=300} for those whose slips stand while other parts are edited); {@code EditCostTest} what an edit may cost.
 */
package truelead.checker;
