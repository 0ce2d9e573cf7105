package truelead.editor.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.jface.viewers.ITreeContentProvider;

/** Programs, in them rules, in them findings. The input is the list of programs. */
final class AuditTree implements ITreeContentProvider {

	@Override
	public Object[] getElements(Object programs) {
		return ((List<?>) programs).toArray();
	}

	@Override
	public Object[] getChildren(Object element) {
		if (element instanceof AuditedProgram program) {
			return program.rules().toArray();
		}
		return element instanceof AuditedProgram.OfRule rule ? rule.findings().toArray() : new Object[0];
	}

	@Override
	public boolean hasChildren(Object element) {
		return getChildren(element).length > 0;
	}

	@Override
	public Object getParent(Object element) {
		return null;
	}

	/** The findings among what is selected: those of a rule or a program stand for their open ones. */
	static List<AuditedFinding> findings(List<?> selected) {
		List<AuditedFinding> findings = new ArrayList<>();
		AuditTree tree = new AuditTree();
		for (Object element : selected) {
			if (element instanceof AuditedFinding finding) {
				findings.add(finding);
			} else {
				findings.addAll(findings(Arrays.asList(tree.getChildren(element))));
			}
		}
		return findings.stream().filter(finding -> finding.accepted().isEmpty()).distinct().toList();
	}
}
