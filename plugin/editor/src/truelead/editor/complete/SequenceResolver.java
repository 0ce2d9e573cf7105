package truelead.editor.complete;

import java.util.List;
import org.eclipse.jface.text.TextUtilities;
import org.eclipse.jface.text.templates.TemplateContext;
import org.eclipse.jface.text.templates.TemplateVariable;
import org.eclipse.jface.text.templates.TemplateVariableResolver;
import truelead.checker.edit.Sequence;

/** Gives the blocks that make the thread of the nearest callout above: {@code ${blocks:sequence(cut)}}, {@code form} or {@code mill}. */
public final class SequenceResolver extends TemplateVariableResolver {

	@Override
	public void resolve(TemplateVariable variable, TemplateContext context) {
		List<?> parameters = variable.getVariableType().getParams();
		String way = parameters.isEmpty() ? "cut" : parameters.get(0).toString();
		if (context instanceof ProgramTemplateContext place) {
			variable.setValue(String.join(TextUtilities.getDefaultLineDelimiter(place.getDocument()),
					Sequence.of(place.above(), place.work(), way)));
			variable.setUnambiguous(true);
			variable.setResolved(true);
		}
	}
}
