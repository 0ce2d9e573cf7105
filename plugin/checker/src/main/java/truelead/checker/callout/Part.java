package truelead.checker.callout;

import java.util.OptionalInt;

/** A piece of a comment, in the order written, with the characters it covers. */
sealed interface Part {

	/** First character. */
	int start();

	/** The character after the last. */
	int end();

	/** What reads as a thread, before the words around it are judged. */
	record Thread(ThreadDraft draft, OptionalInt count, int start, int end) implements Part {
	}

	/** A word of the trade. */
	record Word(Meaning meaning, String text, int start, int end) implements Part {
	}

	/** What a number stands for. */
	enum Role {
		PLAIN, DIAMETER, DEPTH, PITCH, GAUGE, LETTER_GAUGE
	}

	/** A length. */
	record Amount(Dimension dimension, Role role, int start, int end) implements Part {
	}

	/** An angle, radians. */
	record Angle(double radians, int start, int end) implements Part {
	}

	/** A letter and a number that read like a word of a block: T5, S1200. */
	record Code(String letter, int start, int end) implements Part {
	}

	/** Anything else. */
	record Other(String text, int start, int end) implements Part {
	}
}
