package truelead.checker.wanted;

import truelead.checker.program.BlockRef;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;

/**
 * Where an operation stands in the program, and under which tool: to whom comments speak.
 *
 * @param log     the stay of its tool
 * @param tool    what is known of that
 * @param first   its first block
 * @param last    the block of its last stroke or pass
 * @param strokes how many strokes of a tap it has
 */
public record Whereabouts(ToolLog log, ToolUse tool, BlockRef first, BlockRef last, int strokes) {
}
