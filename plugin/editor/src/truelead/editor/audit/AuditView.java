package truelead.editor.audit;

import static truelead.audit.html.Verdict.many;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.ToLongFunction;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;
import truelead.audit.report.ReportRequest;
import truelead.audit.result.Audited;
import truelead.audit.result.Tally;
import truelead.checker.rule.Severity;

/** The audit of programs, folders and projects: a verdict a program, its findings by rule, each a way into the program. */
public final class AuditView extends ViewPart {

	/** Its id in plugin.xml. */
	public static final String ID = "truelead.editor.audit.view";

	private static final String HOW =
			"Choose programs, folders or projects and press Ctrl+Alt+A, or take Audit Threads from their context menu.";
	/** So many findings are a list that a person looks through. */
	private static final int FEW = 30;

	/** Told when the view has something else to offer, on the UI thread. */
	interface Watcher {
		void changed();
	}

	private final List<AuditedProgram> programs = new ArrayList<>();
	private final Queue<AuditedProgram> arrived = new ConcurrentLinkedQueue<>();
	private final List<Watcher> watchers = new ArrayList<>();
	private final AtomicBoolean showing = new AtomicBoolean();
	private AuditScope scope = new AuditScope("nothing", List.of());
	private String remarks = "";
	private volatile Job job;
	private Label said;
	private TreeViewer tree;

	@Override
	public void createPartControl(Composite parent) {
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
		said = new Label(parent, SWT.WRAP);
		GridDataFactory.fillDefaults().grab(true, false).indent(4, 3).applyTo(said);
		said.setText(HOW);
		tree = new TreeViewer(parent, SWT.MULTI | SWT.FULL_SELECTION | SWT.H_SCROLL | SWT.V_SCROLL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(tree.getControl());
		tree.setUseHashlookup(true);
		tree.setContentProvider(new AuditTree());
		tree.setLabelProvider(new AuditLabels());
		ColumnViewerToolTipSupport.enableFor(tree);
		tree.setInput(programs);
		tree.addOpenListener(opened -> open(tree.getStructuredSelection().getFirstElement()));
		getSite().setSelectionProvider(tree);
		new AuditActions(this, tree).fill(getViewSite());
	}

	private void open(Object element) {
		if (element instanceof AuditedFinding finding) {
			Jump.to(getSite().getPage(), finding);
		} else if (element != null) {
			tree.setExpandedState(element, !tree.getExpandedState(element));
		}
	}

	/** Audits these programs in the background, shows what comes of it, and writes the report where one is asked for. */
	public void audit(AuditScope chosen, Optional<ReportRequest> report) {
		stop();
		scope = chosen;
		programs.clear();
		arrived.clear();
		tree.refresh();
		AuditJob started = new AuditJob(chosen, report.stream().toList(), this::take, tally -> later(() -> through(tally, report)));
		job = started;
		started.addJobChangeListener(new JobChangeAdapter() {
			@Override
			public void done(IJobChangeEvent event) {
				later(() -> ended(event));
			}
		});
		say("Audit of " + scope.name() + " \u2026");
		started.schedule();
		watchers.forEach(Watcher::changed);
	}

	/** Says that there is nothing to audit, and how there is. */
	void nothingIn(String place) {
		if (job == null) {
			say("There is no program in " + place + ". " + HOW);
		}
	}

	private void through(Tally tally, Optional<ReportRequest> report) {
		remarks = tally.remarks().isEmpty() ? "" : " " + String.join(" ", tally.remarks());
		refresh();
		say(report.map(request -> request.file().orElseThrow() + " written. ").orElse("") + words());
		report.ifPresent(AuditActions::show);
	}

	/** Checks one of the programs again, such as after a note was put in. */
	void again(IFile program) {
		new AuditJob(new AuditScope(program.getName(), List.of(program)), List.of(), (file, audited) ->
				later(() -> replace(file, audited)), tally -> {
		}).schedule();
	}

	private void ended(IJobChangeEvent event) {
		if (event.getJob() != job) {
			return;
		}
		job = null;
		refresh();
		if (event.getResult().getSeverity() == IStatus.CANCEL) {
			say(stopped());
		} else if (!event.getResult().isOK()) {
			say(event.getResult().getMessage());
		}
	}

	/** Ends what is under way. */
	void stop() {
		if (job != null) {
			job.cancel();
			job = null;
			refresh();
			say(stopped());
		}
	}

	private String stopped() {
		return "Stopped after " + programs.size() + " of " + scope.programs().size() + " programs.";
	}

	/** On the job's thread: many programs can come between two pictures of the screen. */
	private void take(IFile file, Audited audited) {
		if (Job.getJobManager().currentJob() == job) {
			arrived.add(AuditedProgram.of(file, audited));
			if (showing.compareAndSet(false, true)) {
				later(this::refresh);
			}
		}
	}

	private void refresh() {
		showing.set(false);
		for (AuditedProgram next = arrived.poll(); next != null; next = arrived.poll()) {
			programs.add(next);
		}
		tree.refresh();
		if (programs.size() == 1 && scope.programs().size() == 1) {
			unfold(programs.get(0));
		}
		if (job != null) {
			say(programs.size() + " of " + scope.programs().size() + " programs");
		}
		watchers.forEach(Watcher::changed);
	}

	/** Whoever asks for one program wants its findings: all of them where they are few, else how many each rule has. */
	private void unfold(AuditedProgram program) {
		boolean few = program.rules().stream().mapToInt(rule -> rule.findings().size()).sum() <= FEW;
		tree.expandToLevel(program, few ? TreeViewer.ALL_LEVELS : 1);
	}

	private void replace(IFile file, Audited audited) {
		AuditedProgram now = AuditedProgram.of(file, audited);
		Object chosen = tree.getStructuredSelection().getFirstElement();
		Optional<Object> next = chosen instanceof AuditedFinding settled
				? programs.stream().filter(program -> program.file().equals(settled.program())
						&& program.file().equals(file)).findFirst().map(before -> before.next(settled, now)) : Optional.empty();
		programs.replaceAll(program -> program.file().equals(file) ? now : program);
		Object[] expanded = tree.getExpandedElements();
		tree.refresh();
		for (Object old : expanded) {
			expandLike(old);
		}
		next.ifPresent(this::select);
		if (job == null) {
			say(words());
		}
		watchers.forEach(Watcher::changed);
	}

	private void select(Object element) {
		programs.stream().flatMap(program -> program.rules().stream()).filter(rule -> rule.findings().contains(element))
				.forEach(rule -> tree.setExpandedState(rule, true));
		tree.setSelection(new StructuredSelection(element), true);
	}

	/** What was made anew is opened where its predecessor was open. */
	private void expandLike(Object old) {
		for (AuditedProgram program : programs) {
			if (old instanceof AuditedProgram before && before.file().equals(program.file())) {
				tree.setExpandedState(program, true);
			}
			program.rules().stream().filter(rule -> old instanceof AuditedProgram.OfRule before && before.file().equals(rule.file())
					&& before.rule().equals(rule.rule())).forEach(rule -> tree.setExpandedState(rule, true));
		}
	}

	/** The programs as they are shown now: one that was checked again counts as it is since then. */
	private String words() {
		long refused = sum(Tally::refused);
		return many(sum(Tally::programs), "program") + ", " + many(sum(Tally::operations), "threading operation") + ": "
				+ many(sum(tally -> tally.count(Severity.ERROR)), "error") + ", " + many(sum(tally -> tally.count(Severity.WARNING)),
						"warning") + ", " + sum(Tally::notFollowed) + " not followed, " + sum(Tally::accepted) + " accepted"
				+ (refused > 0 ? ", " + many(refused, "file") + " could not be checked" : "") + "." + remarks;
	}

	private long sum(ToLongFunction<Tally> count) {
		return programs.stream().map(AuditedProgram::tally).mapToLong(count).sum();
	}

	private void say(String words) {
		if (!said.isDisposed()) {
			said.setText(words.replace("&", "&&"));
			said.getParent().layout();
		}
	}

	/** Whether an audit is under way. */
	boolean running() {
		return job != null;
	}

	/** What was audited last. */
	AuditScope scope() {
		return scope;
	}

	void watch(Watcher watcher) {
		watchers.add(watcher);
	}

	private void later(Runnable work) {
		if (!tree.getControl().isDisposed()) {
			tree.getControl().getDisplay().asyncExec(() -> {
				if (!tree.getControl().isDisposed()) {
					work.run();
				}
			});
		}
	}

	@Override
	public void setFocus() {
		tree.getControl().setFocus();
	}

	@Override
	public void dispose() {
		if (job != null) {
			job.cancel();
		}
		super.dispose();
	}
}
