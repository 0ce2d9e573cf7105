package truelead.checker.lesson;

import truelead.checker.job.TapTorque;

/**
 * What the flanks of a tap bear when it is led off its pitch by e mm a turn, and what it takes to break it. After n turns the path of the
 * feed and the thread are e n apart. A spring takes that: the holder, up to its travel, then the stiff rest of machine, holder and tap;
 * what the spring does not take is shaved off the flanks, by every thread of the tap in the hole e a turn. The chip of all n turns is
 * 0.5413 P e n (5/8 of the height of the 60 degree triangle), so the spring never bears more than kc 0.5413 P e n.
 *
 * @param pitch      P, mm
 * @param diameter   D, mm
 * @param error      e, mm a turn, without sign
 * @param travel     free travel of the holder that way, mm
 * @param stiffness  of the holder within its travel, N/mm
 * @param force      kc, specific cutting force of the stock, N/mm²
 * @param threads    on the tap: no place is shaved more often
 * @param lead       lead of the tap, turns: until then its cutting torque grows
 * @param forming    whether it forms
 */
record TapLoad(double pitch, double diameter, double error, double travel, double stiffness, double force, double threads, double lead,
		boolean forming) {

	/** Stiffness of spindle, collet and tap in line, N/mm (from memory, order of magnitude). */
	static final double STACK = 20000;
	/** Height of the flank in contact, as a part of P: 5/8 of H (geometry of ISO 68-1). */
	static final double FLANK = 0.625 * Math.sqrt(3) / 2;
	/** A tap's core twists off like a round bar of this part of D (from memory; flutes taken off). */
	static final double CORE = 0.58;
	/** Torsional strength of a high speed steel tap, N/mm² (from memory). */
	static final double STRENGTH = 1000;
	/** Friction of flank on flank (from memory). */
	static final double FRICTION = 0.15;
	/** How far the estimate of breaking may be off, either way, a factor (from memory: what is published differs by as much). */
	static final double DOUBT = 2;

	/** Force that shaves all flanks in the hole at the full rate, N. */
	double shaving(double turns) {
		return force * FLANK * pitch * error * Math.min(turns, threads);
	}

	/** Axial force after so many turns, N. */
	double axial(double turns) {
		double lag = error * turns;
		double spring = lag <= travel ? stiffness * lag : stiffness * travel + STACK * (lag - travel);
		return Math.min(spring, shaving(turns));
	}

	/** Travel of the holder used, mm. */
	double used(double turns) {
		double axial = axial(turns);
		return travel == 0 ? 0 : Math.min(travel, axial / stiffness);
	}

	/** What is shaved off the flanks where the thread begins, mm along the axis. */
	double shaved(double turns) {
		double held = stiffness * travel;
		double stack = Math.max(0, axial(turns) - held) / STACK;
		return Math.max(0, Math.min(error * turns - used(turns) - stack, error * threads));
	}

	/** Pressure on the flanks in contact, N/mm²; 0 before the first turn. */
	double pressure(double turns) {
		double contact = Math.PI * middle() * FLANK * pitch * Math.min(turns, threads);
		return contact > 0 ? axial(turns) / contact : 0;
	}

	/** Torque, N m: cutting kc P² D / 8000 (from memory), growing over the lead, and the flanks'. */
	double torque(double turns) {
		double cutting = TapTorque.cutting(force, pitch, diameter) * (forming ? TapTorque.FORMING : 1) * Math.min(1, turns / lead);
		double lag = error * turns;
		double share = lag > 0 ? shaved(turns) / lag : 0;
		double drag = FRICTION / Math.cos(Math.PI / 6);
		return cutting + axial(turns) * (drag + (1 - drag) * share) * middle() / 2000;
	}

	/** Part of the tap's strength used: torsion and axial force together (von Mises); 1 breaks. */
	double strain(double turns) {
		double core = CORE * diameter;
		double twist = STRENGTH * Math.PI * core * core * core / 16000;
		double pull = Math.sqrt(3) * STRENGTH * Math.PI * core * core / 4;
		double torsion = torque(turns) / twist;
		double axial = axial(turns) / pull;
		return Math.sqrt(torsion * torsion + axial * axial);
	}

	/** Pitch diameter, mm. */
	double middle() {
		return diameter - 0.75 * Math.sqrt(3) / 2 * pitch;
	}
}
