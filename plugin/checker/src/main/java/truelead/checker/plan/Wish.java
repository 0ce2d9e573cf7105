package truelead.checker.plan;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import truelead.checker.profile.MachineProfile;

/** What a person asks a plan for, as typed; what is not said is left out. */
public record Wish(Map<Field, String> said) {

	/** What can be said. Lengths take mm or in, bare ones are in the callout's unit. */
	public enum Field {
		/** A thread as drawings write it. */
		CALLOUT,
		/** What the part is cut from. */
		STOCK,
		/** Its hardness: HRC, HB or HV. */
		HARDNESS,
		/** Full thread. */
		DEPTH,
		/** Deepest point that any tool may reach. */
		BOTTOM,
		/** Wall that the hole goes through. */
		THROUGH,
		/** Number of holes. */
		COUNT
	}

	/**
	 * What was understood.
	 *
	 * @param request  empty where there are problems
	 * @param problems one sentence for each field that cannot be used as it is
	 */
	public record Understood(Optional<Request> request, Map<Field, String> problems) {

		public Understood {
			problems = problems.isEmpty() ? Map.of() : new EnumMap<>(problems);
		}
	}

	public Wish {
		Map<Field, String> kept = new EnumMap<>(Field.class);
		said.forEach((field, text) -> {
			if (!text.isBlank()) {
				kept.put(field, text.strip());
			}
		});
		said = kept;
	}

	/** Reads it for a machine; what is not said is as usual. */
	public Understood on(MachineProfile profile) {
		return new WishReader(this, profile, Optional.empty()).read();
	}

	/** Reads it for a machine; what is not said is as in a request that is known. */
	public Understood on(MachineProfile profile, Request known) {
		return new WishReader(this, profile, Optional.of(known)).read();
	}

	Optional<String> text(Field field) {
		return Optional.ofNullable(said.get(field));
	}
}
