package truelead.checker.callout;

import java.util.Set;

/**
 * Words for the teeth of a thread mill, one or several in a row: SINGLE POINT, EINZAHN, MONODENT; COMB, MEHRZAHN, PEIGNE. Case and accents
 * do not count (common practice, no source).
 */
public final class CutterTeeth {

	private static final Set<String> ONE = Set.of("SINGLE", "SGL", "EINZAHN", "EINZAHNIG", "EINZAEHNIG", "EINZAHNFRASER", "EINZAHNFRAESER",
			"MONODENT", "MONODENTE", "MONODIENTE");
	private static final Set<String> SEVERAL = Set.of("COMB", "MULTI", "MULTIFORM", "MULTITOOTH", "MEHRZAHN", "MEHRZAHNIG", "MEHRZAEHNIG",
			"MEHRRILLIG", "MEHRREIHIG", "KAMM", "PEIGNE", "PETTINE", "PEINE", "MULTIDENT", "MULTIDENTE");
	private static final Set<String> TOOTH = Set.of("TOOTH", "ZAHN", "DENT", "DENTE", "DIENTE", "ROW", "REIHE", "FILA", "RANG");
	private static final Set<String> ROWS = Set.of("ROWS", "REIHEN", "FILAS", "RANGS");
	private static final Set<String> A_SINGLE = Set.of("1", "ONE", "EIN", "UNE", "UN", "UNO");

	private CutterTeeth() {
	}

	/** Whether a word says that there is one tooth in a row. */
	public static boolean one(String word) {
		return ONE.contains(TradeWords.fold(word));
	}

	/** The same of two words or a number and a word: ONE TOOTH, 1 ZAHN, UN DIENTE. */
	public static boolean one(String number, String word) {
		return TOOTH.contains(TradeWords.fold(word)) && A_SINGLE.contains(TradeWords.fold(number));
	}

	/** Whether a number before the word counts teeth or rows of them: 1 ROW, 5 REIHEN. */
	static boolean counted(String word) {
		return TOOTH.contains(TradeWords.fold(word)) || ROWS.contains(TradeWords.fold(word));
	}

	/** Whether a word says that there are several. */
	public static boolean several(String word) {
		return SEVERAL.contains(TradeWords.fold(word));
	}
}
