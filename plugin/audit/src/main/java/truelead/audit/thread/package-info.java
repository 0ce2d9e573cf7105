/** The subcommand {@code thread}: the numbers of a thread. */
package truelead.audit.thread;
