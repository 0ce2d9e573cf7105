package truelead.editor.complete;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.jface.text.templates.ContextTypeRegistry;
import org.eclipse.jface.text.templates.Template;
import org.eclipse.jface.text.templates.TemplateContextType;
import org.eclipse.jface.text.templates.TemplateProposal;
import org.eclipse.jface.text.templates.persistence.TemplateStore;
import org.eclipse.ui.editors.text.templates.ContributionContextTypeRegistry;
import org.eclipse.ui.editors.text.templates.ContributionTemplateStore;
import org.eclipse.ui.preferences.ScopedPreferenceStore;
import truelead.checker.work.Work;
import truelead.editor.EditorIds;
import truelead.grammar.Element;
import truelead.grammar.ProgramText;

/** The platform's templates for programs: ours, and those that a person adds in the preferences. */
public final class ProgramTemplates {

	/** Templates of this context type are offered in programs. */
	public static final String CONTEXT = "truelead.editor.templates";

	private static final ContributionContextTypeRegistry TYPES = new ContributionContextTypeRegistry();
	private static final ScopedPreferenceStore PREFERENCES = new ScopedPreferenceStore(InstanceScope.INSTANCE, EditorIds.BUNDLE);
	private static final TemplateStore STORE;

	static {
		TYPES.addContextType(CONTEXT);
		STORE = new ContributionTemplateStore(TYPES, PREFERENCES, "templates");
		try {
			STORE.load();
		} catch (IOException unreadable) {
			ILog.of(ProgramTemplates.class).error("Cannot read the templates", unreadable);
		}
	}

	private ProgramTemplates() {
	}

	/** The store, for the preference page. */
	static TemplateStore store() {
		return STORE;
	}

	/** The context types, for the preference page. */
	static ContextTypeRegistry types() {
		return TYPES;
	}

	/** Where changes are kept. */
	static ScopedPreferenceStore preferences() {
		return PREFERENCES;
	}

	/** The templates whose names begin with the letters before an offset, which have to be all that stands in the line so far. */
	static List<ICompletionProposal> proposals(IDocument document, ProgramText text, Work work, int offset) {
		int line = text.lineOf(offset);
		int start = text.lineStart(line);
		String before = text.line(line).substring(0, Math.min(offset - start, text.line(line).length()));
		String written = before.stripLeading().toLowerCase(Locale.ROOT);
		List<ICompletionProposal> proposals = new ArrayList<>();
		if (!written.chars().allMatch(c -> c >= 'a' && c <= 'z' || c == '-')
				|| text.block(line).elements().stream().anyMatch(Element.Comment.class::isInstance)) {
			return proposals;
		}
		TemplateContextType type = TYPES.getContextType(CONTEXT);
		for (Template template : STORE.getTemplates(CONTEXT)) {
			if (template.getName().startsWith(written)) {
				int from = offset - written.length();
				ProgramTemplateContext context = new ProgramTemplateContext(type, document, from, written.length(), work);
				proposals.add(new TemplateProposal(template, context, new Region(from, written.length()), null));
			}
		}
		return proposals;
	}
}
