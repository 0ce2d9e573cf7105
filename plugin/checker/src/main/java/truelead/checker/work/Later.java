package truelead.checker.work;

import java.util.function.Supplier;

/** A value that is worked out when it is first asked for. */
final class Later<T> implements Supplier<T> {

	private Supplier<T> maker;
	private T value;

	Later(Supplier<T> maker) {
		this.maker = maker;
	}

	/** A value that is known. */
	static <T> Later<T> known(T value) {
		return new Later<>(() -> value);
	}

	@Override
	public synchronized T get() {
		if (maker != null) {
			value = maker.get();
			maker = null;
		}
		return value;
	}
}
