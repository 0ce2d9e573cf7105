package truelead.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** What a program is to do, before it is written: a fault may change it here, or change the written blocks by an edit. */
final class Job {
	/** Where the tools are named: on a line before the change, behind the T word, in the list at the head, or in two places. */
	enum Talk { BEFORE, BEHIND, LIST, BOTH }

	final long seed;
	boolean inch;
	/** Written for an RS-274 control: o-words, semicolons, G33.1; otherwise word address with M98 and M29. */
	boolean rs274;
	boolean perRev;
	boolean unitStated = true;
	/** The next tool is called to the magazine's ready place while this one works. */
	boolean preselected;
	Talk talk = Talk.BEFORE;
	String stock = "";
	/** The machine profile in the program's folder, where there is one. */
	Optional<Machine> machine = Optional.empty();
	/** How a lathe program is written; empty for a mill. */
	Optional<Hand> hand = Optional.empty();
	final List<Feature> features = new ArrayList<>();
	final List<Op> ops = new ArrayList<>();
	final List<String> headNotes = new ArrayList<>();
	final List<Consumer<Tape>> edits = new ArrayList<>();

	Job(long seed) {
		this.seed = seed;
	}

	double unit() {
		return inch ? 25.4 : 1;
	}

	boolean lathe() {
		return hand.isPresent();
	}

	/** The operations of one kind that work on a feature. */
	<T extends Op> List<T> ops(Class<T> kind, Feature feature) {
		return ops.stream().filter(kind::isInstance).map(kind::cast).filter(o -> o.features.contains(feature)).toList();
	}

	/** The operation that threads the feature. */
	Op threading(Feature feature) {
		return ops.stream().filter(o -> o.features.contains(feature) && (o instanceof Tapping || o instanceof ThreadMilling)).findFirst()
				.orElseThrow();
	}

	/** The operation that makes the feature's hole. */
	HoleMaking drilling(Feature feature) {
		return ops(HoleMaking.class, feature).stream().filter(o -> o.makesHole()).findFirst().orElseThrow();
	}
}
