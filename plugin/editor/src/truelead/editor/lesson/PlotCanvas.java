package truelead.editor.lesson;

import java.util.Arrays;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Path;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.Transform;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import truelead.checker.lesson.Outcome;
import truelead.checker.lesson.Plot;
import truelead.checker.lesson.PlotFrame;
import truelead.checker.lesson.Track;

/** Draws one plot of a lesson in the view's own colours, curves told apart by their dashes. */
final class PlotCanvas extends Canvas {

	private static final int GAP = 6;
	private static final int SAMPLE = 40;
	private final Plot plot;
	private Outcome outcome;

	PlotCanvas(Composite parent, Plot plot, Outcome outcome) {
		super(parent, SWT.DOUBLE_BUFFERED);
		this.plot = plot;
		this.outcome = outcome;
		addPaintListener(event -> paint(event.gc));
		addListener(SWT.Resize, event -> redraw());
		getAccessible().addAccessibleListener(new AccessibleAdapter() {
			@Override
			public void getName(AccessibleEvent event) {
				event.result = plot.title() + ": " + plot.up() + " over " + plot.across();
			}
		});
	}

	/** Shows another outcome. */
	void show(Outcome changed) {
		outcome = changed;
		redraw();
	}

	@Override
	public Point computeSize(int width, int height, boolean changed) {
		int wide = width == SWT.DEFAULT ? 240 : width;
		return new Point(wide, height == SWT.DEFAULT ? (plot.trueToScale() ? 380 : 280) : height);
	}

	private void paint(GC gc) {
		gc.setAntialias(SWT.ON);
		gc.setForeground(getForeground());
		int line = gc.getFontMetrics().getHeight();
		Rectangle area = getClientArea();
		int left = 4 * line;
		int bottom = area.height - line * (plot.curves().size() + 2) - 3 * GAP;
		gc.drawText(plot.title(), GAP, GAP / 2, true);
		PlotFrame frame = PlotFrame.of(plot, outcome, left, line + 2.0 * GAP, Math.max(40, area.width - left - 2 * GAP),
				Math.max(40, bottom - line - 2 * GAP));
		axes(gc, frame, line);
		for (Plot.Curve curve : plot.curves()) {
			curve(gc, frame, outcome.tracks().get(curve.name()), curve.dash());
		}
		int y = bottom + 2 * line + 2 * GAP;
		for (Plot.Curve curve : plot.curves()) {
			dash(gc, curve.dash());
			gc.drawLine(left, y + line / 2, left + SAMPLE, y + line / 2);
			plain(gc);
			gc.drawText(curve.label(), left + SAMPLE + GAP, y, true);
			y += line;
		}
	}

	private void axes(GC gc, PlotFrame frame, int line) {
		plain(gc);
		int left = (int) frame.left();
		int right = (int) (frame.left() + frame.width());
		int top = (int) frame.top();
		int bottom = (int) (frame.top() + frame.height());
		gc.drawLine(left, top, left, bottom);
		gc.drawLine(left, bottom, right, bottom);
		List<Double> across = frame.ticksAcross();
		for (double tick : across) {
			int x = (int) Math.round(frame.x(tick));
			gc.drawLine(x, bottom, x, bottom + 4);
			String words = PlotFrame.said(tick, across);
			gc.drawText(words, x - gc.textExtent(words).x / 2, bottom + 5, true);
		}
		List<Double> up = frame.ticksUp();
		for (double tick : up) {
			int y = (int) Math.round(frame.y(tick));
			gc.drawLine(left - 4, y, left, y);
			String words = PlotFrame.said(tick, up);
			gc.drawText(words, left - 6 - gc.textExtent(words).x, y - line / 2, true);
			gc.setAlpha(50);
			gc.drawLine(left, y, right, y);
			gc.setAlpha(255);
		}
		gc.drawText(plot.across(), (left + right - gc.textExtent(plot.across()).x) / 2, bottom + line + 5, true);
		Transform turned = new Transform(gc.getDevice());
		turned.translate(GAP / 2f, (top + bottom + gc.textExtent(plot.up()).x) / 2f);
		turned.rotate(-90);
		gc.setTransform(turned);
		gc.drawText(plot.up(), 0, 0, true);
		gc.setTransform(null);
		turned.dispose();
	}

	private static void curve(GC gc, PlotFrame frame, Track track, Plot.Dash dash) {
		Path path = new Path(gc.getDevice());
		for (int i = 0; i < track.size(); i++) {
			float x = (float) frame.x(track.across(i));
			float y = (float) frame.y(track.up(i));
			if (i == 0) {
				path.moveTo(x, y);
			} else {
				path.lineTo(x, y);
			}
		}
		dash(gc, dash);
		gc.drawPath(path);
		path.dispose();
		plain(gc);
	}

	private static void dash(GC gc, Plot.Dash dash) {
		gc.setLineWidth(2);
		if (dash.pattern().isEmpty()) {
			gc.setLineStyle(SWT.LINE_SOLID);
		} else {
			gc.setLineDash(Arrays.stream(dash.pattern().split(" ")).mapToInt(part -> (int) Math.ceil(Double.parseDouble(part))).toArray());
		}
	}

	private static void plain(GC gc) {
		gc.setLineStyle(SWT.LINE_SOLID);
		gc.setLineWidth(1);
	}
}
