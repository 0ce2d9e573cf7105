package truelead.checker.job;

/** What is known of a job from outside the program: tool list, stock, settings of the project. A stub until the job room lands. */
public final class Job {

	/** Nothing is known from outside. */
	public static final Job EMPTY = new Job();
}
