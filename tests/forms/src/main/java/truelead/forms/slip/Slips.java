package truelead.forms.slip;

import java.util.ArrayList;
import java.util.List;
import truelead.forms.Words;
import truelead.grammar.Block;
import truelead.grammar.Element;

/** All slips that have room in a program. */
final class Slips {

	private final List<Block> blocks;
	private final List<String> lines;
	private final List<String> tools;
	private final List<Slip> all = new ArrayList<>();

	private Slips(List<Block> blocks, List<String> tools) {
		this.blocks = blocks;
		this.lines = blocks.stream().map(Block::text).toList();
		this.tools = tools;
	}

	/** Those of a program's blocks, given the tool at each of them. */
	static List<Slip> of(List<Block> blocks, List<String> tools) {
		Slips slips = new Slips(blocks, tools);
		for (int line = 0; line < blocks.size(); line++) {
			if (Words.any(blocks.get(line))) {
				slips.atWords(line);
				slips.atLine(line);
			}
		}
		return slips.all;
	}

	private void atLine(int line) {
		for (LineSlip slip : LineSlip.values()) {
			put("line", slip.written(), line, slip.of(lines, line));
		}
	}

	private void atWords(int line) {
		Block block = blocks.get(line);
		for (Element.Word word : block.words()) {
			if (word.literal() && word.extension() < 0 && "NO:".indexOf(word.address()) < 0) {
				if ("GM".indexOf(word.address()) >= 0) {
					atCode(line, block, word);
				} else {
					atNumber(line, block, word);
				}
			}
		}
	}

	private void atCode(int line, Block block, Element.Word word) {
		String code = word.address() + Words.code(word);
		put(code, NumberSlip.LEFT_OUT.written(), line, block, word, "");
		for (String typed : CodeSlip.of(code)) {
			put(code, "typed " + typed, line, block, word, typed);
		}
	}

	private void atNumber(int line, Block block, Element.Word word) {
		String of = word.address() + (Words.cycle(block) > 0 ? " of a cycle" : "");
		String number = Words.written(block, word).substring(1).strip();
		for (NumberSlip slip : NumberSlip.values()) {
			if (slip != NumberSlip.SIGN_TURNED || "XYZUVWIJKR".indexOf(word.address()) >= 0) {
				slip.of(number).ifPresent(typed -> put(of, slip.written(), line, block, word, typed.isEmpty() ? ""
						: word.address() + typed));
			}
		}
	}

	private void put(String of, String kind, int line, Block block, Element.Word at, String typed) {
		List<String> now = new ArrayList<>(lines);
		now.set(line, Words.each(block, word -> word.equals(at) ? typed : null));
		put(of, kind, line, now);
	}

	private void put(String word, String kind, int line, List<String> now) {
		if (!now.equals(lines)) {
			all.add(new Slip(new Slip.Kind(tools.get(line), word, kind), line, now));
		}
	}
}
