package truelead.checker.rule.hole;

import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** A rule about the diameter of a hole on one side of the limits: for a cut or formed thread, one of a taper, or a wire insert. */
abstract class DrillSizeRule extends HoleRule {

	DrillSizeRule(String name) {
		super(name);
	}

	@Override
	final void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		Figures figures = new Figures(visits.get(0).modal().unit());
		TaperHole.of(operation, visits.typical()).flatMap(hole -> tapered(hole, operation, figures))
				.ifPresent(draft -> SwappedDrills.told(operation, draft, work, found));
		for (DrilledSize size : visits.sizes()) {
			Optional<Draft> draft = size.usual() ? Optional.empty() : size.forming() ? formed(operation, visits, size, figures)
					: cut(operation, visits, size, figures);
			if (draft.isPresent()) {
				SwappedDrills.told(operation, draft.get(), work, found);
				return;
			}
		}
		InsertHole.first(operation, visits.typical()).filter(this::isOff)
				.ifPresent(hole -> found.accept(hole.draft(this, operation.block(), figures)));
	}

	/** What is wrong with the hole of a taper thread. */
	abstract Optional<Draft> tapered(TaperHole hole, ThreadingOperation operation, Figures figures);

	/** What is wrong with a hole whose thread is cut. */
	abstract Optional<Draft> cut(ThreadingOperation operation, Visits visits, DrilledSize size, Figures figures);

	/** What is wrong with a hole whose thread is formed. */
	abstract Optional<Draft> formed(ThreadingOperation operation, Visits visits, DrilledSize size, Figures figures);

	/** Whether the hole of a wire insert is off on the rule's side. */
	abstract boolean isOff(InsertHole hole);
}
