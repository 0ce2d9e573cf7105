package truelead.editor.audit;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.OperationCanceledException;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import truelead.audit.report.ReportRequest;
import truelead.audit.report.Spared;
import truelead.audit.result.Audited;
import truelead.audit.result.Examination;
import truelead.audit.result.Tally;
import truelead.audit.run.Audit;
import truelead.audit.run.ReportPlan;
import truelead.audit.run.Reports;
import truelead.audit.source.Source;
import truelead.audit.terminal.Complaint;
import truelead.checker.rule.Severity;
import truelead.editor.check.ProgramCheck;

/**
 * An audit in the background: progress a program, and a cancel that ends the check of a long program too. Programs are checked as they are
 * on disk.
 */
final class AuditJob extends Job {

	/** Its jobs, for those who wait for them. */
	static final Object FAMILY = new Object();

	private final AuditScope scope;
	private final List<ReportRequest> reports;
	private final BiConsumer<IFile, Audited> watcher;
	private final Consumer<Tally> end;
	private final Map<IProject, Examination> examinations = new ConcurrentHashMap<>();

	/**
	 * @param reports what to write; none to look only
	 * @param watcher is told of every program on the job's thread
	 * @param end     is told when all are through, not where the job is cancelled or fails
	 */
	AuditJob(AuditScope scope, List<ReportRequest> reports, BiConsumer<IFile, Audited> watcher, Consumer<Tally> end) {
		super("Audit of " + scope.name());
		this.scope = scope;
		this.reports = List.copyOf(reports);
		this.watcher = watcher;
		this.end = end;
	}

	@Override
	protected IStatus run(IProgressMonitor monitor) {
		List<Source> sources = scope.sources();
		monitor.beginTask(getName(), sources.size());
		Tally tally = new Tally(Severity.WARNING);
		Spared spared = new Spared(List.of());
		sources.forEach(source -> spared.add(source.path()));
		try (Reports written = Reports.open(reports, System.out, new ReportPlan(false, Severity.WARNING, 0), spared)) {
			new Audit(source -> examination(source, monitor).apply(source), ProjectAcceptances.of(scope), tally).run(sources, audited -> {
				if (monitor.isCanceled()) {
					throw new OperationCanceledException();
				}
				watcher.accept(file(audited.source()), audited);
				monitor.worked(1);
			}, written);
			end.accept(tally);
			return Status.OK_STATUS;
		} catch (OperationCanceledException cancelled) {
			return Status.CANCEL_STATUS;
		} catch (Complaint cannot) {
			return Status.error(cannot.getMessage());
		} finally {
			monitor.done();
		}
	}

	private Examination examination(Source source, IProgressMonitor monitor) {
		IFile file = file(source);
		return examinations.computeIfAbsent(file.getProject(), project -> {
			ProgramCheck check = ProgramCheck.of(file);
			return new Examination(check.job(), check.machine(), check.settings(), monitor::isCanceled);
		});
	}

	private static IFile file(Source source) {
		return ResourcesPlugin.getWorkspace().getRoot().getFile(IPath.fromPortableString(source.shown()));
	}

	@Override
	public boolean belongsTo(Object family) {
		return family == FAMILY;
	}
}
