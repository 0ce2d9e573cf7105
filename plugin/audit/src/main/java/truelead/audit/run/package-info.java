/** The subcommand {@code check}: what it is given, the programs it goes through, the reports it writes. */
package truelead.audit.run;
