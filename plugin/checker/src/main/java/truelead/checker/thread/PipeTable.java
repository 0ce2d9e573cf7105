package truelead.checker.thread;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Pipe threads: NPT, NPTF, NPSM and NPSC in inches, G, R, Rp and Rc in mm, with the basic sizes of their standards. */
final class PipeTable {
	/** Between R 2 and R 2-1/2, mm of diameter: the threads above have a wider tolerance (ISO 7-1). */
	private static final double LARGE = 60;

	private final List<PipeSize> sizes = new ArrayList<>();

	PipeTable() {
		for (DataRow r : DataFile.rows(PipeTable.class, "npt.csv")) {
			for (ThreadSystem system : List.of(ThreadSystem.NPT, ThreadSystem.NPTF)) {
				sizes.add(new PipeSize(system, r.get("size"), decimal(r, "D"), DataFile.number(r, "tpi"), decimal(r, "E1"),
						Optional.empty(),
						Optional.of(decimal(r, "E0")), Optional.of(decimal(r, "L1")), Optional.of(decimal(r, "L2")), Optional.empty(),
						Optional.empty(), system == ThreadSystem.NPT ? r.get("source")
								: "basic sizes of NPT, as ASME B1.20.3 has them (from memory)"));
			}
			straight(r);
		}
		for (DataRow r : DataFile.rows(PipeTable.class, "pipe-g.csv")) {
			sizes.add(new PipeSize(ThreadSystem.G, r.get("size"), decimal(r, "d"), DataFile.number(r, "tpi"), decimal(r, "d2"),
					Optional.of(decimal(r, "d1")), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(decimal(r, "TD2")),
					Optional.of(decimal(r, "TD1")), r.get("source")));
		}
		for (DataRow r : DataFile.rows(PipeTable.class, "pipe-r.csv")) {
			sizes.add(parallel(r));
			for (ThreadSystem system : List.of(ThreadSystem.RC, ThreadSystem.R)) {
				sizes.add(new PipeSize(system, r.get("size"), decimal(r, "d"), DataFile.number(r, "tpi"), decimal(r, "d2"),
						Optional.of(decimal(r, "d1")), Optional.empty(), Optional.of(decimal(r, "gaugeLength")),
						Optional.of(decimal(r, "usefulLength")), Optional.empty(), Optional.empty(), r.get("source")));
			}
		}
	}

	/**
	 * ISO 7-1: all diameters of Rp give or take a turn and a quarter of the taper, from 2 1/2 a turn and a half (from memory). Rp 1/4:
	 * 11.341 to 11.549.
	 */
	private static PipeSize parallel(DataRow r) {
		double turns = DataFile.number(r, "d") > LARGE ? 1.5 : 1.25;
		BigDecimal tolerance = Decimals.round(turns * DataFile.number(r, "P") / 16, 3);
		BigDecimal both = tolerance.add(tolerance);
		return new PipeSize(ThreadSystem.RP, r.get("size"), decimal(r, "d"), DataFile.number(r, "tpi"),
				decimal(r, "d2").subtract(tolerance), Optional.of(decimal(r, "d1").subtract(tolerance)), Optional.empty(),
				Optional.of(decimal(r, "gaugeLength")), Optional.of(decimal(r, "usefulLength")), Optional.of(both), Optional.of(both),
				"ISO 7-1 Table 1 (tolerances from memory)");
	}

	/**
	 * ASME B1.20.1: the straight threads have the pitch diameter of the taper one at the gauge plane, NPSM with the tolerance of Unified 2B
	 * over nine pitches (1/8-27: 0.3736 to 0.3783), NPSC give or take a turn and a half of the taper, 1.5 P / 16 (1/8-27: 0.3736, NPSC
	 * 0.3701 to 0.3771). The smallest minor diameter of NPSM lies 0.433 P below.
	 */
	private void straight(DataRow r) {
		BigDecimal pitch = decimal(r, "E1");
		double tpi = DataFile.number(r, "tpi");
		BigDecimal turns = Decimals.round(1.5 / 16 / tpi, 4);
		BigDecimal middle = pitch.setScale(4, RoundingMode.HALF_UP);
		sizes.add(new PipeSize(ThreadSystem.NPSM, r.get("size"), decimal(r, "D"), tpi, middle,
				Optional.of(Decimals.round(pitch.doubleValue() - 0.4330127 / tpi, 4)), Optional.empty(), Optional.empty(), Optional.empty(),
				Optional.of(mechanical(DataFile.number(r, "D"), 1 / tpi)), Optional.empty(),
				"ASME B1.20.1, by its formulas (from memory); largest minor diameter not in the table"));
		sizes.add(new PipeSize(ThreadSystem.NPSC, r.get("size"), decimal(r, "D"), tpi, middle.subtract(turns), Optional.empty(),
				Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(turns.add(turns)), Optional.empty(),
				"ASME B1.20.1, by its formulas (from memory)"));
	}

	private static BigDecimal mechanical(double d, double p) {
		return Decimals.round(1.3 * (0.0015 * Math.cbrt(d) + 0.0015 * Math.sqrt(9 * p) + 0.015 * Math.cbrt(p * p)), 4);
	}

	List<PipeSize> sizes() {
		return List.copyOf(sizes);
	}

	Optional<PipeSize> find(ThreadSystem system, String size) {
		return sizes.stream().filter(s -> s.system() == system && s.size().equals(size)).findFirst();
	}

	/** The sizes as limits; largest diameters where the standard of parallel threads gives them. */
	Optional<Limits> limits(ThreadSpec spec) {
		return find(spec.system(), spec.size()).filter(s -> s.tpi() == spec.tpi())
				.map(s -> new Limits("", spec.unit(), s.minor(), plus(s.minor(), s.minorTolerance()), Optional.of(s.pitchDiameter()),
						plus(Optional.of(s.pitchDiameter()), s.pitchTolerance()), Optional.of(s.major()),
						Origin.of(s.source()), s.source()));
	}

	private static Optional<BigDecimal> plus(Optional<BigDecimal> basic, Optional<BigDecimal> tolerance) {
		return basic.flatMap(b -> tolerance.map(b::add));
	}

	private static BigDecimal decimal(DataRow row, String name) {
		return new BigDecimal(row.get(name));
	}

	/**
	 * One size of pipe thread, lengths in the unit of its system.
	 *
	 * @param system         one of pipe threads
	 * @param size           as it is called: 1/4
	 * @param major          major diameter; for NPT the outside diameter of the pipe
	 * @param tpi            threads an inch
	 * @param pitchDiameter  at the gauge plane: E1 for NPT
	 * @param minor          at the gauge plane, where the standard gives it
	 * @param smallEnd       pitch diameter E0 at the small end, NPT
	 * @param gaugeLength    hand-tight length L1, or ISO 7-1's gauge length
	 * @param usefulLength   effective length L2, or ISO 7-1's useful length
	 * @param pitchTolerance of the internal pitch diameter, upwards
	 * @param minorTolerance of the internal minor diameter, upwards
	 * @param source         where the row comes from
	 */
	record PipeSize(ThreadSystem system, String size, BigDecimal major, double tpi, BigDecimal pitchDiameter, Optional<BigDecimal> minor,
			Optional<BigDecimal> smallEnd, Optional<BigDecimal> gaugeLength, Optional<BigDecimal> usefulLength,
			Optional<BigDecimal> pitchTolerance, Optional<BigDecimal> minorTolerance, String source) {

		/** The thread of this size. */
		ThreadSpec spec() {
			return ThreadSpec.pipe(system, size, major.doubleValue() * system.unit().mm(), tpi);
		}
	}
}
