/**
 * What a program does to the part: threading operations and their holes.
 *
 * <p>Rules see {@link truelead.checker.work.Work} alone and never the program's text. After an edit
 * {@link truelead.checker.work.EditedWork} does as little again as it asks for: stays of tools by themselves ({@code StaySorting}), what
 * rules have asked of all of them ({@code Surveys}) as far as it differs.
 *
 * <p>{@code WorkReader} runs the machine with a {@code Recorder}, which keeps cycles, {@code AxisRun}s, {@code ArcRun}s, changes of
 * compensation and a {@code ToolLog} for each stay of a tool in the spindle, and nothing of a plain contour. Of a lathe
 * {@code LatheMotions} (package {@code turn}) keeps what tools do beside the axis: bores ({@code TurnedBores}), threads by a single point
 * ({@code SinglePoints}), and the outside with its shoulders and where parts are cut off ({@code TurnedOutside}). When the program has
 * ended
 * <ul>
 * <li>{@code Commentary} has its comments and those of the files it calls, notes apart; {@code Stays} tells to which stay a line belongs;
 * <li>{@code ToolBook} puts together what is known of each tool: notes, its own comments, the list at the head, the tool list file;
 * <li>{@code Chords} in {@code ArcRuns} holds straight feeds back that turn one way, {@code ChordPath} tells which of them go round
 *     circles, and {@code ChordArcs} makes arcs of those where a helix is among them: all behind sees arcs alone
 *     ({@code Step.Arc.inChords});
 * <li>{@code Sorting} tells, in the order of execution, what is a cut at a hole ({@code HoleBook}, {@code Cut}) and what makes a thread
 *     ({@code TapDrafts}, {@code MillDrafts});
 * <li>{@code WantedReader} (package {@code wanted}) finds what is wanted at the holes of each draft, the nearest source first
 *     ({@code NearbyCallouts}), each number with who says it ({@code Fact}); it is told where the draft stands ({@code Whereabouts}) and
 *     what it cuts ({@code AsCut}), and knows nothing of how it was found;
 * <li>{@code Operations} makes the {@code Tapping}s and {@code ThreadMilling}s of the drafts, and says what could not be evaluated.
 * </ul>
 */
package truelead.checker.work;
