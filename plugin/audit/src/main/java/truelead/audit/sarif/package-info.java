/** The report as SARIF 2.1.0. */
package truelead.audit.sarif;
