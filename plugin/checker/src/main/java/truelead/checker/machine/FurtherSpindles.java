package truelead.checker.machine;

import truelead.checker.profile.MachineProfile;
import truelead.grammar.Element;

/**
 * Words to one of several spindles, {@code S2=600 M2=3}: the spindle last spoken to is taken for the one that turns the tool or the work
 * (common practice, no source). Which way a further spindle turns what is threaded depends on how it is built in.
 */
final class FurtherSpindles {

	/** Codes of a further spindle are those of the first one above this, as tenfold codes are. */
	private static final int FURTHER = 100_000;
	private static final int CLOCKWISE = 30;
	private static final int COUNTERCLOCKWISE = 40;
	private static final int STOP = 50;

	private FurtherSpindles() {
	}

	/** Whether a word with the number of a further axis or spindle is one to a spindle. */
	static boolean speaksTo(Element.Word word) {
		return word.extension() > 1 && (word.address() == 'S' || word.address() == 'M');
	}

	/** The M code of a word, tenfold; a further spindle's is no code of a machine profile. */
	static int code(Element.Word word, double number) {
		int code = MachineProfile.tenfold(number);
		return word.extension() > 1 && code >= 0 ? FURTHER + code : code;
	}

	/** Whether a code starts a further spindle. */
	static boolean starts(int code) {
		return code == FURTHER + CLOCKWISE || code == FURTHER + COUNTERCLOCKWISE;
	}

	/** Whether a code stops a further spindle. */
	static boolean stops(int code) {
		return code == FURTHER + STOP;
	}
}
