package truelead.checker.job;

/** What the part is cut from, as far as tapping cares. */
public enum StockGroup {
	STEEL, STAINLESS, CAST_IRON, ALUMINIUM, BRASS, BRONZE, COPPER, TITANIUM, NICKEL_ALLOY, MAGNESIUM, ZINC, PLASTIC, OTHER;

	/** Iron, and everything that is harder on a tap than light metal. */
	public boolean ferrous() {
		return this == STEEL || this == STAINLESS || this == CAST_IRON;
	}
}
