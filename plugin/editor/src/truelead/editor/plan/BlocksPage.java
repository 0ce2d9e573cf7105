package truelead.editor.plan;

import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.events.TraverseEvent;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import truelead.audit.html.PlanPage;
import truelead.audit.plan.PlanText;
import truelead.checker.edit.Sequence;
import truelead.checker.plan.Request;
import truelead.checker.plan.Weighing;

/** The blocks of the way taken, its drill, depths and speed, and what to mind before they run. */
final class BlocksPage extends WizardPage {

	private final PlanWizard wizard;
	private StyledText blocks;
	private Text figures;
	private Optional<Weighing> shown = Optional.empty();
	private Optional<Request> asked = Optional.empty();
	private List<String> lines = List.of();

	BlocksPage(PlanWizard wizard) {
		super("blocks", "The blocks", null);
		this.wizard = wizard;
	}

	@Override
	public void createControl(Composite parent) {
		SashForm area = new SashForm(parent, SWT.VERTICAL);
		GridLayoutFactory.fillDefaults().applyTo(area);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
		figures = new Text(area, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL | SWT.BORDER);
		figures.addTraverseListener(BlocksPage::leave);
		blocks = new StyledText(area, SWT.MULTI | SWT.READ_ONLY | SWT.H_SCROLL | SWT.V_SCROLL | SWT.BORDER);
		blocks.setFont(JFaceResources.getTextFont());
		blocks.addTraverseListener(BlocksPage::leave);
		area.setWeights(2, 3);
		setControl(area);
		setPageComplete(false);
	}

	/** The tab key leads on from a text that cannot be typed in. */
	private static void leave(TraverseEvent event) {
		event.doit |= event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS;
	}

	@Override
	public void setVisible(boolean visible) {
		super.setVisible(visible);
		Optional<Request> request = wizard.plan().map(plan -> plan.request());
		setPageComplete(visible && wizard.chosen().isPresent());
		if (visible && wizard.chosen().isPresent() && !(wizard.chosen().equals(shown) && request.equals(asked))) {
			shown = wizard.chosen();
			asked = request;
			fill(shown.get(), request.orElseThrow());
		}
		if (visible) {
			blocks.setFocus();
		}
	}

	private void fill(Weighing way, Request request) {
		setTitle(request.thread().designation() + " by " + way.method().title());
		setMessage(wizard.where());
		lines = written(way, request);
		blocks.setText(String.join("\n", lines));
		StringBuilder text = new StringBuilder();
		PlanText.figures(way, request, wizard.existing()).forEach(figure -> text.append(figure[0]).append(": ").append(figure[1])
				.append('\n'));
		text.append("\nBefore it runs:\n");
		PlanPage.before(request, way).forEach(sentence -> text.append("\u2022 ").append(sentence).append('\n'));
		figures.setText(text.toString());
		figures.setTopIndex(0);
	}

	/** Many holes are many blocks: they are made off the UI thread. */
	private List<String> written(Weighing way, Request request) {
		List<String> made = new ArrayList<>();
		try {
			getContainer().run(true, false, monitor -> made.addAll(Sequence.of(request, way.method(), wizard.question().work())));
		} catch (InvocationTargetException failed) {
			ILog.of(BlocksPage.class).error("The blocks could not be made", failed.getCause());
			setErrorMessage("The blocks could not be made: " + failed.getCause());
			setPageComplete(false);
		} catch (InterruptedException given) {
			Thread.currentThread().interrupt();
		}
		return made;
	}

	/** The blocks shown. */
	List<String> lines() {
		return lines;
	}
}
