package truelead.forms;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What one form leaves the same and another does too, both do. */
final class OneAfterTheOther implements Form {

	private final Form first;
	private final Form second;

	OneAfterTheOther(Form first, Form second) {
		this.first = first;
		this.second = second;
	}

	@Override
	public String name() {
		return first.name() + ", " + second.name();
	}

	@Override
	public Optional<String> declines(Program program) {
		return first.declines(program).or(() -> second.declines(between(program)));
	}

	@Override
	public List<String> rewrite(Program program) {
		return second.rewrite(between(program));
	}

	@Override
	public Set<String> judgedByIt() {
		Set<String> rules = new TreeSet<>(first.judgedByIt());
		rules.addAll(second.judgedByIt());
		return rules;
	}

	@Override
	public Set<String> mayFallSilent() {
		Set<String> rules = new TreeSet<>(first.mayFallSilent());
		rules.addAll(second.mayFallSilent());
		return rules;
	}

	@Override
	public boolean multiplies() {
		return first.multiplies() || second.multiplies();
	}

	private Program between(Program program) {
		return program.with(String.join("\n", first.rewrite(program)));
	}
}
