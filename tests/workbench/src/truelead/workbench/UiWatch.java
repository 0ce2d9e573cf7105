package truelead.workbench;

import java.util.Arrays;
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

	/** Our topmost method in that hold. */
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
				String seen = "";
				while (!answered.await(SAMPLE, TimeUnit.MILLISECONDS)) {
					StackTraceElement frame = Arrays.stream(screen.getStackTrace()).filter(UiWatch::isOurs).findFirst().orElse(null);
					if (frame != null) {
						ours++;
						seen = frame.getClassName().substring(frame.getClassName().lastIndexOf('.') + 1) + "." + frame.getMethodName();
					}
				}
				longest = Math.max(longest, (System.nanoTime() - start) / 1e6);
				if (ours * SAMPLE > longestOurs) {
					longestOurs = ours * SAMPLE;
					where = seen;
				}
				Thread.sleep(1);
			}
		} catch (InterruptedException ended) {
			Thread.currentThread().interrupt();
		}
	}

	private static boolean isOurs(StackTraceElement frame) {
		String name = frame.getClassName();
		return name.startsWith("truelead.") && !name.startsWith("truelead.workbench.");
	}

	@Override
	public void close() {
		closed = true;
		watcher.interrupt();
	}
}
