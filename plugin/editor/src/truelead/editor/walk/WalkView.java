package truelead.editor.walk;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.part.ViewPart;

/** A walk of five minutes through Truelead: each step a sentence with a link that does it, ticked when it is done. */
public final class WalkView extends ViewPart {

	/** Its id in plugin.xml. */
	public static final String ID = "truelead.editor.walk.view";

	private static final String CAUTION =
			"A finding is advice, and silence is no promise: prove every program out as you would without Truelead. "
			+ "The demo programs are invented; never run them.";

	private final Map<Step, Label> ticks = new EnumMap<>(Step.class);
	private final Watch watch = new Watch(this::done);
	private ScrolledComposite scroll;
	private Composite content;
	private Label count;

	@Override
	public void createPartControl(Composite parent) {
		scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
		scroll.setExpandHorizontal(true);
		scroll.setExpandVertical(true);
		scroll.setShowFocusedControl(true);
		content = new Composite(scroll, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(8, 6).spacing(6, 7).applyTo(content);
		count = new Label(content, SWT.WRAP);
		count.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).applyTo(count);
		Guidance guidance = new Guidance(getSite().getPage());
		for (Step step : Step.values()) {
			ticks.put(step, tick(step));
			link(step.sentence(), 1, () -> {
				if (guidance.run(step) && step == Step.PLAN) {
					done(step);
				}
			});
		}
		Label caution = new Label(content, SWT.WRAP);
		caution.setText(CAUTION);
		GridDataFactory.fillDefaults().span(2, 1).grab(true, false).indent(0, 6).hint(100, SWT.DEFAULT).applyTo(caution);
		link("<a>Begin again</a>", 2, () -> {
			Progress.beginAgain();
			show();
		});
		scroll.setContent(content);
		scroll.addListener(SWT.Resize, event -> fit());
		getSite().getPage().addPartListener(watch);
		show();
	}

	private Label tick(Step step) {
		Label tick = new Label(content, SWT.NONE);
		GridDataFactory.fillDefaults().hint(16, SWT.DEFAULT).align(SWT.CENTER, SWT.BEGINNING).applyTo(tick);
		tick.getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(event -> event.result = Progress.isDone(step)
				? "done" : "to do"));
		return tick;
	}

	private void link(String text, int span, Runnable work) {
		Link link = new Link(content, SWT.WRAP);
		link.setText(text);
		link.addListener(SWT.Selection, event -> work.run());
		GridDataFactory.fillDefaults().span(span, 1).grab(true, false).hint(100, SWT.DEFAULT).applyTo(link);
	}

	private void done(Step step) {
		if (!content.isDisposed() && !Progress.isDone(step)) {
			Progress.done(step);
			show();
		}
	}

	private void show() {
		int left = 0;
		for (Step step : Step.values()) {
			left += Progress.isDone(step) ? 0 : 1;
			ticks.get(step).setText(Progress.isDone(step) ? "\u2713" : Integer.toString(step.ordinal() + 1));
		}
		int done = Step.values().length - left;
		count.setText(left == 0 ? "All done: open your own programs." : done + " of " + Step.values().length + " steps done");
		fit();
	}

	private void fit() {
		int width = scroll.getClientArea().width;
		if (width > 0) {
			scroll.setMinHeight(content.computeSize(width, SWT.DEFAULT).y);
			content.layout();
		}
	}

	@Override
	public void setFocus() {
		content.setFocus();
	}

	@Override
	public void dispose() {
		getSite().getPage().removePartListener(watch);
		watch.watch(Optional.empty());
		super.dispose();
	}
}
