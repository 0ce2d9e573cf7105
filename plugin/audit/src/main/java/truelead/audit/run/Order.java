package truelead.audit.run;

import java.util.ArrayDeque;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;
import truelead.audit.source.Source;

/**
 * Works on programs on all cores and hands out what comes of them one by one in the order given. Only so many programs are under way that
 * their sizes add up to {@link #UNDER_WAY}, so memory is bounded by the largest program and not by the folder.
 */
final class Order {

	/** Bytes of program text under way at once; a larger program goes alone. */
	static final long UNDER_WAY = 16L << 20;

	private Order() {
	}

	/** {@code work} runs on several threads, {@code taker} on the caller's alone. */
	static <R> void forEach(List<Source> sources, int cores, Function<Source, R> work, Consumer<R> taker) {
		if (sources.size() == 1 || cores == 1) {
			for (Source source : sources) {
				taker.accept(work.apply(source));
			}
			return;
		}
		ExecutorService workers = Executors.newFixedThreadPool(cores, task -> {
			Thread thread = new Thread(task, "truelead check");
			thread.setDaemon(true);
			return thread;
		});
		try {
			ArrayDeque<Pending<R>> pending = new ArrayDeque<>();
			long underWay = 0;
			for (Source source : sources) {
				long size = source.bytes() + 4096;
				while (!pending.isEmpty() && underWay + size > UNDER_WAY) {
					Pending<R> first = pending.poll();
					underWay -= first.size;
					taker.accept(first.result());
				}
				Callable<R> task = () -> work.apply(source);
				pending.add(new Pending<>(workers.submit(task), size));
				underWay += size;
			}
			while (!pending.isEmpty()) {
				taker.accept(pending.poll().result());
			}
		} finally {
			workers.shutdownNow();
		}
	}

	private record Pending<R>(Future<R> future, long size) {

		R result() {
			try {
				return future.get();
			} catch (InterruptedException stopped) {
				Thread.currentThread().interrupt();
				throw new IllegalStateException("interrupted");
			} catch (ExecutionException failed) {
				throw new IllegalStateException(failed.getCause());
			}
		}
	}
}
