/** The subcommand {@code lesson}: numbers to move, until feed, depth, helix or passes are right. */
package truelead.audit.lesson;
