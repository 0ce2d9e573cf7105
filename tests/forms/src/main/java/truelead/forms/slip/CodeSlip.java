package truelead.forms.slip;

import java.util.List;
import java.util.Map;

/** Codes that are typed for one another. */
final class CodeSlip {

	private static final Map<String, List<String>> FOR = Map.ofEntries(Map.entry("G0", List.of("G1")), Map.entry("G1", List.of("G0")),
			Map.entry("G2", List.of("G3")), Map.entry("G3", List.of("G2")), Map.entry("G17", List.of("G18")),
			Map.entry("G18", List.of("G17")), Map.entry("G20", List.of("G21")), Map.entry("G21", List.of("G20")),
			Map.entry("G32", List.of("G1")), Map.entry("G33", List.of("G1")), Map.entry("G41", List.of("G42")),
			Map.entry("G42", List.of("G41")), Map.entry("G43", List.of("G44")), Map.entry("G54", List.of("G55")),
			Map.entry("G73", List.of("G74")), Map.entry("G74", List.of("G84")), Map.entry("G81", List.of("G84")),
			Map.entry("G82", List.of("G84")), Map.entry("G83", List.of("G84")), Map.entry("G84", List.of("G81", "G83")),
			Map.entry("G85", List.of("G84")), Map.entry("G90", List.of("G91")), Map.entry("G91", List.of("G90")),
			Map.entry("G94", List.of("G95")), Map.entry("G95", List.of("G94")), Map.entry("G96", List.of("G97")),
			Map.entry("G97", List.of("G96")), Map.entry("G98", List.of("G99")), Map.entry("G99", List.of("G98")),
			Map.entry("M3", List.of("M4")), Map.entry("M4", List.of("M3")), Map.entry("M8", List.of("M9")));

	private CodeSlip() {
	}

	/** What is typed for a code, without zeros before its number. */
	static List<String> of(String code) {
		return FOR.getOrDefault(code, List.of());
	}
}
