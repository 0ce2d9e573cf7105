package truelead.editor.look;

import org.eclipse.swt.SWT;

/** What a piece of a block is to the eye: a colour that the theme defines and a font style. */
public enum Kind {
	/** G words. */
	MOTION("motion", SWT.NORMAL),
	/** G words of canned cycles and synchronised moves: told apart by weight too. */
	CYCLE("cycle", SWT.BOLD),
	/** M words. */
	MACHINE("machine", SWT.NORMAL),
	/** X Y Z A B C U V W I J K R Q: where to. */
	PLACE("place", SWT.NORMAL),
	/** F and S. */
	RATE("rate", SWT.BOLD),
	/** T, H and D. */
	TOOL("tool", SWT.BOLD),
	/** N, O, percent signs and labels. */
	NUMBERING("numbering", SWT.NORMAL),
	/** Comments. */
	COMMENT("comment", SWT.ITALIC),
	/** Comments that name a thread or carry one of our notes: told apart by weight too. */
	CALLOUT("callout", SWT.BOLD | SWT.ITALIC),
	/** Variables, expressions and statements. */
	VARIABLE("variable", SWT.NORMAL),
	/** The slash of a block delete. The block behind it is in italics. */
	SKIPPED("skipped", SWT.BOLD | SWT.ITALIC),
	/** What could not be read. */
	UNREAD("unread", SWT.NORMAL);

	private final String colour;
	private final int font;

	Kind(String name, int font) {
		this.colour = "truelead.editor.colour." + name;
		this.font = font;
	}

	/** The id of the colour in the theme. */
	public String colour() {
		return colour;
	}

	/** SWT font style. */
	public int font() {
		return font;
	}
}
