package truelead.audit.result;

import java.util.List;
import truelead.audit.source.ContentHash;
import truelead.audit.source.Source;
import truelead.checker.CheckResult;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;

/** What came of one program of the run. */
public sealed interface Audited {

	/** Which program. */
	Source source();

	/**
	 * A program that was checked.
	 *
	 * @param content  hash of its bytes
	 * @param findings all of them, in order, accepted and known ones too
	 * @param gone     what the baseline had and the program no longer has
	 */
	record Checked(Source source, ProgramFile file, ContentHash content, CheckResult result, List<Judged> findings, List<Gone> gone)
			implements Audited {

		public Checked {
			findings = List.copyOf(findings);
			gone = List.copyOf(gone);
		}

		/** SHA-256 of its bytes, lower-case hexadecimal. */
		public String sha256() {
			return content.hex();
		}

		/** The same program with its findings judged anew. */
		public Checked with(List<Judged> judged, List<Gone> nowGone) {
			return new Checked(source, file, content, result, judged, nowGone);
		}

		/** The name of the file of a location as reports show it: the program itself, one beside it, or a file named with its folder. */
		public String shown(Location at) {
			String name = at.file().name();
			if (name.indexOf('/') >= 0) {
				return name.startsWith("./") ? name.substring(2) : name;
			}
			return name.equals(file.name()) ? source.shown() : source.shownFolder() + name;
		}
	}

	/** A file that could not be checked; the reason reads after the name and a colon. */
	record Refused(Source source, String reason) implements Audited {
	}
}
