package truelead.checker.work;

import java.util.BitSet;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Holes;

/** Finds the holes that are made and never threaded. */
final class Unthreaded {

	private Unthreaded() {
	}

	/** Those of a work whose operations have the numbers of its holes, in the order first reached. */
	static Supplier<List<Hole>> of(Holes holes, List<ThreadingOperation> operations) {
		return new Later<>(() -> others(holes, threaded(holes, operations)));
	}

	/** The same of one whose operations have numbers of their own. */
	static Supplier<List<Hole>> byPlace(Supplier<Holes> places, List<ThreadingOperation> operations) {
		return new Later<>(() -> {
			Holes holes = places.get();
			BitSet threaded = new BitSet(holes.count());
			operations.forEach(operation -> operation.holes().stream().filter(hole -> hole.place().known())
					.forEach(hole -> threaded.set(holes.at(hole.place(), 0))));
			return others(holes, threaded);
		});
	}

	/** The numbers of those of a work whose operations have the numbers of its holes. */
	static BitSet numbers(Holes holes, List<ThreadingOperation> operations) {
		BitSet threaded = threaded(holes, operations);
		BitSet open = new BitSet(holes.count());
		for (int number = threaded.nextClearBit(0); number < holes.count(); number = threaded.nextClearBit(number + 1)) {
			open.set(number, holes.made(number));
		}
		return open;
	}

	private static BitSet threaded(Holes holes, List<ThreadingOperation> operations) {
		BitSet threaded = new BitSet(holes.count());
		for (ThreadingOperation operation : operations) {
			if (operation instanceof Tapping tapping) {
				tapping.strokes().mark(threaded);
			} else if (operation instanceof ThreadMilling milling) {
				milling.mark(threaded);
			}
		}
		return threaded;
	}

	private static List<Hole> others(Holes holes, BitSet threaded) {
		return holes.holes(IntStream.range(0, holes.count()).filter(number -> !threaded.get(number) && holes.made(number)).toArray());
	}
}
