package truelead.checker.machine;

import truelead.checker.profile.MachineProfile;

/** The G code that richer control languages choose by its group and its number there, {@code G[8]=2} for G54 (from memory). */
final class ModalGroup {

	/** No code of any profile. */
	private static final int NONE = -1;
	private static final int[] PLANES = {17, 18, 19};
	private static final int[] OFFSETS = {500, 54, 55, 56, 57};
	private static final int[] DISTANCES = {90, 91};
	private static final int FIRST_FURTHER_OFFSET = 505;
	private static final int LAST_OFFSET = 600;

	private ModalGroup() {
	}

	/** The code times ten; -1 where group or number is none of those known. */
	static int code(int group, double number) {
		int index = (int) number - 1;
		if (index != number - 1 || index < 0) {
			return NONE;
		}
		return switch (group) {
			case 6 -> of(PLANES, index);
			case 8 -> index < OFFSETS.length ? of(OFFSETS, index)
					: Math.min(LAST_OFFSET, FIRST_FURTHER_OFFSET + index - OFFSETS.length) * 10;
			case 14 -> of(DISTANCES, index);
			default -> NONE;
		};
	}

	private static int of(int[] codes, int index) {
		return index < codes.length ? MachineProfile.tenfold(codes[index]) : NONE;
	}
}
