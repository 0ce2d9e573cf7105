package truelead.checker.machine;

/**
 * Blocks of a chunk in a row that only move straight, none of them along one axis alone, so that one step can stand for all of them under
 * absolute distance. Told from the text alone; lines count from the start of the chunk.
 *
 * @param from   first line
 * @param to     line behind the last one
 * @param moves  number of blocks that move
 * @param code   0 for G0, 1 for G1, -1 where none of the blocks says it
 * @param x      last X word, program units; NaN where none is said, and so on for y and z
 * @param levels whether any of them changes Z
 */
record Contour(int from, int to, int moves, int code, double x, double y, double z, boolean levels) {
}
