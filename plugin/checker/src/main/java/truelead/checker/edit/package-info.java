/**
 * What an editor asks of a program besides findings: what can be folded, what a name stands for and where else it stands, what holds at a
 * block, what may be typed at a place, and the changes that a command makes. Answers are values; nobody here changes a text.
 */
package truelead.checker.edit;
