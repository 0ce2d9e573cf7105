package truelead.audit.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

/**
 * A finding and how it stands.
 *
 * @param fingerprint by which it is known again, see {@link Fingerprint}
 * @param acceptance  why it is accepted, where it is
 * @param known       whether the baseline has it already
 */
public record Judged(Finding finding, String fingerprint, Optional<Acceptance> acceptance, boolean known) {

	/** The rule that speaks of what could not be checked. */
	public static final String NOT_FOLLOWED = "not-followed";

	/** The findings of one program, none known yet, those accepted by a note in the program so marked. */
	public static List<Judged> all(List<Finding> findings) {
		List<String> marks = Fingerprint.of(findings);
		List<Judged> judged = new ArrayList<>();
		for (int i = 0; i < findings.size(); i++) {
			Optional<Acceptance> note = findings.get(i).accepted().map(reason -> new Acceptance(true, reason, "", ""));
			judged.add(new Judged(findings.get(i), marks.get(i), note, false));
		}
		return judged;
	}

	/** The same finding, accepted. */
	public Judged accepted(Acceptance why) {
		return new Judged(finding, fingerprint, Optional.of(why), known);
	}

	/** The same finding, known from the baseline. */
	public Judged knownAlready() {
		return new Judged(finding, fingerprint, acceptance, true);
	}

	/** Neither accepted nor known from the baseline. */
	public boolean open() {
		return acceptance.isEmpty() && !known;
	}

	/** Open, and says that a part was not checked. */
	public boolean openNotFollowed() {
		return open() && finding.rule().equals(NOT_FOLLOWED) && finding.severity() != Severity.INFORMATION;
	}

	/** Open, about the program and not about what could be followed, and at least as bad as {@code limit}. */
	public boolean openAtLeast(Severity limit) {
		return open() && !finding.rule().equals(NOT_FOLLOWED) && finding.severity().compareTo(limit) <= 0;
	}
}
