package truelead.audit.terminal;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** A mistake in the command line in words that a person at a machine uses, not those of the reader of options. */
public final class WrongUse {

	private WrongUse() {
	}

	/** What is wrong, one sentence. */
	public static String sentence(ParameterException fault) {
		if (fault instanceof UnmatchedArgumentException unmatched && !unmatched.getUnmatched().isEmpty()) {
			String first = unmatched.getUnmatched().get(0);
			return first.startsWith("-") ? "no option \"" + first + "\"" : "\"" + first + "\" is one name too many";
		}
		if (fault instanceof OverwrittenOptionException twice && twice.getOverwritten() instanceof OptionSpec option) {
			return option.longestName() + " is given twice";
		}
		Optional<String> unknown = fault.getCommandLine().getUnmatchedArguments().stream()
				.filter(argument -> argument.startsWith("-")).findFirst();
		if (unknown.isPresent()) {
			return "no option \"" + unknown.get() + "\"";
		}
		if (fault instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
			ArgSpec first = missing.getMissing().get(0);
			return first instanceof OptionSpec option ? option.longestName() + " needs a value: " + first.paramLabel()
					: first.paramLabel() + " is missing";
		}
		if (fault.getArgSpec() instanceof OptionSpec option && fault.getValue() != null) {
			return option.longestName() + " takes " + kind(option) + ", not \"" + fault.getValue() + "\"";
		}
		return fault.getMessage();
	}

	private static String kind(OptionSpec option) {
		Class<?> type = option.auxiliaryTypes()[0];
		if (type.isEnum()) {
			return Arrays.stream(type.getEnumConstants()).map(one -> ((Enum<?>) one).name().toLowerCase(Locale.ROOT))
					.collect(Collectors.joining(", "));
		}
		return type == int.class || type == Integer.class ? "a whole number" : type == double.class || type == Double.class ? "a number"
				: option.paramLabel();
	}
}
