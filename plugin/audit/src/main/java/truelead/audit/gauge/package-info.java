/** The rows of threads to gauge, as a table. */
package truelead.audit.gauge;
