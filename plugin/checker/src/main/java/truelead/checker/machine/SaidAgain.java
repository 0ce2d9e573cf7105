package truelead.checker.machine;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/** What a block puts in force that says the words of another one again: the same numbers, by words of its own. */
final class SaidAgain {

	private final BlockRef before;
	private final BlockRef now;
	private final Block read;

	/** @param now a block with the same words as the one before, places and block number aside */
	SaidAgain(BlockRef before, BlockRef now) {
		this.before = before;
		this.now = now;
		this.read = now.file().text().block(now.line());
	}

	/** A stroke under the cycle that the block says. */
	Step.Stroke stroke(Step.Stroke stroke) {
		return new Step.Stroke(stroke.block(), stroke.modal().fed(setting(stroke.modal().feed())), cycle(stroke.cycle()), stroke.place(),
				stroke.initial(), stroke.rLevel(), stroke.bottom(), stroke.positioned(), stroke.repeat(), stroke.resolution());
	}

	/** The cycle, said by the block. */
	Cycle cycle(Cycle cycle) {
		Map<Character, Setting> words = new HashMap<>(cycle.words());
		words.replaceAll((address, setting) -> setting(setting));
		WordRef code = word(cycle.gWord(), number -> MachineProfile.tenfold(number.value()) == cycle.code());
		return new Cycle(cycle.kind(), cycle.code(), now, cycle.since(), code, words);
	}

	/** A number in force, by the word of the block where it was one of the block before. */
	Setting setting(Setting said) {
		Optional<WordRef> word = said.word().filter(one -> one.block().sameBlock(before));
		return word.isPresent() ? new Setting(said.value(), word.map(one -> word(one, number -> true)), said.why()) : said;
	}

	private WordRef word(WordRef said, Predicate<Expression.Number> meant) {
		for (Element element : read.elements()) {
			if (element instanceof Element.Word word && word.address() == said.address() && word.value() instanceof Expression.Number number
					&& meant.test(number)) {
				return WordRef.of(now, word, read.text());
			}
		}
		return said;
	}
}
