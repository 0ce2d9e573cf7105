/** The subcommand {@code plan}: the ways to make a thread. */
package truelead.audit.plan;
