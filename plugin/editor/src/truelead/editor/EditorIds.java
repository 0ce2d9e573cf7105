package truelead.editor;

/** The ids under which plugin.xml and code know the same thing. */
public final class EditorIds {
    /** Our bundle. */
    public static final String BUNDLE = "truelead.editor";

    private EditorIds() {}
}
