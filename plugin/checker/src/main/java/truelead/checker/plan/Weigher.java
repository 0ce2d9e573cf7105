package truelead.checker.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.job.StockGroup;
import truelead.checker.profile.Meaning;
import truelead.checker.thread.Hand;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;

/** Weighs the methods for a request; limits are common practice, no source, the same as the checker's rules use. */
final class Weigher {
	/** Above this hardness nothing is formed, and the thin edges of spiral flutes chip, HRC (common practice, no source). */
	private static final double FORM_HARD = 35;
	/** Above this hardness a cutting tap does not last, HRC (common practice, no source). */
	private static final double TAP_HARD = 50;
	/** Above this hardness a cutting tap wears fast, HRC (common practice, no source). */
	private static final double TAP_WORN = 40;
	/** Above this hardness carbide does not last, HRC (common practice, no source). */
	private static final double MILL_HARD = 62;
	/** Above this diameter the torque of forming climbs steeply, mm (common practice, no source). */
	private static final double LARGE = 16;
	/** Combs are made with teeth on about so many diameters (common practice, no source). */
	private static final double COMB_LENGTH = 2.5;
	/** Smallest thread that a mill is made for, mm (common practice, no source). */
	private static final double SMALLEST_MILL = 1;
	private final Request request;
	private final Figure figure;
	private final List<String> pros = new ArrayList<>();
	private final List<String> cons = new ArrayList<>();
	private final List<String> out = new ArrayList<>();

	private Weigher(Request request) {
		this.request = request;
		this.figure = new Figure(request.unit());
	}

	static Weighing weigh(Method method, Request request) {
		return new Weigher(request).weigh(method);
	}

	private Weighing weigh(Method method) {
		switch (method) {
			case FORM_TAP -> form();
			case SPIRAL_POINT -> point();
			case SPIRAL_FLUTE -> flute();
			case STRAIGHT_FLUTE -> straight();
			case THREAD_MILL -> mill();
			case COMB_MILL -> comb();
		}
		if (method.tap()) {
			tap(method);
		}
		special(method);
		Optional<HolePlan> hole = HolePlan.of(method, request);
		Optional<Demand> demand = hole.map(h -> Demand.of(method, request, h));
		demand.flatMap(d -> d.stalls(request.profile())).ifPresent(out::add);
		if (hole.isEmpty() && out.isEmpty()) {
			out.add(noDrill(method));
		}
		if (request.lathe()) {
			lathe(method);
		}
		boolean elsewhere = out.isEmpty();
		double deepest = 0;
		if (hole.isPresent() && request.bottom().isPresent() && hole.get().drillTip() > request.bottom().getAsDouble() + 1e-9) {
			deepest = room(method, hole.get());
		}
		boolean spot = request.bottom().isPresent() && spot(request.bottom().getAsDouble());
		return new Weighing(method, pros, cons, out, hole, demand, elsewhere && !spot ? deepest : 0);
	}

	private String noDrill(Method method) {
		ThreadSpec thread = request.thread();
		boolean bore = !method.forming() && !thread.system().pipe();
		return "no drill that can be bought is known for it"
				+ (bore ? "; bore the hole to about " + figure.said(thread.diameter() - thread.pitch())
						+ " (D - P) and see the limits of the minor diameter" : "");
	}

	private boolean spot(double bottom) {
		double depth = Edge.of(request).deepest();
		if (depth > bottom + 1e-9) {
			out.add("the " + (Edge.of(request).after() ? "countersink" : "spotting drill") + " goes to " + figure.said(depth)
					+ " for the chamfer, tools may reach " + figure.said(bottom));
			return true;
		}
		return false;
	}

	/** Full thread that the room gives, mm; 0 where none. */
	private double room(Method method, HolePlan hole) {
		double bottom = request.bottom().orElseThrow();
		double deepest = figure.down(HolePlan.deepest(method, request, hole, bottom) - 0.02);
		boolean some = deepest > request.thread().pitch();
		String taper = request.thread().system().taper() ? "the depth of a taper tap makes the thread's size, and cannot be less"
				: "no full thread";
		out.add("needs a hole to " + figure.said(hole.drillTip()) + ", tools may reach " + figure.said(bottom) + ": "
				+ (some ? figure.said(deepest) + " of full thread at most" : taper));
		return some ? deepest : 0;
	}

	private void tap(Method method) {
		double usual = request.through() ? 3 : method.forming() ? 2.5 : 2;
		if (request.diameters() > 1.5 * usual + 1e-9) {
			out.add("over " + Figure.plain(1.5 * usual, 2) + " D deep: torque and chips break the tap");
		} else if (request.diameters() > usual + 1e-9) {
			cons.add("over " + Figure.plain(usual, 1) + " D deep: chips and torque grow with every turn");
		}
		if (!method.forming() && request.hardness() > TAP_HARD) {
			out.add("above 50 HRC a cutting tap does not last");
		} else if (!method.forming() && request.hardness() > TAP_WORN) {
			cons.add("above 40 HRC a tap wears fast and breaks easily: one made for hard steel, slow, and gauged often");
		}
		boolean tough = request.group() == StockGroup.TITANIUM || request.group() == StockGroup.NICKEL_ALLOY;
		cons.add("a broken tap can scrap the part" + (tough ? ": this stock grips the tap and costs most" : ""));
	}

	/** Taper, several starts, left hand: what is unusual about the thread. */
	private void special(Method method) {
		ThreadSpec thread = request.thread();
		if (thread.system().taper()) {
			taper(method);
		}
		if (thread.system().movement()) {
			movement(method);
		}
		if (thread.starts() > 1) {
			if (method.tap()) {
				cons.add(thread.starts() + " starts: the tap is made to order, and advances " + figure.said(thread.lead()) + " a turn");
			} else {
				out.add("several starts are not planned here");
			}
		}
		if (thread.hand() == Hand.LEFT) {
			(method.tap() ? cons : pros).add(method.tap() ? "left-hand: the tap is seldom in stock"
					: "left-hand: the same cutter, the helix the other way");
			if (method.tap() && new Dialect(request.profile()).g(Meaning.TAP_LEFT, 74).isEmpty()) {
				out.add("the profile " + request.profile().name() + " has no left-hand tapping cycle");
			}
		}
	}

	private void movement(Method method) {
		if (method.forming()) {
			out.add("such a profile is not formed");
		} else if (!method.tap()) {
			out.add("a cutter for it is made for one size, since steep flanks foul the helix; it is not planned here");
		} else {
			cons.add("takes much metal in one cut: a set of taps, or single-pointed on a lathe");
		}
	}

	private void taper(Method method) {
		Optional<TaperTap> tap = TaperTap.of(request.thread());
		switch (method) {
			case STRAIGHT_FLUTE, SPIRAL_FLUTE -> {
				pros.add("a taper tap: its depth makes the size, set by the gauge" + tap.map(t -> "; tip to " + figure.said(t.tip())
						+ " by " + t.source()).orElse(""));
				cons.add("cuts on its whole length: half the speed, more torque than the figure says; a reamed taper hole helps it");
				if (tap.isEmpty()) {
					out.add("how deep a taper tap of this size goes is in no table here");
				}
			}
			case FORM_TAP, SPIRAL_POINT -> out.add("taper threads are not made with it");
			default -> out.add("a taper thread is milled on a cone, which not every control follows; it is not planned here");
		}
		tap.filter(t -> request.depth() > t.full() + 1e-6)
				.ifPresent(t -> out.add(figure.said(request.depth()) + " of full thread asked, the joint needs " + figure.said(t.full())
						+ ": deeper makes a taper thread too large"));
		if (request.through() && tap.filter(t -> request.wall() < t.full() - 1e-6).isPresent()) {
			out.add("the wall of " + figure.said(request.wall()) + " is less than the " + figure.said(tap.get().full())
					+ " of thread that the joint needs");
		}
		if (request.thread().system() == ThreadSystem.R) {
			out.add("R is the external thread; its internal ones are Rc and Rp");
		}
	}

	private void lathe(Method method) {
		if (!method.tap()) {
			out.add("a thread mill needs a driven spindle, and the profile " + request.profile().name() + " is a lathe's");
		} else {
			pros.add("on the centreline of a lathe the part turns and the tap stands still");
		}
		if (request.count() > 1) {
			out.add(request.count() + " holes in a row: a lathe makes one, on its centreline");
		}
	}

	private void form() {
		pros.add("no chips, the strongest tap, a strong thread of even size");
		pros.add("needs the least room below the thread: 1 P");
		cons.add("the hole must be held close: its size makes the minor diameter; look whether the drawing allows formed threads");
		cons.add("two to three times the torque of cutting (estimate), needs lubrication");
		if (request.hardness() > FORM_HARD) {
			out.add("above 35 HRC the metal does not flow");
		}
		switch (request.group()) {
			case CAST_IRON, BRASS, MAGNESIUM,
					PLASTIC -> out.add("the stock is too brittle or does not keep the form: it crumbles instead of flowing");
			case OTHER -> cons.add("the stock is not said: forming asks for one that flows, 10 % elongation or more");
			default -> pros.add("the stock flows");
		}
		if (request.thread().diameter() > LARGE) {
			cons.add("above M16 the torque climbs steeply; see what the spindle gives at S");
		}
	}

	private void point() {
		pros.add("pushes the chips ahead through the hole; strong, straight core");
		if (!request.through()) {
			out.add("a blind hole: the chips it pushes ahead pack at the bottom");
		} else {
			cons.add("long lead: must pass the far face by " + Figure.plain(Method.SPIRAL_POINT.lead(), 1) + " threads");
		}
	}

	private void flute() {
		pros.add("draws the chips up and out of a blind hole");
		cons.add("weaker core than a straight tap; long chips may wind round it");
		if (request.through()) {
			cons.add("a through hole does not need chips drawn back");
		}
		if (request.hardness() > FORM_HARD) {
			out.add("above 35 HRC its thin edges chip");
		}
	}

	private void straight() {
		boolean shortChips = request.group() == StockGroup.CAST_IRON || request.group() == StockGroup.BRASS;
		if (shortChips) {
			pros.add("the stock makes short chips, which the flutes hold");
		} else {
			cons.add("long chips have no way out of its flutes");
		}
		pros.add("stiff, cheap, can be ground again");
	}

	private void mill() {
		pros.add("small chips, little torque; a broken cutter does not scrap the part");
		pros.add("size set by the radius; one cutter for several diameters; thread nearly to the bottom");
		cons.add("slower than a tap; needs helical moves in three axes and a first part that is gauged");
		milled();
	}

	private void comb() {
		pros.add("the whole thread in one turn: quicker than a single form; a broken cutter does not scrap the part");
		cons.add("one pitch a cutter; all teeth push at once: the cutter bends, the thread comes out tapered where it is slender");
		cons.add("needs helical moves in three axes and a first part that is gauged");
		if (request.diameters() > COMB_LENGTH + 1e-9) {
			out.add("over 2.5 D deep: combs have no teeth that far up (common practice)");
		}
		milled();
	}

	private void milled() {
		if (request.diameters() > 2.5) {
			cons.add("over 2.5 D deep the cutter bends: spring passes, see its reach");
		}
		if (request.diameters() > 4 + 1e-9) {
			out.add("over 4 D deep no cutter reaches and stays stiff (common practice, no source)");
		}
		if (request.thread().diameter() < SMALLEST_MILL - 1e-9) {
			out.add("no thread mill is made for so small a thread");
		} else if (request.thread().diameter() < 4) {
			cons.add("a cutter below 3 mm breaks easily");
		}
		if (request.hardness() > MILL_HARD) {
			out.add("above 62 HRC carbide does not last");
		}
	}
}
