/**
 * What came of checking a program: its findings with their fingerprints, what is accepted, and the tally of all programs.
 *
 * <p>A fingerprint ({@code Fingerprint}) is made of the rule, the words pointed at and the numbers of the finding; of a whole block only X,
 * Y and the tool count, so that another feed in it makes no new finding. A change of the way it is made needs a new name, since baselines
 * and accept files hold it; a baseline with another name is refused.
 */
package truelead.audit.result;
