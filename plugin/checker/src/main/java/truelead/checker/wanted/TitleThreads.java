package truelead.checker.wanted;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import truelead.checker.callout.Callout;
import truelead.checker.callout.CalloutReader;
import truelead.checker.callout.ToolListLine;
import truelead.checker.comment.Commentary;
import truelead.checker.comment.LineComment;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.job.Holder;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.Stays;

/**
 * The threads that the comments above the first tool name, such as {@code (FLANGE, 12X M10)}: what an operation makes that nothing nearer
 * speaks of, if what it cuts suits exactly one of them; and how deep a thread is, or that it goes through, where a nearer comment
 * names the same thread alone. Their counts speak of the part, which may be one of several on the table, or be turned over.
 */
public final class TitleThreads {

	/** A title has no more lines than this: what is read of it is read for each operation. */
	private static final int MOST_LINES = 300;

	private final List<LineComment> comments;
	/** By thread without its class; read when first asked for. */
	private Map<ThreadSpec, List<Titled>> named;
	/** Read when first asked for. */
	private Optional<Fact<Double>> thickness;
	/** Read when first asked for. */
	private Optional<Fact<Holder>> holder;
	/** Read when first asked for. */
	private Optional<Titled> only;

	/** The title of a program of the file, counted from 0. */
	public TitleThreads(Commentary commentary, Stays stays, int part) {
		List<LineComment> above = commentary.free(commentary.main().file(), stays.begin(part), stays.firstChange(part) - 1);
		this.comments = above.stream().filter(comment -> comment.bare().isEmpty() && ToolListLine.read(comment.text()).isEmpty())
				.limit(MOST_LINES).toList();
	}

	/** A thread of the title, with what is said of its depth. */
	record Titled(Fact<ThreadSpec> thread, LineComment comment, Callout callout) {

		/** Whether anything is said of its hole: how deep, how many, through what. */
		boolean tells() {
			return callout.depth().isPresent() || callout.holeEnd().isPresent() || callout.wall().isPresent()
					|| callout.count().isPresent();
		}
	}

	/**
	 * The one thread that suits the hole of an operation, or what is milled in it; where the hole is not known, its lead. The part itself,
	 * as in M48X5 SPINDLE NUT, is the thread where its lead is cut; the only thread of a title is, where a mill, or its path, goes out to
	 * its diameter.
	 */
	Optional<Titled> of(AsCut cut) {
		Optional<Titled> suiting = one(comment -> Callouts.read(comment, cut), spec -> cut.drill().isEmpty() ? cut.suitsLead(spec)
				: cut.suitsHole(spec) || cut.suitsMilled(spec));
		if (suiting.isPresent() || !cut.isMilled()) {
			return suiting;
		}
		return one(Callouts::chased, spec -> cut.suitsLead(spec) && (cut.drill().isEmpty() || cut.suitsHole(spec) || cut.suitsMilled(spec)))
				.or(() -> one(Callouts::chased, any -> true).filter(titled -> titled.callout().certain()
						&& (cut.reaches(titled.callout().spec()) || cut.isWallOf(titled.callout().spec()))));
	}

	/** The one thread of those that the comments name which will do. */
	private Optional<Titled> one(Function<LineComment, List<Callout>> named, Predicate<ThreadSpec> wanted) {
		Map<String, Titled> suiting = new LinkedHashMap<>();
		for (LineComment comment : comments) {
			named.apply(comment).stream().filter(callout -> wanted.test(callout.spec()))
					.forEach(callout -> suiting.putIfAbsent(callout.spec().withoutClass().designation(), titled(comment, callout)));
		}
		return suiting.size() == 1 ? suiting.values().stream().findFirst() : Optional.empty();
	}

	/** The only thread that the title names, where it counts just so many holes: then the feed need not speak for it. */
	Optional<Titled> only(int holes) {
		return only().filter(one -> one.callout().count().orElse(0) == holes);
	}

	/** The only thread that the title names, with its count; empty where it counts none. */
	Optional<Wanted.Titled> counted() {
		return only().filter(one -> one.callout().count().orElse(0) > 0)
				.map(one -> new Wanted.Titled(one.thread(), one.callout().count().getAsInt()));
	}

	/**
	 * The only thread that the title names, for the only tool of the program that taps: by its lead, or where the hole is not known and the
	 * title speaks of a tap or of what its hole is to be.
	 */
	Optional<Titled> ofOnlyTap(AsCut cut, int holes) {
		return only().filter(one -> cut.suitsLead(one.thread().value())
				|| cut.drill().isEmpty() && (one.tells() && one.callout().count().orElse(holes) == holes
						|| CalloutReader.readComment(one.comment().said()).tool().filter(tool -> tool.kind().tap()).isPresent()));
	}

	private Optional<Titled> only() {
		if (only == null) {
			Map<ThreadSpec, Titled> certain = new LinkedHashMap<>();
			for (LineComment comment : comments) {
				CalloutReader.read(comment.said())
						.forEach(callout -> certain.putIfAbsent(callout.spec().withoutClass(), titled(comment, callout)));
			}
			only = certain.size() == 1 ? certain.values().stream().filter(one -> one.callout().certain()).findFirst() : Optional.empty();
		}
		return only;
	}

	/** The pitch that the title says of a diameter, mm, where it is the lead that is cut. */
	Optional<Double> pitch(ThreadSpec bare, AsCut cut) {
		return comments.stream().flatMap(comment -> CalloutReader.read(comment.said()).stream())
				.filter(callout -> callout.spec().system() == bare.system() && !callout.coarseAssumed()).map(Callout::spec)
				.filter(spec -> spec.diameter() == bare.diameter() && cut.suitsLead(spec)).map(ThreadSpec::pitch).findFirst();
	}

	/** The one thread that suits what a single point cuts. */
	public Optional<Fact<ThreadSpec>> suiting(Predicate<ThreadSpec> cut) {
		Map<ThreadSpec, Fact<ThreadSpec>> suiting = new LinkedHashMap<>();
		for (LineComment comment : comments) {
			Callouts.chased(comment).stream().filter(callout -> cut.test(callout.spec()))
					.forEach(callout -> suiting.putIfAbsent(callout.spec().withoutClass(), titled(comment, callout).thread()));
		}
		return suiting.size() == 1 ? suiting.values().stream().findFirst() : Optional.empty();
	}

	/** The one thread that suits of those that the title names a core hole for, as M33X2 INSIDE, KERNLOCH 30.9. */
	public Optional<Fact<ThreadSpec>> cored(Predicate<ThreadSpec> cut) {
		Map<ThreadSpec, Fact<ThreadSpec>> suiting = new LinkedHashMap<>();
		for (LineComment comment : comments) {
			CalloutReader.readComment(comment.said()).tools().stream().flatMap(tool -> tool.forThread().stream()).filter(cut)
					.forEach(spec -> suiting.putIfAbsent(spec.withoutClass(), Fact.of(spec, FactSource.TITLE, comment.comment().at(),
							comment.said().strip())));
		}
		return suiting.size() == 1 ? suiting.values().stream().findFirst() : Optional.empty();
	}

	/**
	 * What the title says of a thread that a nearer comment names; empty where it says something of its hole twice, as for holes of two
	 * depths.
	 */
	Optional<Titled> same(ThreadSpec thread) {
		if (named == null) {
			named = new HashMap<>();
			for (LineComment comment : comments) {
				for (Callout callout : CalloutReader.read(comment.said())) {
					named.computeIfAbsent(callout.spec().withoutClass(), any -> new ArrayList<>()).add(titled(comment, callout));
				}
			}
		}
		List<Titled> same = named.getOrDefault(thread.withoutClass(), List.of());
		// a bare name beside it, as a program's title has, says nothing else
		List<Titled> telling = same.size() > 1 ? same.stream().filter(Titled::tells).toList() : same;
		return telling.size() == 1 ? Optional.of(telling.get(0)) : Optional.empty();
	}

	/**
	 * How deep or long the title says that a thread of it is, mm; empty where it does not, or names it for several depths.
	 *
	 * @param outside whether it is cut on a bolt, of which X 60 alone is how long the bolt is
	 */
	public Optional<Fact<Double>> depth(ThreadSpec thread, LengthUnit unit, boolean outside) {
		Map<Double, Fact<Double>> said = new LinkedHashMap<>();
		for (LineComment comment : comments) {
			Callouts.chased(comment).stream().filter(callout -> callout.spec().withoutClass().equals(thread.withoutClass())
					&& (!outside || callout.longIn(comment.said()))).forEach(callout -> callout.depthMm(unit).ifPresent(mm ->
							said.putIfAbsent(mm, Callouts.fact(comment, callout, FactSource.TITLE, mm))));
		}
		return said.size() == 1 ? said.values().stream().findFirst() : Optional.empty();
	}

	/** How thick the title says the part is, mm, of several thicknesses the greatest; empty where it says none. */
	Optional<Fact<Double>> thickness(LengthUnit unit) {
		if (thickness == null) {
			thickness = Optional.empty();
			for (LineComment comment : comments) {
				Optional<Double> thick = CalloutReader.readComment(comment.text()).thickness().filter(said -> !said.steel(unit))
						.map(said -> said.mm(unit));
				if (thick.filter(mm -> thickness.isEmpty() || mm > thickness.get().value()).isPresent()) {
					thickness = Optional.of(Fact.of(thick.get(), FactSource.TITLE, comment.comment().at(), comment.text().strip()));
				}
			}
		}
		return thickness;
	}

	/** How the title says that all taps are held, the first comment that does; one that names a thread says it of that thread's tap. */
	Optional<Fact<Holder>> holder() {
		if (holder == null) {
			holder = comments.stream().filter(comment -> CalloutReader.read(comment.text()).isEmpty())
					.flatMap(comment -> CalloutReader.readComment(comment.text()).holder()
							.map(kind -> Fact.of(Holder.usual(kind), FactSource.TITLE, comment.comment().at(), comment.text().strip()))
							.stream()).findFirst();
		}
		return holder;
	}

	private static Titled titled(LineComment comment, Callout callout) {
		return new Titled(Callouts.fact(comment, callout, FactSource.TITLE, callout.spec()), comment, callout);
	}
}
