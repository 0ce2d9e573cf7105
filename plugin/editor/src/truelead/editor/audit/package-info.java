/**
 * The view and the dialogs of an audit: many programs checked in a job, findings accepted and taken back, reports written.
 * {@code truelead.audit} does the work.
 *
 * <p>The workbench ({@code truelead.editor.audit}) runs the same {@code Audit} in a job and keeps no program text; a note that accepts a
 * finding is placed by {@code AllowNote}, which tries a place by a check of the changed text. picocli is not part of the bundle: nothing
 * outside the {@code …Command} classes and {@code Main} may touch it.
 */
package truelead.editor.audit;
