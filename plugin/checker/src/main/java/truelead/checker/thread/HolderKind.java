package truelead.checker.thread;

import java.util.Locale;
import java.util.Optional;

/** How a tap is held. */
public enum HolderKind {
	/** Collet or chuck: no travel, any feed error goes into the thread. */
	RIGID,
	/** Minimal length compensation for synchronised tapping, a few tenths. */
	SYNCHRO,
	/** Tension and compression, millimetres of travel. */
	FLOATING,
	/** A self-reversing tapping head: fed in and out, reverses by itself. */
	SELF_REVERSING;

	/** The kind of that name: rigid, synchro, floating (or tension-compression), self-reversing; empty for none. */
	public static Optional<HolderKind> named(String name) {
		return switch (name.strip().toLowerCase(Locale.ROOT).replace(' ', '-')) {
			case "rigid", "collet" -> Optional.of(RIGID);
			case "synchro", "sync" -> Optional.of(SYNCHRO);
			case "floating", "float", "tension-compression" -> Optional.of(FLOATING);
			case "self-reversing", "self" -> Optional.of(SELF_REVERSING);
			default -> Optional.empty();
		};
	}
}
