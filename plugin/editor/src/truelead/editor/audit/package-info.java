/** The view and the dialogs of an audit: many programs checked in a job, findings accepted and taken back, reports written. {@code truelead.audit} does the work. */
package truelead.editor.audit;
