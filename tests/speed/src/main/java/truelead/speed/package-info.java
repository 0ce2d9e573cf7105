/**
 * Measures how long checks and starts of the command take; run by hand, never by the tests.
 */
package truelead.speed;
