/** What came of checking a program: its findings with their fingerprints, what is accepted, and the tally of all programs. */
package truelead.audit.result;
