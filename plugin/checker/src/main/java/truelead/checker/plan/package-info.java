/** Choosing how to make a thread, and the program for it. Pure: no file, clock or screen. Lengths mm, speeds m/min and rev/min. */
package truelead.checker.plan;
