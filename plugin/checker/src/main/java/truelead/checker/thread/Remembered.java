package truelead.checker.thread;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * A function whose last answers are kept: a program asks for the limits of one thread at ten thousand holes, an editor reads the same
 * comments at every key. All is forgotten when there are too many answers.
 *
 * @param <Q> what is asked, with equals and hashCode
 * @param <A> the answer, immutable
 */
public final class Remembered<Q, A> {

	private final Map<Q, A> answers = new ConcurrentHashMap<>();
	private final Function<Q, A> function;
	private final int most;

	/** Keeps at most about {@code most} answers. */
	public Remembered(int most, Function<Q, A> function) {
		this.most = most;
		this.function = function;
	}

	/** What the function says. */
	public A of(Q question) {
		A known = answers.get(question);
		if (known != null) {
			return known;
		}
		A answer = function.apply(question);
		if (answers.size() >= most) {
			answers.clear();
		}
		answers.put(question, answer);
		return answer;
	}
}
