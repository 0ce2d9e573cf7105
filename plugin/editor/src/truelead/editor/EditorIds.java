package truelead.editor;

/** The ids under which plugin.xml and code know the same thing. */
public final class EditorIds {

	/** Our bundle. */
	public static final String BUNDLE = "truelead.editor";
	/** The editor. */
	public static final String EDITOR = "truelead.editor.program";
	/** Key bindings hold in this context, which is in force while the editor has the focus. */
	public static final String CONTEXT = "truelead.editor.context";
	/** Programs, told by their file name's extension. */
	public static final String CONTENT_TYPE = "truelead.editor.program";
	/** Markers of findings, in the Problems view. */
	public static final String MARKER = "truelead.editor.finding";
	/** Projects with this nature are checked by a builder. */
	public static final String NATURE = "truelead.editor.nature";
	/** The builder of that nature. */
	public static final String BUILDER = "truelead.editor.builder";

	private EditorIds() {
	}
}
