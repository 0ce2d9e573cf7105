package truelead.checker.profile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import truelead.checker.program.FeedMode;

class MachineProfileTest {

	@Test
	void shippedProfilesSayEveryKey() {
		for (String name : MachineProfile.shipped()) {
			MachineProfile profile = MachineProfile.named(name);
			for (ProfileKey key : ProfileKey.values()) {
				assertThat(key == ProfileKey.BASE || profile.text(key.key()).isPresent()).as(name + " " + key).isTrue();
			}
		}
	}

	@Test
	void genericMillingKnowsItsCodes() {
		MachineProfile milling = MachineProfile.generic();
		assertThat(milling.gCode(840)).containsExactly(Meaning.TAP);
		assertThat(milling.gCode(740)).containsExactly(Meaning.TAP_LEFT);
		assertThat(milling.mCode(290)).containsExactly(Meaning.RIGID_TAP_ON);
		assertThat(milling.mCode(770)).isEmpty();
		assertThat(milling.number(ProfileKey.TAPPING_SPEED_LIMIT)).isEmpty();
		assertThat(milling.positionTolerance()).isEqualTo(0.02);
	}

	@Test
	void aFileBuildsOnItsBase() {
		ProfileReading read = MachineProfile.read("base = turning\nname = Lathe in bay 2\nM88 = rigid-tap-on\nspindle-torque = 60",
				"lathe.properties");
		assertThat(read.problems()).isEmpty();
		assertThat(read.profile().name()).isEqualTo("Lathe in bay 2");
		assertThat(read.profile().feedMode()).isEqualTo(FeedMode.PER_REVOLUTION);
		assertThat(read.profile().mCode(880)).containsExactly(Meaning.RIGID_TAP_ON);
		assertThat(read.profile().number(ProfileKey.SPINDLE_TORQUE)).hasValue(60);
	}

	@Test
	void badLinesAreSaidWithTheirLine() {
		ProfileReading read =
				MachineProfile.read("# my machine\nunit = furlong\nspeed-limit = 3\nG84 = tappen\nposition-tolerance = 0,02\nnonsense",
						"m.properties");
		assertThat(read.problems()).containsExactly(
				new ProfileProblem("m.properties", 1, "unit takes mm, inch, not 'furlong'"),
				new ProfileProblem("m.properties", 2, "'speed-limit' is neither a key of a machine profile nor a code such as G84 or M29"),
				new ProfileProblem("m.properties", 3, "'tappen' is no meaning of a code that is known here; G84 could be 'none'"),
				new ProfileProblem("m.properties", 4, "position-tolerance takes a number from 0 to 10, not '0,02'"),
				new ProfileProblem("m.properties", 5, "a line is written key = value, with # before a remark"));
	}

	@Test
	void anUnknownBaseIsSaid() {
		assertThat(MachineProfile.read("base = lathe", "m").problems()).hasSize(1);
	}

	@Test
	void theHolderGivesItsTravel() {
		assertThat(MachineProfile.generic().holderTravel()).isZero();
		assertThat(MachineProfile.generic().with("holder", "tension-compression").holderTravel()).isEqualTo(5);
	}

	@Test
	void theDocumentationListsEveryKey() throws IOException {
		String text = Files.readString(Path.of("../../DEVELOPERS.md"));
		for (ProfileKey key : ProfileKey.values()) {
			assertThat(text).contains("| `" + key.key() + "` | " + key.purpose() + " |");
		}
	}
}
