package truelead.checker.drawing;

/**
 * From mm in the hole to points on the paper.
 *
 * @param centre paper x of the hole's axis
 * @param top    paper y of the top of the hole
 * @param across points a mm across
 * @param down   points a mm down
 */
record SectionGeometry(double centre, double top, double across, double down) {

	/** Paper y of a depth. */
	double y(double depth) {
		return top + depth * down;
	}

	/** Half the width of a diameter on paper. */
	double half(double diameter) {
		return diameter / 2 * across;
	}
}
