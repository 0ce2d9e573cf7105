/**
 * What is found in a program, and the rules that find it. A rule is its class in a package below this one, its page {@code pages/<name>.md}
 * in the resources beside this package, and one line in {@link truelead.checker.rulebook.Rules#ALL}. Its tests are the samples of its page
 * (form: see the comment of {@code PageSample} among the tests); a test class of its own is written only for what a sample cannot say.
 * Messages take their numbers from {@link truelead.checker.rule.Figures}, fixes their text from {@link truelead.checker.rule.WordText}.
 * A finding at a word that is worked out is told with the lines that say its numbers ({@code SaidBy}, from the text and the calls that led
 * to it: {@code Location.executed}). Where two rules would explain one number, a {@link truelead.checker.rule.Slip} says which speaks.
 *
 * <p>What is alike is judged once. {@code Strokes.typical} gives the first stroke of each kind: those of a kind differ in place, block and
 * time alone, and in where the block of a cycle said anew has its words, and so do the cuts at their holes ({@code StrokeKinds},
 * {@code CutKinds}, {@code CutChains.history}). Helices are told apart relative to their place ({@code PassShapes}, {@code PassTable}), and
 * a pass of {@code MillPasses} is made when somebody asks for it, at some 10 microseconds: {@code MillFacts.look} is the loop over them. A
 * rule asks the typical strokes, passes, or {@code Visits.typical}, and takes all of those kinds that are at fault with {@code where}; what
 * depends on the place itself (a hole beside, a place threaded twice) it asks of each. Whoever gives a stroke or a cut a new property that
 * rules judge by puts it into the kind. What a rule gathers of the whole work, so as not to go through it for each operation, it keeps with
 * {@code Work.derived}: a class of the rule's own made of the work when first asked for, the same for the same work, and let go with it.
 * What it asks of operations or holes anywhere in the program it asks with {@code Work.survey}, so that a digit typed elsewhere has it
 * asked again and not all judged anew.
 *
 * <p>What a program writes a hundred thousand times costs each time the same. What belongs to a line, a group, a loop or a place is looked
 * up there and not looked for in a list: {@code ByLine}, {@code Groups}, {@code OpenLoops} and {@code LoopEnds}, {@code PlaceTree} (the
 * nearest hole that is made before a step, however many are near), {@code HoleCells} (smaller ones where hundreds of holes are in one).
 * What an operation reads around it has a bound: of its tool's comments the first and the nearest ones ({@code NotesOf.ends}), of a title
 * and a tool list so many lines. {@code RepeatedTest} has such programs, and takes minutes where one is lost: a new rule or reader that
 * goes through all comments, findings, holes or operations once for each of them belongs there.
 */
package truelead.checker.rule;
