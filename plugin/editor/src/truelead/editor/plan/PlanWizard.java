package truelead.editor.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.eclipse.jface.wizard.IWizardPage;
import org.eclipse.jface.wizard.Wizard;
import truelead.checker.plan.Existing;
import truelead.checker.plan.Plan;
import truelead.checker.plan.Request;
import truelead.checker.plan.Weighing;

/** Asks what is to be made, weighs the ways, shows the blocks, and puts them into the program. */
final class PlanWizard extends Wizard {

	private final Question question;
	private final Predicate<List<String>> insert;
	private final WantedPage wanted;
	private final WaysPage ways = new WaysPage(this);
	private final BlocksPage blocks = new BlocksPage(this);
	private Optional<Plan> plan = Optional.empty();
	private Optional<Weighing> chosen = Optional.empty();

	/** {@code insert} puts the blocks into the program and tells whether it did. */
	PlanWizard(Question question, Predicate<List<String>> insert) {
		this.question = question;
		this.insert = insert;
		this.wanted = new WantedPage(question);
		setNeedsProgressMonitor(true);
		setHelpAvailable(false);
		setWindowTitle(question.existing().isPresent() ? "What Else Could Make This Thread?" : "Plan a Thread");
	}

	@Override
	public void addPages() {
		addPage(wanted);
		addPage(ways);
		addPage(blocks);
	}

	/** The comparison, where the program has said all that is asked for. */
	@Override
	public IWizardPage getStartingPage() {
		if (question.existing().isPresent() && wanted.request().isPresent()) {
			ways.setPreviousPage(wanted);
			return ways;
		}
		return wanted;
	}

	@Override
	public boolean canFinish() {
		return getContainer().getCurrentPage() == blocks && blocks.isPageComplete();
	}

	@Override
	public boolean performFinish() {
		return insert.test(blocks.lines());
	}

	Question question() {
		return question;
	}

	/** The plan of what is asked for now; empty where something cannot be used. */
	Optional<Plan> plan() {
		Optional<Request> request = wanted.request();
		if (!request.equals(plan.map(Plan::request))) {
			plan = request.map(asked -> Plan.of(asked));
			chosen = plan.flatMap(Plan::chosen);
		}
		return plan;
	}

	/** The program's own thread with what the person changed; empty where the wizard began with none. */
	Optional<Existing> existing() {
		return question.existing().flatMap(existing -> plan().map(now -> existing.with(now.request(), "typed here")));
	}

	/** The way taken: the recommended one until another is chosen. */
	Optional<Weighing> chosen() {
		return chosen;
	}

	void choose(Optional<Weighing> way) {
		chosen = way;
	}

	/** Where the blocks go. */
	String where() {
		return question.line() < 0 ? "Finish puts these blocks into the program at the caret; one undo takes them out."
				: "Finish puts these blocks before line " + (question.line() + 1)
				+ ", where the tool's part begins. The program's own operation stays: take it out yourself.";
	}
}
