/** The command: {@link truelead.audit.Main} and its subcommands. */
package truelead.audit;
