package truelead.forms;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The same program in another form says the same: rule and severity of each finding. Each form is tried on some of the programs that it can
 * rewrite, others for each form; {@code -Dforms.each=N} takes more of them, {@code -Dforms.programs=N} more of the fault bench,
 * {@code -Dforms.first=N} others of it.
 */
class FormsTest {

	/** Programs that each form is tried on. */
	private static final int EACH = Integer.getInteger("forms.each", 12);
	/** Programs that it must find to be tried on, and the part of the programs of its kind that it may refuse: none passes by refusing. */
	private static final int FEWEST = 7;
	private static final double REFUSED = 0.8;
	private static final List<Sample> SAMPLES = samples();

	private static List<Sample> samples() {
		List<Sample> samples = new ArrayList<>(Programs.ofPages());
		samples.addAll(Programs.ofFiles());
		long first = Long.getLong("forms.first", 1);
		for (long seed = first; seed < first + Integer.getInteger("forms.programs", 80); seed++) {
			samples.add(Programs.ofBench(seed));
		}
		return samples;
	}

	@TestFactory
	Stream<DynamicTest> whatIsFoundIsTheSameInEachForm() {
		return Forms.ALL.stream().map(form -> DynamicTest.dynamicTest(form.name(), () -> holds(form)));
	}

	private static void holds(Form form) {
		List<String> differences = new ArrayList<>();
		int rewritten = 0;
		int refused = 0;
		int seen = 0;
		int turn = Forms.ALL.indexOf(form) * 17;
		for (; seen < SAMPLES.size() && rewritten < EACH; seen++) {
			Sample sample = SAMPLES.get((seen + turn) % SAMPLES.size());
			Sample.Tried tried = sample.in(form);
			rewritten += tried.rewritten() ? 1 : 0;
			refused += tried.refused() ? 1 : 0;
			if (tried.differs()) {
				differences.add(sample.name() + ": no longer " + tried.onlyBefore() + ", but " + tried.onlyNow());
				keep(form, sample, tried);
			}
		}
		assertThat(differences).as("of %d programs in the form '%s'", rewritten, form.name()).isEmpty();
		assertThat(rewritten).as("programs written in the form '%s'", form.name()).isGreaterThanOrEqualTo(FEWEST);
		assertThat(refused).as("of %d programs, those that the form '%s' refuses", seen, form.name())
				.isLessThanOrEqualTo((int) (REFUSED * seen));
	}

	/** With {@code -Dforms.out=FOLDER}, the program as it was and in the form, to be looked at. */
	private static void keep(Form form, Sample sample, Sample.Tried tried) {
		String out = System.getProperty("forms.out", "");
		if (out.isEmpty()) {
			return;
		}
		try {
			Path folder = Files.createDirectories(Path.of(out, form.name().replace(' ', '-')));
			String name = sample.name().replace(':', '-');
			Files.writeString(folder.resolve(name + ".before.nc"), String.join("\n", sample.program().lines()), StandardCharsets.UTF_8);
			Files.writeString(folder.resolve(name + ".now.nc"), tried.text(), StandardCharsets.UTF_8);
		} catch (IOException unwritable) {
			throw new UncheckedIOException(unwritable);
		}
	}
}
