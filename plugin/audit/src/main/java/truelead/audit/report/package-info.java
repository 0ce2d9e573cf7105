/** What a report is asked for and how its file is written whole; the report on the terminal. */
package truelead.audit.report;
