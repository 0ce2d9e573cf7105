package truelead.checker.job;

import java.util.List;
import java.util.Map;
import truelead.checker.profile.MachineProfile;

/** The words of our notes, for messages and for completion in an editor. */
public final class NoteWords {

	private static final Map<String, List<String>> ITEMS = Map.of(
			"THREAD", List.of("M6X1-6H", "1/4-20 UNC-2B", "DEPTH", "BLIND", "THROUGH", "COUNT"),
			"HOLE", List.of("BOTTOM", "THROUGH", "WALL", "BLIND", "DIA"),
			"TOOL", List.of("T", "FORM TAP", "SPIRAL POINT TAP", "SPIRAL FLUTE TAP", "DRILL", "THREAD MILL", "LEAD", "DIA", "REACH",
					"TEETH", "NOSE", "FLAT",
					"ANGLE", "PITCH", "COMB", "SINGLE", "EDGE FEED", "TOOTH FEED", "RIGID HOLDER", "FLOATING HOLDER", "SYNCHRO HOLDER",
					"SELF REVERSING HOLDER", "LIMIT"),
			"STOCK", List.of("STEEL", "STAINLESS", "CAST IRON", "ALUMINIUM", "BRASS", "BRONZE", "TITANIUM", "PLASTIC", "HRC", "HB", "HV"),
			"SURFACE", List.of("Z0"),
			"ALLOW", List.of(),
			"MACHINE PROFILE", MachineProfile.shipped());

	private static final Map<String, String> EXPECTED = Map.of(
			"THREAD", "a thread such as M6X1-6H or 1/4-20 UNC-2B, DEPTH, BLIND, THROUGH or COUNT",
			"HOLE", "BOTTOM, WALL, THROUGH or DIA with a length, or BLIND",
			"TOOL", "a tool number such as T5, a kind of tool such as FORM TAP, a thread, or a fact such as LEAD 2.5",
			"STOCK", "a material such as STEEL, or a hardness such as 28 HRC",
			"SURFACE", "a level such as Z0",
			"ALLOW", "the name of a rule and, after a comma, the reason",
			"MACHINE", "the name of a machine profile");

	private NoteWords() {
	}

	/** The keywords that a note begins with. */
	public static List<String> keywords() {
		return List.of("THREAD", "HOLE", "TOOL", "STOCK", "SURFACE", "ALLOW", "MACHINE PROFILE");
	}

	/** Words and samples that may stand in the items of a note; empty for a keyword that is none. */
	public static List<String> items(String keyword) {
		return ITEMS.getOrDefault(keyword, List.of());
	}

	/** What may stand in an item of a note, as part of a sentence. */
	static String expected(String keyword) {
		return EXPECTED.getOrDefault(keyword, "an item");
	}
}
