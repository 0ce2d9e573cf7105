package truelead.checker.rule;

/** A rule that is told its name. */
public abstract class NamedRule implements Rule {

	private final String name;

	/** @param name as {@link Rule#name()} */
	protected NamedRule(String name) {
		this.name = name;
	}

	@Override
	public final String name() {
		return name;
	}
}
