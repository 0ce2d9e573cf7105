package truelead.checker.job;

import java.util.Optional;
import java.util.function.Function;
import truelead.checker.program.Location;

/**
 * Something known of the job, and how it is known.
 *
 * @param value  the fact; lengths in mm, angles in radians
 * @param source who says so
 * @param at     where it stands in a program or tool list file; empty for settings, profile and defaults
 * @param said   the words it was read from, or for IMPLIED and DEFAULT one clause saying what was assumed
 */
public record Fact<T>(T value, FactSource source, Optional<Location> at, String said) {

	/** A fact read at a place. */
	public static <T> Fact<T> of(T value, FactSource source, Location at, String said) {
		return new Fact<>(value, source, Optional.of(at), said);
	}

	/** A fact without a place: from settings, the profile, or a default. */
	public static <T> Fact<T> of(T value, FactSource source, String said) {
		return new Fact<>(value, source, Optional.empty(), said);
	}

	/** Whether a person said it for this job. */
	public boolean stated() {
		return source.stated();
	}

	/** Another fact from the same words. */
	public <R> Fact<R> map(Function<? super T, ? extends R> change) {
		return new Fact<>(change.apply(value), source, at, said);
	}

	/** How a message names its origin: {@code called out in a comment: "M8X1.25 TAP"}. */
	public String origin() {
		return said.isEmpty() ? source.words() : source.words() + ": " + (stated() ? "\"" + said + "\"" : said);
	}
}
