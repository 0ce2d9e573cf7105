package truelead.faults;

/**
 * How one programmer writes a lathe program: how a tool is called, how the turret goes home, where the speed is limited, and what is
 * said again at each tool; {@code endsByRapid}: a tapping cycle is ended by the next G0, without G80.
 */
record Hand(Turret turret, Home home, boolean limitAtHead, boolean modeAtEachTool, boolean sequence, boolean coolantOffAtHome,
		boolean endsByRapid, boolean modeAtHead) {
	/** {@code T0303}, {@code T303}, or {@code T0300} first and the offset in the first move. */
	enum Turret { FOUR, THREE, LATE }

	enum Home { BOTH, EACH, PLACE, PLACE_AND_OFFSET }

	static Hand of(Dice dice) {
		Home home = dice.pick(Home.BOTH, Home.BOTH, Home.EACH, Home.PLACE, Home.PLACE_AND_OFFSET);
		boolean rapid = home == Home.PLACE || home == Home.PLACE_AND_OFFSET;
		return new Hand(dice.pick(Turret.FOUR, Turret.FOUR, Turret.FOUR, Turret.THREE, Turret.LATE),
			home, dice.chance(0.5), dice.chance(0.25), dice.chance(0.4), dice.chance(0.3), rapid && dice.chance(0.4), dice.chance(0.85));
	}

	/** The T word that turns the turret to a pocket, with the offset of the same number or with none. */
	Word word(int pocket, boolean offset) {
		String second = offset ? Figures.trim(pocket, 0) : "0";
		String two = second.length() < 2 ? "0" + second : second;
		return Word.said('T', (pocket < 10 && turret != Turret.THREE ? "0" : "") + pocket + two);
	}
}
