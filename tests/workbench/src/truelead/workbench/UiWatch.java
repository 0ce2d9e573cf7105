package truelead.workbench;

import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.eclipse.swt.widgets.Display;

/** Watches how long the screen's thread does not answer, and whether our code is what it is at. */
final class UiWatch implements AutoCloseable {

	private static final int SAMPLE = 5;

	private final Display display = Display.getCurrent();
	private final Thread screen = Thread.currentThread();
	private final Thread watcher = new Thread(this::watch, "screen watch");
	private volatile boolean closed;
	private volatile double longest;
	private volatile double longestOurs;
	private volatile String where = "";

	UiWatch() {
		watcher.setDaemon(true);
		watcher.start();
	}

	/** Longest time without an answer, ms. */
	double longest() {
		return longest;
	}

	/** Longest time, ms, of one such hold that our code was seen at work. */
	double longestOurs() {
		return longestOurs;
	}

	/** Our topmost method in that hold, and what it called. */
	String where() {
		return where;
	}

	private void watch() {
		try {
			while (!closed) {
				CountDownLatch answered = new CountDownLatch(1);
				long start = System.nanoTime();
				display.asyncExec(answered::countDown);
				int ours = 0;
				Map<String, Integer> seen = new TreeMap<>();
				while (!answered.await(SAMPLE, TimeUnit.MILLISECONDS)) {
					StackTraceElement[] frames = screen.getStackTrace();
					int frame = ourWork(frames);
					if (frame >= 0) {
						ours++;
						seen.merge(said(frames, frame), 1, Integer::sum);
					}
				}
				longest = Math.max(longest, (System.nanoTime() - start) / 1e6);
				if (ours * SAMPLE > longestOurs) {
					longestOurs = ours * SAMPLE;
					where = seen.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey).orElse("");
				}
				Thread.sleep(1);
			}
		} catch (InterruptedException ended) {
			Thread.currentThread().interrupt();
		}
	}

	/** Our topmost method at work; -1 where none is, or where all it does is to let the platform's method that it overrides do its work. */
	private static int ourWork(StackTraceElement[] frames) {
		for (int i = 0; i < frames.length; i++) {
			if (isOurs(frames[i])) {
				return i > 0 && frames[i - 1].getMethodName().equals(frames[i].getMethodName()) ? -1 : i;
			}
		}
		return -1;
	}

	/** Our method, and what of the platform it calls. */
	private static String said(StackTraceElement[] frames, int ours) {
		return name(frames[ours]) + (ours > 0 ? " in " + name(frames[ours - 1]) : "");
	}

	private static String name(StackTraceElement frame) {
		return frame.getClassName().substring(frame.getClassName().lastIndexOf('.') + 1) + "." + frame.getMethodName() + ":"
				+ frame.getLineNumber();
	}

	private static boolean isOurs(StackTraceElement frame) {
		String name = frame.getClassName();
		return name.startsWith("truelead.") && !name.startsWith("truelead.workbench.");
	}

	/** Begins anew. */
	void forget() {
		longest = 0;
		longestOurs = 0;
		where = "";
	}

	@Override
	public void close() {
		closed = true;
		watcher.interrupt();
	}
}
