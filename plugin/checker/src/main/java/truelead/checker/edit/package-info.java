/**
 * What an editor asks of a program besides findings: what can be folded, what a name stands for and where else it stands, what holds at a
 * block, what may be typed at a place, and the changes that a command makes. Answers are values; nobody here changes a text.
 *
 * <p>{@code truelead.checker.edit} has no workbench in it and is tested without one. {@code Probe}, which tells what holds at a block, runs
 * the program with dwells put in before and behind it: steps that carry the state and any expression's value. The editor asks on the
 * check's thread or in a job, and makes a {@code Change} in one undo step. One of very many places is made a whole text ({@code Rewrite})
 * in the job, and {@code WholeText} sets it and carries folds, bookmarks, findings and caret along; of more than 100,000 lines
 * {@code PieceByPiece} makes it in pieces of some 20 ms, so that the screen answers and it can be given up. The check is told what was
 * typed and not the text ({@code EditTrail}), and the program's own document stands on the screen until a fold is closed
 * ({@code FoldingViewer}): neither costs more in a longer program. A command is a class of {@code editor.command} or
 * {@code editor.navigate}, and lines for command, key and the two menus in plugin.xml; {@code CommandsTest} fails where its key is one of
 * the platform's.
 */
package truelead.checker.edit;
