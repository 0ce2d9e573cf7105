package truelead.audit.standing;

import java.util.List;
import truelead.audit.result.Audited;

/** What is known about findings from elsewhere: an accept file or a baseline. Asked for one program after the other, in order. */
public interface Standing {

	/** The same program, its findings judged. */
	Audited.Checked judge(Audited.Checked checked);

	/** After the last program: what is left to say, one sentence each. */
	List<String> remarks();
}
