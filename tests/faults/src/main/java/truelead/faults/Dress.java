package truelead.faults;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** How a program is written down: spacing, order of words, zeros and points, N words, ends of lines. It changes no meaning. */
final class Dress {
	private enum Zeros { POINT, FULL, SHORT }

	private final Dice dice;
	private final boolean semicolon;
	private final String between;
	private final String inside;
	private final boolean lower;
	private final boolean shuffled;
	private final boolean leadingZero;
	private final boolean twoDigits;
	private final Zeros zeros;
	private final int step;
	private final String end;
	private final boolean optionalBlocks;
	private int number;

	Dress(long seed, boolean semicolon, boolean numbered) {
		this.dice = new Dice(seed);
		this.semicolon = semicolon;
		this.between = dice.pick(" ", " ", " ", "");
		this.inside = !between.isEmpty() && dice.chance(0.03) ? " " : "";
		this.lower = dice.chance(0.08);
		this.shuffled = dice.chance(0.25);
		this.leadingZero = dice.chance(0.7);
		this.twoDigits = dice.chance(0.4);
		this.zeros = dice.pick(Zeros.POINT, Zeros.POINT, Zeros.FULL, Zeros.SHORT);
		int numbers = dice.pick(0, 0, 1, 5, 10);
		this.step = numbered ? numbers : 0;
		this.end = dice.pick("\n", "\n", "\r\n");
		this.optionalBlocks = dice.chance(0.3);
		this.number = step;
	}

	Print print(Tape tape) {
		StringBuilder text = new StringBuilder();
		Map<String, List<Integer>> lines = new HashMap<>();
		int line = 1;
		for (Block block : tape.all()) {
			if (block.empty()) {
				continue;
			}
			for (String mark : block.marks) {
				lines.computeIfAbsent(mark, m -> new ArrayList<>()).add(line);
			}
			text.append(row(block)).append(end);
			line++;
		}
		return new Print(text.toString(), lines);
	}

	private String row(Block block) {
		String comment = block.comment.isEmpty() ? "" : semicolon ? "; " + block.comment : "(" + block.comment + ")";
		if (!block.line.isEmpty()) {
			return block.line + (comment.isEmpty() ? "" : " " + comment);
		}
		if (block.words.isEmpty()) {
			return comment;
		}
		List<String> parts = new ArrayList<>();
		for (Word word : ordered(block)) {
			parts.add(word(word));
		}
		String slash = block.optional && optionalBlocks ? "/" : "";
		String n = step > 0 ? (lower ? "n" : "N") + number + between : "";
		number += step;
		return slash + n + String.join(between, parts) + (comment.isEmpty() ? "" : (between.isEmpty() ? "" : " ") + comment);
	}

	private List<Word> ordered(Block block) {
		List<Word> words = new ArrayList<>(block.words);
		if (!shuffled || block.fixed || words.size() < 3) {
			return words;
		}
		for (int i = words.size() - 1; i > 0; i--) {
			Collections.swap(words, i, dice.whole(0, i));
		}
		return words;
	}

	private String word(Word word) {
		String letter = lower ? String.valueOf(word.letter()).toLowerCase(Locale.ROOT) : String.valueOf(word.letter());
		return letter + inside + (word.text().isEmpty() ? number(word) : lower ? word.text().toLowerCase(Locale.ROOT) : word.text());
	}

	private String number(Word word) {
		if (word.decimals() < 0) {
			String code = Figures.trim(word.value(), 2);
			boolean pad = twoDigits && "GMT".indexOf(word.letter()) >= 0 && code.length() == 1;
			return pad ? "0" + code : code;
		}
		String digits = zeros == Zeros.FULL ? Figures.full(word.value(), word.decimals()) : Figures.trim(word.value(), word.decimals());
		if (digits.startsWith("-") && digits.chars().allMatch(c -> c == '-' || c == '0' || c == '.')) {
			digits = digits.substring(1);
		}
		if (zeros == Zeros.POINT && digits.indexOf('.') < 0) {
			digits += ".";
		}
		if (!leadingZero && Math.abs(word.value()) < 1 && !digits.startsWith("0.0000") && digits.length() > 2) {
			digits = digits.startsWith("0.") ? digits.substring(1) : digits.startsWith("-0.") ? "-" + digits.substring(2) : digits;
		}
		return digits;
	}
}
