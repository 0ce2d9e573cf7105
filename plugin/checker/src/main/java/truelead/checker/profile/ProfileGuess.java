package truelead.checker.profile;

import java.util.Optional;
import java.util.Set;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.ProgramText;

/**
 * Turning or milling, told from the words of a program where nobody has named a machine. Turning needs evidence that milling cannot give: a
 * speed limit G50 S, constant surface speed, roughing cycles with P and Q. A tool change M6 from a magazine and a length offset G43 speak
 * for milling where anything moves in Y or the XY plane is named; without, a lathe may have either, where it says the plane of lathes, a
 * surface speed or feed per turn with G97, and M6 alone where it roughs a contour by P and Q or goes home in U and W, as lathes for
 * training do. A Y word or the XY plane speak for milling too, unless a turret's tool word (T0303) and such evidence together, several of
 * them without any M6, a surface speed without M6, or X by the diameter or by the radius (DIAMON, G7, DIAMOF, G8), say that it is a lathe
 * with live tools. Which of the code systems of lathes it is, {@link CodeSystem} tells.
 *
 * @param profile the profile to use
 * @param assumed what was assumed and from what, one sentence; empty where nothing had to be
 */
public record ProfileGuess(MachineProfile profile, Optional<String> assumed) {

	/** Lines that are looked at: a program says what it is early. */
	private static final int LINES = 3000;
	private static final int ENOUGH = 2;
	/** Cycles that turn, groove and chase, which only lathes call (from memory). */
	private static final Set<String> TURNED = Set.of("CYCLE93", "CYCLE94", "CYCLE95", "CYCLE96", "CYCLE97", "CYCLE98", "CYCLE99");
	/** What G81, the drilling cycle of mills and of live tools on lathes, takes off the evidence for turning. */
	private static final int DRILLING = 2;

	/** A profile that somebody has named is kept; else the shipped one for turning where the words say so, or the one given. */
	public static ProfileGuess of(ProgramText text, MachineProfile otherwise) {
		if (!otherwise.assumed()) {
			return new ProfileGuess(otherwise, Optional.empty());
		}
		Evidence evidence = new Evidence();
		int lines = Math.min(LINES, text.lineCount());
		for (int line = 0; line < lines && !evidence.mills(); line++) {
			evidence.look(text.block(line));
		}
		if (!evidence.turns()) {
			return new ProfileGuess(otherwise, Optional.of("no machine is named: generic milling is assumed"));
		}
		MachineProfile turning = evidence.system.of(MachineProfile.named("turning"));
		return new ProfileGuess(evidence.radii ? turning.with(ProfileKey.DIAMETER.key(), "no") : turning,
				Optional.of("no machine is named: taken for turning, as the program says " + evidence.first
						+ (!evidence.across ? " and has no Y word" : evidence.lathe || !evidence.tools() ? "" : " and turret tools")
						+ evidence.system.said()));
	}

	/** What the words of a program have told so far. */
	private static final class Evidence {
		private int turning;
		/** Whether a tool comes from a magazine, and whether it has a length offset, as on mills; some lathes have either. */
		private boolean changed;
		private boolean length;
		/** Whether M6 has come before any tool word: a tool change, or something else where the tools are a turret's. */
		private boolean early;
		private boolean magazine;
		private boolean across;
		/** Whether X is said, and whether anything but X0. */
		private boolean middle;
		private boolean beside;
		private boolean turret;
		private boolean stations;
		private boolean spindle;
		/** Whether a surface speed or its limit is said, which no mill needs. */
		private boolean surface;
		private boolean perTurn;
		private boolean lathePlane;
		/** Whether a contour is turned from P to Q, or U and W both go home. */
		private boolean trained;
		/** Whether X is said to be a diameter or a radius, which lathes alone say; and which it is last. */
		private boolean lathe;
		private boolean radii;
		/** Blocks that say a turret's tool with its own offset. */
		private int stationsAlone;
		private final CodeSystem system = new CodeSystem();
		private String first = "";

		boolean turns() {
			boolean own = lathePlane || surface || perTurn && spindle || trained && !across && !length;
			return lathe || onAxis() || !mills() && turning >= ENOUGH && (own || !changed && !length && !(early && !stations)) && (!across
					|| tools() || surface && !early);
		}

		/** Whether the tools feed by the turn along the axis alone, as from a tailstock; on a mill Y has been said by then. */
		private boolean onAxis() {
			return perTurn && middle && !beside && !across && !changed && !length && !early;
		}

		/** Whether it is a mill whatever else it says. */
		boolean mills() {
			return across && (changed || length) && !lathe;
		}

		private boolean tools() {
			return turret && (spindle || stationsAlone > 1 && !early) && !(early && !stations);
		}

		void look(Block block) {
			boolean speed = false;
			boolean from = false;
			boolean to = false;
			boolean axes = false;
			boolean increments = false;
			int homes = 0;
			boolean feed = false;
			boolean change = false;
			double code = Double.NaN;
			double tool = 0;
			for (Element element : block.elements()) {
				if (element instanceof Element.Word word) {
					double value = word.value() instanceof Expression.Number number ? number.value() : Double.NaN;
					switch (word.address()) {
						case 'Y', 'J' -> across = true;
						case 'G' -> {
							length |= value == 43;
							across |= value == 17;
							once(value);
							turning -= value == 81 ? DRILLING : 0;
							code = turningCode(value) ? value : code;
						}
						case 'M' -> change |= value == 6;
						case 'S' -> speed = true;
						case 'F' -> feed = true;
						case 'P' -> from = true;
						case 'Q' -> to = true;
						case 'U', 'W' -> {
							increments = true;
							homes++;
						}
						case 'X', 'Z' -> {
							axes = true;
							middle |= word.address() == 'X';
							beside |= word.address() == 'X' && value != 0;
						}
						case 'T' -> {
							tool = value;
							magazine |= !(value >= 100);
						}
						default -> {
							// Says nothing of the kind of machine.
						}
					}
				}
			}
			statements(block);
			system.look(block);
			changed |= change && magazine;
			early |= change;
			trained |= (code == 70 || code == 71 || code == 72) && from && to || code == 28 && homes > 1;
			weigh(code, speed, from || to || increments, axes, increments, feed, tool);
		}

		/** Words of richer languages that lathes alone have: X by the diameter, and the limit of a constant surface speed. */
		private void statements(Block block) {
			for (Element element : block.elements()) {
				boolean diameter = element instanceof Element.Opaque opaque && (opaque.name().equals("DIAMON")
						|| opaque.name().equals("DIAM90")) || element instanceof Element.Assignment given
						&& given.target() instanceof Expression.NamedVariable name && name.name().equals("lims");
				boolean radius = element instanceof Element.Opaque opaque && opaque.name().equals("DIAMOF");
				if (element instanceof Element.Statement call && TURNED.contains(call.name())) {
					say(call.name(), 2);
					surface = true;
				}
				if (diameter || radius) {
					diameters(radius, element instanceof Element.Opaque opaque ? opaque.name() : "LIMS");
				}
			}
		}

		/** Feed per revolution and the plane of lathes: each speaks once, however often it is said, for mills have both at times. */
		private void once(double code) {
			if (code == 95 && !perTurn || code == 18 && !lathePlane) {
				say("G" + (int) code, 1);
			}
			if (code == 7 || code == 8) {
				// RS274 on lathes: X by the diameter, by the radius (from memory)
				diameters(code == 8, "G" + (int) code);
			}
			perTurn |= code == 95;
			lathePlane |= code == 18;
		}

		private void diameters(boolean radius, String said) {
			if (!lathe) {
				say(said, 2);
			}
			radii = radius || radii && !said.equals("DIAMON") && !said.equals("G7");
			lathe = true;
		}

		private static boolean turningCode(double code) {
			return code == 28 || code == 32 || code == 50 || code == 96 || code == 70 || code == 71 || code == 72 || code == 76
					|| code == 92 || code == 97 || code == 99;
		}

		private void weigh(double code, boolean speed, boolean contour, boolean axes, boolean increments, boolean feed, double tool) {
			boolean limit = (code == 50 || code == 92) && speed && !axes;
			boolean constant = code == 96 && speed;
			boolean shift = code == 50 && increments;
			boolean cycle = (code == 70 || code == 71 || code == 72 || code == 76) && contour;
			surface |= limit || constant;
			spindle |= limit || constant || code == 97 && speed || code == 28 && increments;
			if (limit || constant || cycle || shift) {
				say("G" + (int) code, 2);
			} else if (code == 97 && speed || code == 99 || code == 32 && feed) {
				say("G" + (int) code, 1);
			} else if (code == 28 && increments) {
				say("G28 U or W", 2);
			} else if (code == 92 && axes && feed) {
				say("G92 with F", 1);
			} else if (tool >= 100 && tool == Math.rint(tool)) {
				boolean same = (int) tool / 100 == (int) tool % 100;
				turret |= same;
				stationsAlone += same ? 1 : 0;
				stations = true;
				say("T" + (tool < 1000 ? "0" : "") + (int) tool, same ? 2 : 1);
			}
		}

		private void say(String what, int weight) {
			first = first.isEmpty() ? what : first;
			turning += weight;
		}
	}
}
