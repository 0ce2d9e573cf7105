/**
 * Measures reading, checking and editing, block by block.
 */
package truelead.speed.block;
