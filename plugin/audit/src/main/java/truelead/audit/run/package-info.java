/**
 * The subcommand {@code check}: what it is given, the programs it goes through, the reports it writes.
 *
 * <p>A run ({@code Audit}; the command and the workbench's view share it) is: {@code ProgramSearch} finds the programs, {@code Order} has
 * them checked on all cores and hands them out one by one in their order (16 MB of program text under way at once, so memory is bounded by
 * the largest program), accept file and baseline judge the findings, and each goes to every {@code Report}. A report keeps no program;
 * files are written under a temporary name and moved ({@code WholeFile}), never over what a run reads or a program ({@code Spared}). What
 * goes to a terminal goes through {@code Printable}. A new format is a class, a line in {@code ReportFormat} and one in {@code ReportPlan}.
 * Numbers of an operation come from {@code truelead.checker.sheet}, drawings from {@code truelead.checker.drawing}: no report computes
 * machining.
 */
package truelead.audit.run;
