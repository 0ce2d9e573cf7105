/** What a command says on the terminal, how it complains and how it ends. */
package truelead.audit.terminal;
