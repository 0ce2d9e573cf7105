package truelead.checker.machine;

/** Takes the steps as the interpreter makes them, in order. */
@FunctionalInterface
public interface StepSink {

	/** One step. */
	void accept(Step step);

	/** Whether it takes {@link Step.Again} for motions that come again; without it they come one by one. */
	default boolean takesCopies() {
		return false;
	}
}
