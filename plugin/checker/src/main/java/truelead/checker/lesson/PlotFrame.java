package truelead.checker.lesson;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the points of a plot stand on a sheet: range of the axes from the tracks, ticks at round numbers. Sheet units, pixels of the
 * picture, run right and down.
 *
 * @param left   sheet position of {@code leastAcross}, pixels
 * @param top    sheet position of {@code mostUp}, pixels
 * @param width  of the field of curves, pixels
 * @param height of the field of curves, pixels
 * @param leastAcross the axis across begins here, in its own unit
 * @param mostAcross  and ends here, in its own unit
 * @param leastUp     the axis up begins here, in its own unit
 * @param mostUp      and ends here, in its own unit
 */
public record PlotFrame(double left, double top, double width, double height, double leastAcross, double mostAcross, double leastUp,
		double mostUp) {

	/** Room beside a curve, a share of its size (a choice of ours). */
	private static final double MARGIN = 0.06;
	/** Numbers along an axis, about (a choice of ours). */
	private static final int TICKS = 6;

	/** The frame of a plot in a field of a sheet, whose place and size are given in pixels. */
	public static PlotFrame of(Plot plot, Outcome outcome, double left, double top, double width, double height) {
		double[] range = {Double.MAX_VALUE, -Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE};
		for (Plot.Curve curve : plot.curves()) {
			Track track = outcome.tracks().get(curve.name());
			for (int i = 0; i < track.size(); i++) {
				range[0] = Math.min(range[0], track.across(i));
				range[1] = Math.max(range[1], track.across(i));
				range[2] = Math.min(range[2], track.up(i));
				range[3] = Math.max(range[3], track.up(i));
			}
		}
		widen(range, 2, plot.trueToScale() || range[2] < 0 ? MARGIN : 0);
		if (plot.trueToScale()) {
			widen(range, 0, MARGIN);
			double scale = Math.max((range[1] - range[0]) / width, (range[3] - range[2]) / height);
			stretch(range, 0, scale * width);
			stretch(range, 2, scale * height);
		}
		return new PlotFrame(left, top, width, height, range[0], range[1], range[2], range[3]);
	}

	private static void widen(double[] range, int at, double below) {
		double size = range[at + 1] - range[at];
		if (size < 1e-9) {
			size = Math.max(1e-3, Math.abs(range[at]));
			range[at + 1] = range[at] + size;
		}
		range[at] -= below * size;
		range[at + 1] += MARGIN * size;
	}

	private static void stretch(double[] range, int at, double size) {
		double middle = (range[at] + range[at + 1]) / 2;
		range[at] = middle - size / 2;
		range[at + 1] = middle + size / 2;
	}

	/** Sheet position, pixels, of a value across in the unit of that axis. */
	public double x(double across) {
		return left + (across - leastAcross) / (mostAcross - leastAcross) * width;
	}

	/** Sheet position, pixels, of a value up in the unit of that axis. */
	public double y(double up) {
		return top + (mostUp - up) / (mostUp - leastUp) * height;
	}

	/** Round numbers across, in the unit of that axis. */
	public List<Double> ticksAcross() {
		return ticks(leastAcross, mostAcross);
	}

	/** Round numbers up, in the unit of that axis. */
	public List<Double> ticksUp() {
		return ticks(leastUp, mostUp);
	}

	/** Round numbers in a range: steps of 1, 2 or 5 times a power of ten, some {@value #TICKS} of them. */
	private static List<Double> ticks(double least, double most) {
		double step = step(least, most);
		List<Double> ticks = new ArrayList<>();
		for (double number = Math.ceil(least / step - 1e-9); number * step <= most + 1e-9 * step; number++) {
			ticks.add(number * step);
		}
		return ticks;
	}

	private static double step(double least, double most) {
		double rough = (most - least) / TICKS;
		double power = Math.pow(10, Math.floor(Math.log10(rough)));
		return power * (rough / power <= 1 ? 1 : rough / power <= 2 ? 2 : rough / power <= 5 ? 5 : 10);
	}

	/** A tick's number with as many decimals as its axis needs. */
	public static String said(double tick, List<Double> ticks) {
		double step = ticks.size() > 1 ? ticks.get(1) - ticks.get(0) : 1;
		return Reading.fixed(tick, (int) Math.max(0, Math.min(6, Math.ceil(-Math.log10(step) - 1e-9))));
	}
}
