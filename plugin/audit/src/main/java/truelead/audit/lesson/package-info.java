/** The subcommand {@code lesson}: numbers to move, until feed, depth or helix are right. */
package truelead.audit.lesson;
