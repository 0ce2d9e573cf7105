package truelead.checker.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.job.StockGroup;
import truelead.checker.machine.ProfileKey;

/** Weighs the methods for a request; limits are common practice, no source, the same as the checker's rules use. */
final class Weigher {
	private static final double FORM_HARD = 35;
	private static final double TAP_HARD = 50;
	private static final double MILL_HARD = 62;
	private static final double LARGE = 16;
	private final Request request;
	private final List<String> pros = new ArrayList<>();
	private final List<String> cons = new ArrayList<>();
	private final List<String> out = new ArrayList<>();

	private Weigher(Request request) {
		this.request = request;
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
		}
		if (method.tap()) {
			tap(method);
		}
		Optional<HolePlan> hole = HolePlan.of(method, request);
		if (hole.isEmpty()) {
			out.add("no drill that can be bought is known for it");
		}
		hole.filter(h -> request.bottom().isPresent() && h.drillTip() > request.bottom().getAsDouble() + 1e-9).ifPresent(h -> room(method, h));
		request.bottom().ifPresent(this::spot);
		Optional<Demand> demand = hole.map(h -> Demand.of(method, request, h));
		demand.flatMap(d -> d.stalls(request.profile())).ifPresent(out::add);
		if (request.profile().yes(ProfileKey.DIAMETER)) {
			out.add("the program would be a mill's, and the profile " + request.profile().name() + " is a lathe's");
		}
		return new Weighing(method, pros, cons, out, hole, demand);
	}

	private void spot(double bottom) {
		double depth = ProgramBlocks.spotDepth(request);
		if (depth > bottom + 1e-9) {
			Figure figure = new Figure(request.unit());
			out.add("the spotting drill goes to " + figure.said(depth) + " for the chamfer, tools may reach " + figure.said(bottom));
		}
	}

	private void room(Method method, HolePlan hole) {
		double bottom = request.bottom().orElseThrow();
		Figure figure = new Figure(request.unit());
		double deepest = HolePlan.deepest(method, request, hole, bottom);
		out.add("needs a hole to " + figure.said(hole.drillTip()) + ", tools may reach " + figure.said(bottom) + ": "
				+ (deepest > request.thread().pitch() ? figure.said(Math.floor(deepest * 100) / 100) + " of full thread at most" : "no full thread"));
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
		}
		cons.add("a broken tap can scrap the part");
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
			case CAST_IRON, BRASS, MAGNESIUM, PLASTIC -> out.add("the stock is too brittle or does not keep the form: it crumbles instead of flowing");
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
		if (request.diameters() > 2.5) {
			cons.add("over 2.5 D deep the cutter bends: spring passes, see its reach");
		}
		if (request.thread().diameter() < 4) {
			cons.add("a cutter below 3 mm breaks easily");
		}
		if (request.hardness() > MILL_HARD) {
			out.add("above 62 HRC carbide does not last");
		}
		if (request.thread().starts() > 1) {
			out.add("several starts are not planned here");
		}
	}
}
