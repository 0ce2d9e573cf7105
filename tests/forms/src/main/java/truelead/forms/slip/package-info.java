/**
 * The slip survey: what of all that is typed wrong is told. It puts slips of the hand into good programs, one at a time and without asking
 * what they do: a word left out, a point, a digit or a sign lost, two digits swapped, M4 for M3, a line lost, twice, or swapped with the
 * next. Each is checked, and counted by tool, word and kind of slip: how often put in, told above information, by which rules. The fault
 * bench asks whether the checker finds what somebody thought of; this shows whole classes that nobody has.
 *
 * <p>{@link truelead.forms.slip.NumberSlip}, {@link truelead.forms.slip.CodeSlip} and {@link truelead.forms.slip.LineSlip} are the kinds; a
 * new one is an entry there. What is silent stays in the folder OUT, a folder a class: {@code 1.nc} is the program as it was checked,
 * {@code 1.txt} shows its lines with what was before and what is now. Many slips do no harm: no class needs to come to 100 %. Programs for
 * it are of any folder, or the good ones of the fault bench:
 * <pre>
 *     java -cp tests/forms/target/classes:tests/faults/target/classes:plugin/audit/target/truelead.jar \
 *         truelead.forms.slip.SlipSurvey OUT 250 150 bench:1 FOLDER...
 * </pre>
 * takes 250 programs by chance and of each 150 slips by chance, no class twice; programs that something is said of above information are
 * left out.
 */
package truelead.forms.slip;
