package truelead.checker.edit;

import java.util.List;
import java.util.Optional;
import truelead.checker.machine.Modal;
import truelead.checker.program.Setting;

/**
 * What holds at a block when the program first comes to it.
 *
 * @param before       the state in force before it; empty where the program does not come to it
 * @param after        the state behind it; empty where the program goes elsewhere or ends there
 * @param motionBefore the kind of motion or cycle that made the last step before it, in words; empty text for none
 * @param motionAfter  the same behind it
 * @param values       what the expressions asked for come to before it, in their order; not known where the program does not come to it
 */
public record Situation(Optional<Modal> before, Optional<Modal> after, String motionBefore, String motionAfter, List<Setting> values) {

	public Situation {
		values = List.copyOf(values);
	}
}
