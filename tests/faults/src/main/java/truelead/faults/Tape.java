package truelead.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The blocks of a program in order: head, main part, and the subprograms that stand behind or before it. */
final class Tape {
	final List<Block> head = new ArrayList<>();
	final List<Block> main = new ArrayList<>();
	final List<Block> subs = new ArrayList<>();
	private List<Block> to = main;

	Block add(Block block) {
		to.add(block);
		return block;
	}

	/** What follows goes to the subprograms until {@link #back()}. */
	void aside() {
		to = subs;
	}

	void back() {
		to = main;
	}

	List<Block> all() {
		List<Block> all = new ArrayList<>(head);
		all.addAll(main);
		all.addAll(subs);
		return all;
	}

	List<Block> marked(String mark) {
		return all().stream().filter(b -> b.marks.contains(mark)).toList();
	}

	/** Whether some blocks have numbers that are jumped to. */
	boolean numbered() {
		return all().stream().anyMatch(b -> b.has('N'));
	}

	Optional<Block> first(String mark) {
		return marked(mark).stream().findFirst();
	}

	/** Takes the block out of whichever part holds it. */
	void remove(Block block) {
		head.remove(block);
		main.remove(block);
		subs.remove(block);
	}

	/** Puts a block before another one of the main part or the subprograms. */
	void before(Block place, Block block) {
		List<Block> part = main.contains(place) ? main : subs;
		part.add(part.indexOf(place), block);
	}

	void after(Block place, Block block) {
		List<Block> part = main.contains(place) ? main : subs;
		part.add(part.indexOf(place) + 1, block);
	}
}
