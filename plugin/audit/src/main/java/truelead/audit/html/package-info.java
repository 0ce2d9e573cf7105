/** The report, the comparison and the plan as pages that need nothing but themselves. */
package truelead.audit.html;
