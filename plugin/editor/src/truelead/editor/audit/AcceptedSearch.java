package truelead.editor.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.audit.standing.AcceptFile;
import truelead.audit.terminal.Complaint;
import truelead.checker.job.Allowance;
import truelead.checker.sheet.ProgramThreads;
import truelead.editor.check.ProjectAcceptFile;

/** Finds all that is accepted in a project, by an audit of its programs in the background. */
final class AcceptedSearch {

	private final IProject project;
	private final List<AcceptedFinding> notes = Collections.synchronizedList(new ArrayList<>());
	private final Map<AcceptFile.Entry, AuditedFinding> used = Collections.synchronizedMap(new HashMap<>());
	private List<AcceptFile.Entry> entries = List.of();

	private AcceptedSearch(IProject project) {
		this.project = project;
	}

	/**
	 * Starts a search; the job can be cancelled.
	 *
	 * @param end       is told what was found, stale ones first, on the job's thread
	 * @param complaint is told why nothing can be found
	 */
	static Job start(IProject project, Consumer<List<AcceptedFinding>> end, Consumer<String> complaint) {
		AcceptedSearch search = new AcceptedSearch(project);
		Job job = new AuditJob(AuditScope.of(List.of(project)), List.of(), search::take, tally -> end.accept(search.found()));
		job.addJobChangeListener(new JobChangeAdapter() {
			@Override
			public void aboutToRun(IJobChangeEvent event) {
				search.readEntries();
			}

			@Override
			public void done(IJobChangeEvent event) {
				if (event.getResult().matches(IStatus.ERROR)) {
					complaint.accept(event.getResult().getMessage());
				}
			}
		});
		job.schedule();
		return job;
	}

	/** A file that is none is the audit's own complaint. */
	private void readEntries() {
		IFile file = ProjectAcceptFile.of(project);
		try {
			entries = file.exists() && file.getLocation() != null ? AcceptFile.read(file.getLocation().toOSString()).entries() : List.of();
		} catch (Complaint noAcceptFile) {
			entries = List.of();
		}
	}

	private void take(IFile program, Audited audited) {
		if (!(audited instanceof Audited.Checked checked)) {
			return;
		}
		for (Allowance note : checked.result().work().trouble().allowances()) {
			if (note.at().file().name().equals(checked.file().name())) {
				notes.add(AcceptedFinding.of(program, note, checked.findings().stream().anyMatch(finding -> accepts(note, finding))));
			}
		}
		ProgramThreads threads = new ProgramThreads(checked.result().work());
		for (Judged finding : checked.findings()) {
			entries.stream().filter(entry -> entry.speaksOf(checked) && entry.accepts(finding)
					&& finding.acceptance().filter(why -> !why.inProgram()).isPresent())
					.forEach(entry -> used.putIfAbsent(entry, AuditedFinding.of(program, threads, finding)));
		}
	}

	private static boolean accepts(Allowance note, Judged finding) {
		return finding.finding().rule().equals(note.rule())
				&& finding.acceptance().filter(why -> why.inProgram() && why.reason().equals(note.reason())).isPresent();
	}

	private List<AcceptedFinding> found() {
		List<AcceptedFinding> all = new ArrayList<>(notes);
		entries.forEach(entry -> all.add(AcceptedFinding.of(entry, Optional.ofNullable(used.get(entry)))));
		all.sort(Comparator.comparing(AcceptedFinding::inForce).thenComparing(AcceptedFinding::programName)
				.thenComparing(AcceptedFinding::line));
		return all;
	}
}
