package truelead.checker.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.callout.Callout;
import truelead.checker.callout.CalloutReader;
import truelead.checker.callout.HoleEnd;
import truelead.checker.job.Fact;
import truelead.checker.job.Stock;
import truelead.checker.plan.Dialect;
import truelead.checker.plan.Method;
import truelead.checker.plan.Plan;
import truelead.checker.plan.Request;
import truelead.checker.plan.Weighing;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.Work;
import truelead.grammar.BlockReader;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.ProgramText;

/** The blocks that make the thread of the nearest callout above, to be put into a program that has tools of its own. */
public final class Sequence {

	/** Lines above in which a callout is looked for. */
	public static final int NEAR = 100;

	private final Work work;
	private final List<String> lines = new ArrayList<>();

	private Sequence(Work work) {
		this.work = work;
	}

	/**
	 * The blocks, or a comment that says why there are none.
	 *
	 * @param above what stands above, the nearest line last
	 * @param work  the program's work: its machine, unit, stock and tools
	 * @param way   {@code cut}, {@code form} or {@code mill}; anything else cuts
	 */
	public static List<String> of(ProgramText above, Work work, String way) {
		Optional<Callout> callout = callout(above);
		if (callout.isEmpty()) {
			return List.of("(WRITE A CALLOUT SUCH AS M8X1.25 DEPTH 16 IN A COMMENT ABOVE)");
		}
		if (callout.get().spec().taperOnDiameter() > 0) {
			return List.of("(NO BLOCKS FOR TAPER THREADS)");
		}
		return new Sequence(work).blocks(callout.get(), way);
	}

	/** The blocks of a request, with tool numbers behind those that the program has; a whole program where there are no blocks yet. */
	public static List<String> of(Request request, Method method, Work work) {
		List<String> program = Plan.program(method, request);
		return work.blocks() == 0 ? program : new Sequence(work).fitted(request, program);
	}

	/** The callout in the comments above that stands nearest, within {@link #NEAR} lines. */
	public static Optional<Callout> callout(ProgramText above) {
		for (int line = above.lineCount() - 1; line >= Math.max(0, above.lineCount() - 1 - NEAR); line--) {
			for (Element.Comment comment : above.block(line).comments()) {
				Optional<Callout> found = CalloutReader.read(comment.text()).stream().filter(Callout::certain).findFirst();
				if (found.isPresent()) {
					return found;
				}
			}
		}
		return Optional.empty();
	}

	private List<String> blocks(Callout callout, String way) {
		boolean through = callout.holeEnd().filter(HoleEnd.THROUGH::equals).isPresent();
		Method method = switch (way) {
			case "form" -> Method.FORM_TAP;
			case "mill" -> Method.THREAD_MILL;
			default -> through ? Method.SPIRAL_POINT : Method.SPIRAL_FLUTE;
		};
		ThreadSpec thread = callout.spec();
		LengthUnit unit = work.shop().unit().value();
		double depth = callout.depth().map(called -> called.mm(unit)).orElse(Request.usualDepth(thread));
		Request request = new Request(thread, stock(), depth, OptionalDouble.empty(), through, Math.max(1, callout.count().orElse(1)),
				work.shop().profile());
		Weighing weighing = Plan.of(request).weighings().get(method.ordinal());
		if (!weighing.possible()) {
			weighing.ruledOut().forEach(why -> lines.add("(NOT BY " + method.tool() + ": " + comment(why) + ")"));
			return lines;
		}
		if (callout.depth().isEmpty()) {
			lines.add("(NO DEPTH CALLED OUT: 1.5 DIAMETERS TAKEN)");
		}
		return fitted(request, Plan.program(method, request));
	}

	private List<String> fitted(Request request, List<String> program) {
		lines.add("(SPEEDS AND FEEDS FROM MEMORY: CHECK THEM AGAINST TOOL AND STOCK)");
		int shift = work.tools().stream().mapToInt(tool -> tool.number()).max().orElse(0);
		for (String block : program) {
			if (belongs(block)) {
				lines.add(shifted(block, Math.max(0, shift)));
			}
		}
		LengthUnit unit = work.shop().unit().value();
		if (unit != request.unit()) {
			lines.add(unit == LengthUnit.MM ? "G21" : "G20");
		}
		return lines;
	}

	private Optional<Stock> stock() {
		return work.operations().stream().flatMap(operation -> operation.wanted().stock().map(Fact::value).stream()).findFirst();
	}

	private static String comment(String text) {
		return text.toUpperCase(Locale.ROOT).replace('(', '[').replace(')', ']');
	}

	/** Heads and ends of a whole program do not belong into another one. */
	private static boolean belongs(String block) {
		List<Element> elements = BlockReader.read(block).elements();
		boolean end = elements.stream().anyMatch(element -> element instanceof Element.Percent
				|| element instanceof Element.Word word && (word.address() == 'O' || word.address() == 'M' && number(word) == 30));
		boolean headNote = elements.stream().anyMatch(element -> element instanceof Element.Comment comment
				&& (comment.text().startsWith("STOCK:") || comment.text().startsWith("SURFACE:")));
		return !end && !headNote;
	}

	/** The block with tool and offset numbers behind those that the program has. */
	private String shifted(String block, int shift) {
		List<Replacement> replacements = new ArrayList<>();
		for (Element.Word word : BlockReader.read(block).words()) {
			if ((word.address() == 'T' || word.address() == 'H' || word.address() == 'D') && word.literal()) {
				boolean turret = word.address() == 'T' && work.shop().profile().is(ProfileKey.TOOL_WORD, "turret");
				String shifted = turret ? Dialect.turret(number(word) / 100 + shift) : Integer.toString(number(word) + shift);
				replacements.add(new Replacement(word.value().span().start(), word.value().span().length(), shifted));
			}
		}
		return Replacement.apply(block, replacements);
	}

	private static int number(Element.Word word) {
		return word.value() instanceof Expression.Number number ? (int) Math.round(number.value()) : -1;
	}
}
