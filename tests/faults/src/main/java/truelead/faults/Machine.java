package truelead.faults;

import java.util.Locale;

/**
 * What the folder's machine profile says of a mill; a file of that text stands beside the program. Torque in N m and oversize in mm, 0
 * where nothing is said.
 */
record Machine(boolean rigidRequired, boolean rigidEndsWithCycle, double torque, double oversize) {

	static Machine of(Dice dice) {
		return new Machine(dice.chance(0.5), dice.chance(0.6), dice.chance(0.5) ? 400 : 0, dice.pick(0.0, 0.03, 0.05));
	}

	static Machine strict() {
		return new Machine(true, true, 0, 0);
	}

	static Machine weak(double torque) {
		return new Machine(false, true, torque, 0);
	}

	static Machine loose(double oversize) {
		return new Machine(false, true, 0, oversize);
	}

	static Machine keepsRigid() {
		return new Machine(false, false, 0, 0);
	}

	/** The profile's lines. */
	String text() {
		StringBuilder text = new StringBuilder("base = milling-metric\nname = Mill in bay 2\n");
		if (rigidRequired) {
			text.append("rigid-tap-required = yes\n");
		}
		if (!rigidEndsWithCycle) {
			text.append("rigid-tap-ends-with-cycle = no\nM28 = rigid-tap-off\n");
		}
		if (torque > 0) {
			text.append(String.format(Locale.ROOT, "spindle-torque = %.2f%n", torque));
		}
		if (oversize > 0) {
			text.append(String.format(Locale.ROOT, "drill-oversize = %.2f%n", oversize));
		}
		return text.toString();
	}
}
