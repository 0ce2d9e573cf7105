package truelead.checker.wanted;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.callout.Callout;
import truelead.checker.comment.LineComment;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.ThreadSpec;

/** A callout, the comment that it stands in, and who says it there. */
record Called(Callout callout, LineComment comment, FactSource source) {

	/** A thread of the title. */
	static Called of(TitleThreads.Titled titled) {
		return new Called(titled.callout(), titled.comment(), FactSource.TITLE);
	}

	/** The thread that it names. */
	ThreadSpec spec() {
		return callout.spec();
	}

	/** A fact that it states, with its own words and place. */
	<T> Fact<T> fact(T value) {
		return Callouts.fact(comment, callout, source, value);
	}

	/** The depth that it states, mm; said where a tap is named it is the tool's, which may be how deep the tip is to go. */
	Optional<Fact<Double>> depth(LengthUnit unit) {
		FactSource by = callout.drilled() || callout.ofTap() && source != FactSource.TITLE ? FactSource.TOOL_COMMENT : source;
		return callout.depthMm(unit).map(mm -> Callouts.fact(comment, callout, by, mm));
	}

	/** The same with another pitch, mm. */
	Called withPitch(double pitch) {
		return new Called(callout.withPitch(pitch), comment, source);
	}

	/** What names the thread that the nearest names, nearest first, since a tool's name seldom repeats depth and count; else the title. */
	static List<Called> alike(List<Called> called, Optional<Fact<ThreadSpec>> wanted, Optional<TitleThreads.Titled> titled) {
		if (called.isEmpty()) {
			return titled.filter(t -> wanted.get().value().withoutClass().equals(t.thread().value().withoutClass()))
					.map(Called::of).stream().toList();
		}
		ThreadSpec nearest = called.get(0).spec().withoutClass();
		List<Called> alike = new ArrayList<>();
		for (Called one : called) {
			if (one.spec().withoutClass().equals(nearest)) {
				alike.add(one);
			}
		}
		return alike;
	}
}
