package truelead.checker.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class UnifiedFormulaTest {

	/** Machinery's Handbook 31, pp. 624 to 637. */
	@Test
	void workedExamples() {
		UnifiedFormula half = new UnifiedFormula(0.5, 28, UnifiedFormula.Engagement.NINE_PITCHES_TABULATED);

		assertThat(half.tolerance2A()).isCloseTo(0.003668, within(0.0000005));
		assertThat(half.minorMin("2B")).isEqualByComparingTo("0.461");
		assertThat(half.pitchMin()).isEqualByComparingTo("0.4768");
		assertThat(half.pitchMax("2B")).isEqualByComparingTo("0.4816");
	}

	/** 19/64-36, which no series has: 0.003126 by its own diameter, so 0.2788 + 0.0041. */
	@Test
	void aThreadOfNoSeriesIsReckonedByItsOwnDiameter() {
		Limits limits = ThreadTable.standard().limits(ThreadSpec.unified(0.296875, 36), "2B").orElseThrow();

		assertThat(limits.pitchMin()).contains(new BigDecimal("0.2788"));
		assertThat(limits.pitchMax()).contains(new BigDecimal("0.2829"));
		assertThat(limits.origin()).isEqualTo(Origin.COMPUTED);
	}

	/**
	 * Of 247 published rows the formula misses two: #6-32 3B, on the edge of a half, and 1-14 UNS, which keeps the tolerances of a fine
	 * thread.
	 */
	@Test
	void publishedRowsAgainstTheFormula() {
		List<String> missed = new ArrayList<>();
		UnifiedTable table = new UnifiedTable();
		for (DataRow row : DataFile.rows(DataFile.class, "unified-published.csv")) {
			UnifiedTable.Row thread = table.rows().stream()
					.filter(r -> r.size().equals(row.get("size")) && r.tpi() == DataFile.number(row, "tpi")).findFirst().orElseThrow();
			UnifiedFormula formula = new UnifiedFormula(thread.diameter(), thread.tpi(), UnifiedTable.engagement(thread));
			String name = row.get("class");
			boolean same = same(row, "minorMin", formula.minorMin(name)) && same(row, "minorMax", formula.minorMax(name))
					&& same(row, "pitchMin", formula.pitchMin()) && same(row, "pitchMax", formula.pitchMax(name));
			if (!same) {
				missed.add(row.get("size") + "-" + row.get("tpi") + " " + name);
			}
		}

		assertThat(missed).containsExactly("#6-32 3B", "1-14 2B", "1-14 3B");
	}

	private static boolean same(DataRow row, String column, BigDecimal value) {
		return new BigDecimal(row.get(column)).compareTo(value) == 0;
	}
}
