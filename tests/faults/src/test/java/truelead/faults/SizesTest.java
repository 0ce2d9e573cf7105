package truelead.faults;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The bench's own table against the standards' formulas. */
class SizesTest {

	/** ISO 965-1, grade 6: TD1 = 433 P - 190 P^1.22 up to P 0.8, 230 P^0.7 above, micrometres. */
	private static double minorMax(double diameter, double pitch) {
		double tolerance = pitch <= 0.8 ? 433 * pitch - 190 * Math.pow(pitch, 1.22) : 230 * Math.pow(pitch, 0.7);
		return diameter - 1.0825318 * pitch + tolerance / 1000;
	}

	@Test
	void minorDiameterOfM8x125IsAsPublished() {
		// ISO 965-2: M8, 6H, D1 6.647 to 6.912
		Size m8 = named("M8X1.25");
		assertThat(m8.minor()).isCloseTo(6.647, within(0.0005));
		assertThat(minorMax(8, 1.25)).isCloseTo(6.912, within(0.005)); // the table rounds the tolerance to R40
	}

	@Test
	void metricDrillsLeaveAMinorDiameterInClass6H() {
		for (Size size : Sizes.ALL) {
			if (size.series().metric()) {
				assertThat(size.drill()).as(size.name()).isBetween(size.minor(), minorMax(size.diameter(), size.pitch()));
			}
		}
	}

	@Test
	void inchDrillsLeaveAMinorDiameterInClass2B() {
		for (Size size : Sizes.ALL) {
			if (size.series().unified() && size.diameter() >= 6.35) {
				// ASME B1.1: TD1 of 1B and 2B from a quarter inch up, 0.25 P - 0.40 P^2 inch
				double p = size.pitch() / 25.4;
				double max = size.minor() / 25.4 + 0.25 * p - 0.40 * p * p;
				assertThat(size.drill() / 25.4).as(size.name()).isBetween(size.minor() / 25.4, Math.ceil(max * 1000) / 1000);
			}
		}
	}

	@Test
	void holesForFormingMakeSixtyToSeventyFivePercent() {
		for (Size size : Sizes.ALL) {
			if (size.formed()) {
				// Machinery's Handbook: hole = D - 0.0068 x percent x P
				double percent = (size.diameter() - size.formHole()) / (0.0068 * size.pitch());
				assertThat(percent).as(size.name()).isBetween(58.0, 72.0);
			}
		}
	}

	@Test
	void quarterInchPipeThreadIsAsPublished() {
		// ASME B1.20.1: 1/4-18 NPT, E1 0.49163 in; over the crests 0.8 P more
		assertThat(named("1/4-18").diameter() / 25.4).isCloseTo(0.53607, within(0.0001));
	}

	private static Size named(String name) {
		return Sizes.ALL.stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
	}
}
