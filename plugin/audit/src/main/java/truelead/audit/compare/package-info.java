/** The subcommand {@code compare}: what differs between two programs at the threads. */
package truelead.audit.compare;
