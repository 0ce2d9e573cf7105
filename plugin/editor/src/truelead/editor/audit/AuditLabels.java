package truelead.editor.audit;

import java.util.Locale;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PlatformUI;
import truelead.checker.rule.Severity;

/** The text of the audit view's lines. Severity stands in words too: a picture alone is not enough. */
final class AuditLabels extends ColumnLabelProvider {

	@Override
	public String getText(Object element) {
		if (element instanceof AuditedProgram program) {
			return AuditScope.shown(program.file()) + " \u2013 " + program.verdict().words() + ": " + program.verdict().why();
		}
		if (element instanceof AuditedProgram.OfRule rule) {
			return rule.rule() + " (" + (rule.open() == rule.findings().size() ? "" + rule.open()
					: rule.open() + " of " + rule.findings().size() + " open") + ")";
		}
		AuditedFinding finding = (AuditedFinding) element;
		String accepted = finding.accepted().isEmpty() ? "" : "accepted: " + finding.accepted() + " \u2013 ";
		return "line " + (finding.line() + 1) + elsewhere(finding) + " " + word(finding.severity()) + ": " + accepted + finding.message();
	}

	private static String elsewhere(AuditedFinding finding) {
		return finding.place().equals(finding.program()) ? "" : " of " + finding.place().getName();
	}

	private static String word(Severity severity) {
		return severity.name().toLowerCase(Locale.ROOT);
	}

	@Override
	public String getToolTipText(Object element) {
		return element instanceof AuditedFinding finding ? finding.message() : null;
	}

	@Override
	public Image getImage(Object element) {
		if (element instanceof AuditedProgram program) {
			return program.worst().map(AuditLabels::image).orElseGet(() -> PlatformUI.getWorkbench().getSharedImages()
					.getImage(ISharedImages.IMG_OBJ_FILE));
		}
		if (element instanceof AuditedProgram.OfRule rule) {
			return rule.open() == 0 ? null : image(rule.findings().get(0).severity());
		}
		AuditedFinding finding = (AuditedFinding) element;
		return finding.accepted().isEmpty() ? image(finding.severity()) : null;
	}

	private static Image image(Severity severity) {
		return PlatformUI.getWorkbench().getSharedImages().getImage(switch (severity) {
			case ERROR -> ISharedImages.IMG_OBJS_ERROR_TSK;
			case WARNING -> ISharedImages.IMG_OBJS_WARN_TSK;
			case INFORMATION -> ISharedImages.IMG_OBJS_INFO_TSK;
		});
	}
}
