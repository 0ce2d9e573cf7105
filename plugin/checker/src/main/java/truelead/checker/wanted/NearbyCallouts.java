package truelead.checker.wanted;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import truelead.checker.comment.Commentary;
import truelead.checker.comment.LineComment;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.job.ToolFacts;
import truelead.checker.program.BlockRef;
import truelead.checker.tool.Stays;
import truelead.checker.tool.ToolBook;

/**
 * Finds the free callouts that speak of an operation, nearest first: in its subprogram, above it, in the tool list; and drops those that
 * cannot be meant.
 */
final class NearbyCallouts {

	/** A thread whose lead is nearer to what is cut by this part of it is meant rather. */
	private static final double NEARER = 0.005;

	private final Commentary commentary;
	private final Stays stays;
	private final ToolBook book;
	private final Map<Integer, TitleThreads> titles = new HashMap<>();

	NearbyCallouts(Commentary commentary, Stays stays, ToolBook book) {
		this.commentary = commentary;
		this.stays = stays;
		this.book = book;
	}

	/** The threads that the title of a program of the file names. */
	TitleThreads title(int part) {
		return titles.computeIfAbsent(part, p -> new TitleThreads(commentary, stays, p));
	}

	/** Those in an operation's subprogram behind the operation before it, and in lines of the main file up to it. */
	List<Called> of(Whereabouts at, Optional<BlockRef> after, int from, int to, AsCut cut) {
		List<Called> called = called(inside(at, after), cut, at);
		called.addAll(called(commentary.free(commentary.main().file(), from, to), cut, at));
		return called;
	}

	/** Those of all of its tool's stay up to a line, where operations before it may have been meant. */
	List<Called> ofStay(Whereabouts at, int to, AsCut cut) {
		List<Called> called = called(inside(at, Optional.empty()), cut, at);
		called.addAll(called(NotesOf.ends(commentary.free(commentary.main().file(), stays.freeFrom(at.log()), to)), cut, at));
		return called;
	}

	/** Adds what the tool list says of the tool, completes pitches that are assumed, and drops what cannot be meant beside the rest. */
	void settle(List<Called> called, Whereabouts at, AsCut cut) {
		addListed(called, at, cut);
		called.replaceAll(c -> c.callout().coarseAssumed() && !cut.suitsLead(c.spec()) ? pitched(c, at, cut) : c);
		if (called.stream().anyMatch(c -> !c.callout().certain())) {
			dropDoubtful(called, at.tool().facts(), cut);
			dropWorse(called, at, cut);
		}
	}

	private void addListed(List<Called> called, Whereabouts at, AsCut cut) {
		List<LineComment> listed = book.listed(at.log());
		Set<LineComment> read = listed.isEmpty() ? Set.of() : Collections.newSetFromMap(new IdentityHashMap<>());
		for (Called one : listed.isEmpty() ? List.<Called>of() : called) {
			read.add(one.comment());
		}
		for (LineComment line : listed) {
			if (!read.contains(line)) {
				Callouts.read(line, cut).forEach(c -> called.add(new Called(c, line, FactSource.TOOL_LIST)));
			}
		}
	}

	private List<LineComment> inside(Whereabouts at, Optional<BlockRef> after) {
		return at.first().caller().isEmpty() ? List.of() : commentary.above(at.first(), after);
	}

	/** Callouts nearest first: last line first, in a line the last comment first. A list line or T word of another tool does not count. */
	private List<Called> called(List<LineComment> comments, AsCut cut, Whereabouts at) {
		int number = at.tool().number();
		List<Called> called = new ArrayList<>();
		for (int i = comments.size() - 1; i >= 0; i--) {
			LineComment comment = comments.get(i);
			boolean others = comment.ofAnotherTool(number)
					|| commentary.listLine(comment).map(l -> l.number() != number).orElse(false);
			if (!others) {
				Callouts.read(comment, cut).forEach(c -> called.add(new Called(c, comment, FactSource.CALLOUT)));
			}
		}
		return called;
	}

	/**
	 * (HELIX M42) in a part whose title says M42X1.5, or by a cutter of pitch 1.5: the pitch is the one that is said there, where it is
	 * cut.
	 */
	private Called pitched(Called bare, Whereabouts at, AsCut cut) {
		Optional<Double> pitch = title(at.log().part()).pitch(bare.spec(), cut).or(() -> at.tool().facts().pitch().map(Fact::value)
				.filter(p -> cut.suitsLead(bare.withPitch(p).spec())));
		return pitch.map(bare::withPitch).orElse(bare);
	}

	/**
	 * NULLPUNKT M8 MITTE beside TAP M10X1.25: what may be no thread at all does not count beside one that is named for certain and has the
	 * lead that is cut, nor where the tap is said to be of another diameter; 1-8 THRU 2.0 does at a tap that the list says is 1-8.
	 */
	private static void dropDoubtful(List<Called> called, ToolFacts tool, AsCut cut) {
		if (tool.isTap()) {
			tool.diameter().ifPresent(d -> called.removeIf(c -> !c.callout().certain()
					&& Math.abs(c.spec().diameter() - d.value()) > c.spec().pitch()));
		}
		boolean certain = tool.thread().filter(thread -> cut.suitsLead(thread.value())).isPresent()
				|| called.stream().anyMatch(c -> c.callout().certain() && cut.suitsLead(c.spec()));
		if (certain) {
			called.removeIf(c -> !c.callout().certain() && tool.thread().filter(thread -> thread.value().equals(c.spec())).isEmpty());
		}
	}

	/** M8 ON in a part whose title names the very thread that is cut. */
	private void dropWorse(List<Called> called, Whereabouts at, AsCut cut) {
		if (called.stream().noneMatch(c -> c.callout().certain())) {
			title(at.log().part()).of(cut).filter(t -> cut.suitsLead(t.thread().value()))
					.ifPresent(t -> called.removeIf(c -> cut.amiss(c.spec()) > cut.amiss(t.thread().value()) + NEARER));
		}
	}
}
