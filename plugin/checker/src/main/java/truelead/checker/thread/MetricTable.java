package truelead.checker.thread;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.MetricTolerances.Tolerance;

/** ISO metric and MJ threads: the series of ISO 261 and the limits of ISO 965. Diameters and pitches in mm. */
final class MetricTable {
	/** What the basic pitch diameter is below D, 3/4 H, in pitches (ISO 68-1). */
	private static final double PITCH_DIAMETER = 3 * Math.sqrt(3) / 8;
	/** What the basic minor diameter is below D, 5/4 H, in pitches (ISO 68-1). */
	private static final double MINOR_DIAMETER = 5 * Math.sqrt(3) / 8;
	/** ISO 5855-1: the minor diameter of an MJ nut leaves 9/16 H of thread. */
	private static final double MJ_MINOR_DIAMETER = 9 * Math.sqrt(3) / 16;

	/** A diameter and pitch of the series. */
	record Row(double diameter, double pitch, boolean coarse, int choice) {
	}

	private final List<Row> rows = new ArrayList<>();
	private final Map<String, Limits> published = new HashMap<>();

	MetricTable() {
		for (DataRow r : DataFile.rows(MetricTable.class, "metric-series.csv")) {
			rows.add(new Row(DataFile.number(r, "D"), DataFile.number(r, "P"), r.get("series").equals("coarse"),
					Integer.parseInt(r.get("choice"))));
		}
		for (DataRow r : DataFile.rows(MetricTable.class, "metric-published.csv")) {
			double diameter = DataFile.number(r, "D");
			published.put(key(diameter, DataFile.number(r, "P"), r.get("class")),
					new Limits(r.get("class"), LengthUnit.MM, size(r, "minorMin"), size(r, "minorMax"), size(r, "pitchMin"),
							size(r, "pitchMax"), Optional.of(Decimals.round(diameter, 3)), Origin.of(r.get("source")), r.get("source")));
		}
	}

	List<Row> rows() {
		return List.copyOf(rows);
	}

	boolean holds(double diameter, double pitch) {
		for (Row row : rows) {
			if (same(row.diameter, diameter) && same(row.pitch, pitch)) {
				return true;
			}
		}
		return false;
	}

	OptionalDouble coarsePitch(double diameter) {
		for (Row row : rows) {
			if (row.coarse && same(row.diameter, diameter)) {
				return OptionalDouble.of(row.pitch);
			}
		}
		return OptionalDouble.empty();
	}

	/**
	 * Limits of a class such as {@code 6H} or {@code 4H5H} (pitch diameter's grade first); empty for a grade that ISO 965-1 does not have
	 * at the pitch.
	 */
	Optional<Limits> limits(ThreadSpec spec, MetricClass wanted) {
		Limits ruling = published.get(key(spec.diameter(), spec.pitch(), wanted.name()));
		if (ruling != null && spec.system() == ThreadSystem.METRIC) {
			return Optional.of(ruling);
		}
		Optional<Tolerance> pitch = MetricTolerances.pitch(spec, wanted.pitchGrade());
		Optional<Tolerance> minor = MetricTolerances.minor(spec, wanted.minorGrade());
		Optional<Tolerance> deviation = MetricTolerances.deviation(spec, wanted.position());
		if (pitch.isEmpty() || minor.isEmpty() || deviation.isEmpty()) {
			return Optional.empty();
		}
		return Optional.of(limits(spec, wanted, pitch.get(), minor.get(), deviation.get()));
	}

	private Limits limits(ThreadSpec spec, MetricClass wanted, Tolerance pitch, Tolerance minor, Tolerance deviation) {
		boolean mj = spec.system() == ThreadSystem.MJ;
		BigDecimal shift = micrometres(deviation.micrometres());
		BigDecimal minorMin = basicMinor(spec).add(shift);
		BigDecimal pitchMin = basicPitch(spec).add(shift);
		Origin origin = Origin.of(pitch.source() + minor.source()).and(mj ? Origin.FROM_MEMORY : Origin.TABLE)
				.and(holds(spec.diameter(), spec.pitch()) ? Origin.TABLE : Origin.COMPUTED);
		String source = (mj ? "basic size ISO 5855-1 (from memory)" : "basic size ISO 724") + "; pitch diameter tolerance " + pitch.source()
				+ "; minor diameter tolerance " + minor.source()
				+ (shift.signum() == 0 ? "" : "; deviation G " + deviation.source())
				+ (holds(spec.diameter(), spec.pitch()) ? "" : "; diameter and pitch not in ISO 261, computed");
		return new Limits(wanted.name(), LengthUnit.MM, Optional.of(minorMin), Optional.of(minorMin.add(micrometres(minor.micrometres()))),
				Optional.of(pitchMin), Optional.of(pitchMin.add(micrometres(pitch.micrometres()))),
				Optional.of(Decimals.round(spec.diameter(), 3).add(shift)), origin, source);
	}

	/** D − 5√3/8 P, or D − 9√3/16 P for MJ, rounded to a micrometre as ISO 724 prints it. */
	static BigDecimal basicMinor(ThreadSpec spec) {
		double share = spec.system() == ThreadSystem.MJ ? MJ_MINOR_DIAMETER : MINOR_DIAMETER;
		return Decimals.round(spec.diameter() - share * spec.pitch(), 3);
	}

	/** D − 3√3/8 P, rounded to a micrometre as ISO 724 prints it: M8x1.25 7.188. */
	static BigDecimal basicPitch(ThreadSpec spec) {
		return Decimals.round(spec.diameter() - PITCH_DIAMETER * spec.pitch(), 3);
	}

	private static BigDecimal micrometres(int value) {
		return BigDecimal.valueOf(value, 3);
	}

	private static Optional<BigDecimal> size(DataRow row, String name) {
		return Optional.of(new BigDecimal(row.get(name)));
	}

	private static boolean same(double a, double b) {
		return Math.abs(a - b) < 1e-4;
	}

	private static String key(double diameter, double pitch, String name) {
		return Decimals.plain(diameter, 4) + "x" + Decimals.plain(pitch, 4) + "-" + name;
	}
}
