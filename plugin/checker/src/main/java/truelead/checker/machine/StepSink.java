package truelead.checker.machine;

/** Takes the steps as the interpreter makes them, in order. */
@FunctionalInterface
public interface StepSink {

	/** One step. */
	void accept(Step step);
}
