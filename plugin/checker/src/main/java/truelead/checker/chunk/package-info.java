/**
 * What follows from the text of a chunk of blocks by itself, before anybody knows what is in force there: plain contours, rows of places,
 * blocks that come again and again, and which lines need a look at all.
 *
 * <p>{@link truelead.checker.chunk.ChunkFacts} is read once a chunk and kept with it, so that an edit elsewhere costs nothing; the machine
 * decides, by what is in force, whether it may take a stretch in one step. Everything is in program units and counts lines from the start
 * of the chunk.
 */
package truelead.checker.chunk;
