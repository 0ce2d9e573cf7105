/** What stands from before: accepted findings, and the baseline that only new findings are counted against. */
package truelead.audit.standing;
