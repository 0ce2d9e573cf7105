package truelead.editor.hover;

import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.text.AbstractInformationControl;
import org.eclipse.jface.text.IInformationControlCreator;
import org.eclipse.jface.text.IInformationControlExtension2;
import org.eclipse.jface.text.contentassist.ICompletionProposal;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import truelead.checker.rule.Evidence;
import truelead.checker.rule.Finding;
import truelead.checker.rule.RulePage;
import truelead.editor.check.FindingAnnotation;
import truelead.editor.fix.FixProposal;
import truelead.editor.fix.Fixes;
import truelead.editor.fix.WhyProposal;
import truelead.editor.look.SharpPicture;
import truelead.editor.navigate.Visit;

/** Shows findings with the numbers behind them, and what can be done about each, as links that a key reaches too. */
final class ToldControl extends AbstractInformationControl implements IInformationControlExtension2 {

	private static final int WIDEST = 560;
	/** Of the screen's height, percent; what is longer can be scrolled. */
	private static final int HIGHEST = 62;

	/** A finding at many holes has as many blocks; the key for related blocks lists them all. */
	private static final int MOST_RELATED = 6;

	private ScrolledComposite scroll;
	private Composite content;
	private Told told;

	/** One that comes and goes with the mouse, with a line at its foot. */
	ToldControl(Shell parent, String foot) {
		super(parent, foot);
		create();
	}

	/** One that stays and takes keys, and can be resized. */
	ToldControl(Shell parent) {
		super(parent, true);
		create();
	}

	@Override
	protected void createContent(Composite parent) {
		parent.setLayout(new FillLayout());
		scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
		scroll.setExpandHorizontal(true);
		scroll.setExpandVertical(true);
		scroll.setShowFocusedControl(true);
	}

	@Override
	public void setInput(Object input) {
		told = (Told) input;
		if (content != null) {
			content.dispose();
		}
		content = new Composite(scroll, SWT.NONE);
		content.setBackgroundMode(SWT.INHERIT_FORCE);
		GridLayoutFactory.swtDefaults().numColumns(1).margins(8, 6).spacing(0, 3).applyTo(content);
		told.findings().forEach(this::add);
		picture();
		told.findings().forEach(this::addGrounds);
		told.meaning().forEach(line -> label(line, false, 0));
		colour(getShell().getForeground(), getShell().getBackground());
		scroll.setContent(content);
		scroll.setMinHeight(content.computeSize(WIDEST, SWT.DEFAULT).y);
	}

	private void add(FindingAnnotation annotation) {
		Finding finding = annotation.finding();
		if (content.getChildren().length > 0) {
			GridDataFactory.fillDefaults().grab(true, false).applyTo(new Label(content, SWT.SEPARATOR | SWT.HORIZONTAL));
		}
		label(finding.message(), true, 0);
		label(ProgramHover.word(finding.severity()) + " · " + finding.rule(), false, 0);
		for (FixProposal proposal : Fixes.of(annotation.checked(), finding)) {
			link(proposal, proposal.why());
		}
		WhyProposal.of(annotation.checked(), finding).ifPresent(why -> link(why, why.getAdditionalProposalInfo()));
		reasoning(finding.rule()).ifPresent(text -> label(text, false, 0));
	}

	/** Where its numbers come from, and the other blocks that matter to it; named where there are several findings. */
	private void addGrounds(FindingAnnotation annotation) {
		Finding finding = annotation.finding();
		if (told.findings().size() > 1) {
			label(finding.rule(), true, 0);
		}
		for (Evidence evidence : finding.evidence()) {
			label(evidence.name() + " " + evidence.value() + " — " + evidence.origin(), false, 12);
		}
		finding.related().stream().filter(other -> !other.at().equals(finding.at())).distinct().limit(MOST_RELATED)
				.forEach(other -> link(Visit.words(annotation.checked(), other.at(), other.what()), "Goes to this block",
						() -> Visit.to(annotation.checked(), other.at())));
	}

	/** Shows the picture in its place among the words, now or when it has come. */
	private void picture() {
		Label label = new Label(content, SWT.NONE);
		GridData place = GridDataFactory.fillDefaults().exclude(true).create();
		label.setLayoutData(place);
		if (told.picture().isDone()) {
			told.picture().join().ifPresent(picture -> show(picture, label, place));
			return;
		}
		Display display = label.getDisplay();
		told.picture().thenAccept(come -> display.asyncExec(() -> come.filter(picture -> !label.isDisposed()).ifPresent(picture -> {
			show(picture, label, place);
			content.layout();
			scroll.setMinHeight(content.computeSize(WIDEST, SWT.DEFAULT).y);
			Point wanted = computeSizeHint();
			getShell().setSize(Math.max(wanted.x, getShell().getSize().x), Math.max(wanted.y, getShell().getSize().y));
		})));
	}

	/** With the same in words for those who cannot see it. */
	private void show(Pictures.Picture picture, Label label, GridData place) {
		place.exclude = false;
		Image image = (SharpPicture.dark(getShell().getBackground()) ? picture.onDark() : picture.onLight()).on(getShell().getDisplay());
		label.setImage(image);
		label.setToolTipText(picture.text());
		label.getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(event -> event.result = picture.text()));
		label.addDisposeListener(event -> image.dispose());
	}

	/** What the rule's page says of what happens at the spindle; empty for a finding that no rule's page is about. */
	private static Optional<String> reasoning(String rule) {
		try {
			return Optional.of(RulePage.of(rule).section(RulePage.Heading.AT_THE_SPINDLE).replace("`", "").replace("\n", " ").strip());
		} catch (IllegalArgumentException noPage) {
			return Optional.empty();
		}
	}

	private void label(String text, boolean strong, int indent) {
		Label label = new Label(content, SWT.WRAP);
		label.setText(text.replace("&", "&&"));
		if (strong) {
			label.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
		}
		GridDataFactory.fillDefaults().grab(true, false).indent(indent, 0).hint(WIDEST - 30 - indent, SWT.DEFAULT).applyTo(label);
	}

	private void link(ICompletionProposal proposal, String tip) {
		link(proposal.getDisplayString(), tip, () -> proposal.apply(told.viewer().getDocument()));
	}

	private void link(String words, String tip, Runnable work) {
		Link link = new Link(content, SWT.NONE);
		link.setText("<a>" + words.replace("<", "").replace("&", "&&") + "</a>");
		link.setToolTipText(tip);
		link.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
			work.run();
			dispose();
		}));
		GridDataFactory.fillDefaults().applyTo(link);
	}

	@Override
	public boolean hasContents() {
		return told != null && !told.isEmpty();
	}

	/** More than the few lines that the platform allows a hover: the numbers and the drawing belong to a finding. */
	@Override
	public Point computeSizeConstraints(int widthInCharacters, int heightInLines) {
		Point usual = super.computeSizeConstraints(widthInCharacters, heightInLines);
		return new Point(Math.max(usual.x, WIDEST + 40), Math.max(usual.y, highest() + 40));
	}

	@Override
	public Point computeSizeHint() {
		Point inner = content.computeSize(WIDEST, SWT.DEFAULT);
		var trim = computeTrim();
		return new Point(Math.min(inner.x, WIDEST) + trim.width + 4, Math.min(inner.y, highest()) + trim.height + 4);
	}

	private int highest() {
		return getShell().getMonitor().getClientArea().height * HIGHEST / 100;
	}

	@Override
	public void setForegroundColor(Color foreground) {
		super.setForegroundColor(foreground);
		colour(foreground, getShell().getBackground());
	}

	@Override
	public void setBackgroundColor(Color background) {
		super.setBackgroundColor(background);
		colour(getShell().getForeground(), background);
	}

	private void colour(Color foreground, Color background) {
		if (content == null) {
			return;
		}
		scroll.setBackground(background);
		content.setBackground(background);
		for (Control child : content.getChildren()) {
			child.setBackground(background);
			if (!(child instanceof Link)) {
				child.setForeground(foreground);
			}
		}
	}

	@Override
	public void setFocus() {
		super.setFocus();
		for (Control child : content.getChildren()) {
			if (child instanceof Link) {
				child.setFocus();
				return;
			}
		}
	}

	@Override
	public IInformationControlCreator getInformationPresenterControlCreator() {
		return ToldControl::new;
	}
}
