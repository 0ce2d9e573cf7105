/** Rules on how a tap is fed and turned. */
package truelead.checker.rule.tapping;
