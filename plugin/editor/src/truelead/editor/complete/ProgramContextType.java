package truelead.editor.complete;

import org.eclipse.jface.text.templates.GlobalTemplateVariables;
import org.eclipse.jface.text.templates.TemplateContextType;

/** Templates in programs: they know the platform's variables and {@link SequenceResolver}'s. */
public final class ProgramContextType extends TemplateContextType {

	public ProgramContextType() {
		addResolver(new GlobalTemplateVariables.Cursor());
		addResolver(new GlobalTemplateVariables.LineSelection());
		addResolver(new GlobalTemplateVariables.Dollar());
	}
}
