package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/** All faults of the bench. */
final class Faults {
	static final List<Fault> ALL = build();

	private Faults() {
	}

	private static List<Fault> build() {
		List<Fault> all = new ArrayList<>(TappingFaults.all());
		all.addAll(HoleFaults.all());
		all.addAll(MillingFaults.all());
		all.addAll(SayingFaults.all());
		all.addAll(TextFaults.all());
		all.addAll(ToolFaults.all());
		all.addAll(TurnFaults.all());
		all.addAll(TurnHoleFaults.all());
		return List.copyOf(all);
	}
}
