package truelead.editor.check;

import java.util.Optional;
import org.eclipse.jface.text.quickassist.IQuickFixableAnnotation;
import org.eclipse.jface.text.source.Annotation;
import truelead.checker.lesson.Lessons;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;
import truelead.checker.sheet.ProgramThreads;

/** A finding as the editor shows it at its place while the text is open. */
public final class FindingAnnotation extends Annotation implements IQuickFixableAnnotation {

	private final CheckedText checked;
	private final Finding finding;
	/** Whether there is something to do about it, once somebody has asked. */
	private Optional<Boolean> fixable = Optional.empty();

	FindingAnnotation(CheckedText checked, Finding finding) {
		super(typeOf(finding.severity()), false, finding.message());
		this.checked = checked;
		this.finding = finding;
	}

	/** What was found. */
	public Finding finding() {
		return finding;
	}

	/** The text it was found in, which may have been edited since. */
	public CheckedText checked() {
		return checked;
	}

	/** The annotation type of a severity, as plugin.xml has it. */
	public static String typeOf(Severity severity) {
		return switch (severity) {
			case ERROR -> "truelead.editor.error";
			case WARNING -> "truelead.editor.warning";
			case INFORMATION -> "truelead.editor.information";
		};
	}

	@Override
	public void setQuickFixable(boolean state) {
		// the finding itself knows
	}

	@Override
	public boolean isQuickFixableStateSet() {
		return true;
	}

	@Override
	public boolean isQuickFixable() {
		if (fixable.isEmpty()) {
			fixable = Optional.of(!finding.fixes().isEmpty() || Lessons.ofRule(finding.rule()).isPresent()
					&& Lessons.of(finding.rule(), new ProgramThreads(checked.result().work()).about(finding)).isPresent());
		}
		return fixable.get();
	}
}
