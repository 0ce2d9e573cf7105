package truelead.forms;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** A way to write a program otherwise so that every machine does the same. Each says in its first sentence why it does. */
interface Form {

	/** What it is called in tables: the words of its class. */
	default String name() {
		StringBuilder name = new StringBuilder();
		for (char letter : getClass().getSimpleName().toCharArray()) {
			name.append(Character.isUpperCase(letter) && !name.isEmpty() ? " " : "").append(letter);
		}
		return name.toString().toLowerCase(Locale.ROOT);
	}

	/** Why this program cannot be written in this form with certainty; empty where it can. */
	default Optional<String> declines(Program program) {
		return Optional.empty();
	}

	/** The program's lines in this form, each of one or more lines; as they were where nothing of it has another form. */
	List<String> rewrite(Program program);

	/** Rules that judge the very thing the form changes, so that they may say otherwise: a form that names one says why. */
	default Set<String> judgedByIt() {
		return Set.of();
	}

	/** Rules that need what the form hides, so that they may fall silent; none of them may speak anew. */
	default Set<String> mayFallSilent() {
		return Set.of();
	}

	/** Whether it makes more operations or holes of the same kind, so that what is found may be found more often. */
	default boolean multiplies() {
		return false;
	}

	/** The first reason of several. */
	@SafeVarargs
	static Optional<String> first(Optional<String>... reasons) {
		for (Optional<String> reason : reasons) {
			if (reason.isPresent()) {
				return reason;
			}
		}
		return Optional.empty();
	}
}
