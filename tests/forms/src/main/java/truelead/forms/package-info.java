/**
 * The same program in another form: rewritings that leave what the machine does alone, and a test that what is found stays the same too. It
 * finds more false alarms than a new set of programs.
 *
 * <p>A {@link truelead.forms.Form} is a small class that says in its first sentence why the machine does the same. It works on blocks and
 * words as the grammar reads them ({@code Words} writes a block with some words changed and all else as it was) and on where the tool
 * stands ({@code Course}, worked out here a second time, without the checker's machine). What it cannot rewrite with certainty it refuses,
 * with a reason ({@code declines}); the test counts those. Start from one of {@code BlockByBlock}, {@code RowByRow} (canned cycles and the
 * places behind them) and {@code ArcByArc}, and add it to {@code Forms.ALL}.
 *
 * <p>Where a rule judges the very thing that a form changes, as the decimals of F, the form names it in {@code judgedByIt} and says why; a
 * rule that needs what the form hides may fall silent, never speak ({@code mayFallSilent}). Everything else that differs is a defect: of
 * the form, or of the checker.
 *
 * <p>{@code FormsTest} takes the samples of the rule pages, the demo programs, the checker's test programs and those of the fault bench.
 * Folders of programs:
 * <pre>
 *     java -cp tests/forms/target/classes:plugin/audit/target/truelead.jar truelead.forms.Compare OUT 500 - FOLDER...
 * </pre>
 */
package truelead.forms;
