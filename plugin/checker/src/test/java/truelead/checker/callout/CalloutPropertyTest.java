package truelead.checker.callout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.Hand;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;

/** Every thread of the tables, printed in every spelling that people use, reads back as itself; and no text breaks the reader. */
class CalloutPropertyTest {
	private static final List<ThreadSpec> ALL = ThreadTable.standard().all();
	private static final List<Function<ThreadSpec, String>> SPELLINGS = List.of(ThreadSpec::designation,
			spec -> spec.designation().toUpperCase(Locale.ROOT), spec -> spec.designation().replace("x", " X "),
			spec -> spec.designation().replace("-", " - "), spec -> spec.designation().replace(" ", ""),
			CalloutPropertyTest::decimals, CalloutPropertyTest::commas, CalloutPropertyTest::dashes, CalloutPropertyTest::wholeAndFraction,
			CalloutPropertyTest::number);

	@Provide
	Arbitrary<ThreadSpec> threads() {
		return Combinators.combine(Arbitraries.of(ALL), Arbitraries.integers().between(0, 20), Arbitraries.of(Hand.values()))
				.as((spec, which, hand) -> {
					List<String> classes = ThreadTable.standard().classes(spec);
					boolean none = which >= classes.size() || classes.get(which).isEmpty();
					return none ? spec.withHand(hand) : spec.withClass(classes.get(which)).withHand(hand);
				});
	}

	@Provide
	Arbitrary<Function<ThreadSpec, String>> spellings() {
		return Arbitraries.of(SPELLINGS);
	}

	@Property(tries = 2000)
	void readsBackAsItself(@ForAll("threads") ThreadSpec spec, @ForAll("spellings") Function<ThreadSpec, String> spelling) {
		String text = spelling.apply(spec);

		assertThat(CalloutReader.readExactly(text).map(c -> c.spec().designation())).as(text).contains(spec.designation());
	}

	@Property(tries = 2000)
	void readsBackFromATappingComment(@ForAll("threads") ThreadSpec spec, @ForAll("spellings") Function<ThreadSpec, String> spelling) {
		String text = "TAP " + spelling.apply(spec);

		assertThat(CalloutReader.read(text)).as(text).extracting(c -> c.spec().designation()).containsExactly(spec.designation());
	}

	@Property(tries = 500)
	void coarsePitchMayBeLeftOut(@ForAll("threads") ThreadSpec spec) {
		if (spec.system() != ThreadSystem.METRIC
				|| !ThreadTable.standard().coarsePitch(spec.diameter()).equals(java.util.OptionalDouble.of(spec.pitch()))) {
			return;
		}
		Callout callout = CalloutReader.readExactly("M" + spec.size()).orElseThrow();

		assertThat(callout.spec()).isEqualTo(spec.withoutClass().withHand(Hand.RIGHT));
		assertThat(callout.assumed()).singleElement().asString().startsWith("coarse pitch");
	}

	@Property(tries = 2000)
	void anyTextIsRead(@ForAll String text) {
		CommentReading reading = CalloutReader.readComment(text);

		assertThat(reading.callouts()).allSatisfy(c -> assertThat(text.substring(c.start(), c.end())).isNotBlank());
	}

	@Provide
	Arbitrary<String> shopText() {
		return Arbitraries.of("M", "8", "X", "1.25", "-", "6H", "TAP", "DRILL", "FOR", "#", "10", "32", "1", "/", "4", "20", "UNC", "2B",
				" ", " ", "LH", "(", ")", "DEEP", "Ø", "\"", "G", "NPT", ".", "THRU", "P", "№").list().ofMaxSize(24)
				.map(parts -> String.join("", parts));
	}

	@Property(tries = 1500)
	void anyMixtureOfShopWordsIsRead(@ForAll("shopText") String text) {
		CommentReading reading = CalloutReader.readComment(text);

		assertThat(reading.callouts()).allSatisfy(c -> assertThat(c.spec().pitch()).isPositive());
	}

	private static boolean inchBySize(ThreadSpec spec) {
		return spec.system() == ThreadSystem.UNIFIED || spec.system() == ThreadSystem.UNJ;
	}

	private static String tail(ThreadSpec spec) {
		return spec.designation().substring(spec.size().length());
	}

	/** .2500-20 UNC. */
	private static String decimals(ThreadSpec spec) {
		return inchBySize(spec) ? String.format(Locale.ROOT, "%.4f", spec.diameter() / LengthUnit.INCH.mm()).replaceFirst("^0", "")
				+ tail(spec) : spec.designation();
	}

	/** M8x1,25. */
	private static String commas(ThreadSpec spec) {
		return spec.system().metric() ? spec.designation().replace('.', ',') : spec.designation();
	}

	/** M14-1.5. */
	private static String dashes(ThreadSpec spec) {
		return spec.system().metric() ? spec.designation().replace('x', '-') : spec.designation();
	}

	/** 1 1/8-7. */
	private static String wholeAndFraction(ThreadSpec spec) {
		return spec.size().contains("-") ? spec.designation().replaceFirst("-", " ") : spec.designation();
	}

	/** NO. 10-32, 10-32. */
	private static String number(ThreadSpec spec) {
		return spec.designation().replace("#", spec.pitch() < 0.6 ? "" : "NO. ");
	}
}
