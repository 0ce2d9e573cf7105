package truelead.checker.job;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A column of the tool list file and the headers it may have, in any case. Where ISO 13399 has a symbol for the property it is accepted too
 * (symbols from memory of the standard).
 */
public enum ToolColumn {
	/** Tool number; the only column that must be there. */
	TOOL("tool number", "TOOL", "T", "NUMBER", "POCKET"),
	/** What it is in the words of the trade: {@code form tap}, {@code drill}. */
	KIND("kind of tool", "KIND", "TYPE", "NAME", "DESCRIPTION"),
	/** mm or inch for the row's lengths; mm where the column is not there. */
	UNIT("unit", "UNIT", "UNITS"),
	/** Cutting diameter. */
	DIAMETER("diameter", "DIAMETER", "DIA", "DC"),
	/** The thread: {@code M6X1-6H}. */
	THREAD("thread", "THREAD", "TDZ"),
	/** Pitch. */
	PITCH("pitch", "PITCH", "TP"),
	/** Threads per inch. */
	TPI("threads per inch", "TPI"),
	/** Lead of a tap, in threads or as the letter or name of its form. */
	LEAD("lead", "LEAD", "CHAMFER", "THCHT"),
	/** Point angle, degrees. */
	ANGLE("point angle", "ANGLE", "POINT ANGLE", "SIG"),
	/** Number of teeth or flutes. */
	TEETH("number of teeth", "TEETH", "FLUTES", "NOF", "ZEFP"),
	/** Length that can go into the hole. */
	REACH("reach", "REACH", "LU"),
	/** Diameter of a tap's front end. */
	NOSE("nose diameter", "NOSE"),
	/** Width of the flat at the tip of a thread mill's tooth. */
	FLAT("tip flat", "FLAT"),
	/** rigid, synchro, floating or self-reversing. */
	HOLDER("holder", "HOLDER"),
	/** Free travel of the holder. */
	TRAVEL("holder travel", "TRAVEL"),
	/** Limit mark of a tap as written. */
	LIMIT("limit", "LIMIT", "CLASS");

	private final String words;
	private final List<String> headers;

	ToolColumn(String words, String... headers) {
		this.words = words;
		this.headers = List.of(headers);
	}

	/** What a message calls it. */
	public String words() {
		return words;
	}

	/** The column of a header; empty for one that is none of ours and is left alone. */
	static Optional<ToolColumn> of(String header) {
		String wanted = header.strip().toUpperCase(Locale.ROOT).replace('_', ' ');
		return Arrays.stream(values()).filter(c -> c.headers.contains(wanted)).findFirst();
	}
}
