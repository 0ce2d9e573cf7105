package truelead.checker.pass;

import truelead.checker.hole.Place;

/**
 * Passes of a thread mill in the order of execution, before their holes are known: one by itself, or those of helices that come again at
 * place after place.
 */
public interface PassRow {

	/** How many they are, 1 or more. */
	int count();

	/** One of them, from 0. */
	Pass pass(int index);

	/** Where one of them is. */
	Place place(int index);

	/** Half of the coarsest last decimal written in the blocks of one, mm. */
	double resolution(int index);

	/** Number of the first arc of one in the order of execution. */
	int order(int index);

	/** A number that passes have in common which differ in place, block and time alone. */
	int shape(int index, PassShapes shapes);
}
