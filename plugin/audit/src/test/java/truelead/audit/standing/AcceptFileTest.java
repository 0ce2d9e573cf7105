package truelead.audit.standing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import truelead.audit.result.Acceptance;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.audit.run.Sample;
import truelead.audit.terminal.Complaint;

class AcceptFileTest {

	private static final String HEAD = "fingerprint,rule,program,reason,person,date\n";

	@TempDir
	Path folder;

	private final Sample bracket = Sample.of("bracket.nc", Sample.BRACKET);
	private final Audited.Checked checked = bracket.with(bracket.feedOffPitch());
	private final String mark = checked.findings().get(0).fingerprint();

	@Test
	void anEntryAcceptsItsFinding() throws IOException {
		AcceptFile accepted = file(HEAD + mark + ",feed-off-pitch,bracket.nc,\"floating holder, 5 mm\",first shift,2026-11-25\n");
		Judged finding = accepted.judge(checked).findings().get(0);
		assertThat(finding.acceptance()).contains(new Acceptance(false, "floating holder, 5 mm", "first shift", "2026-11-25"));
		assertThat(finding.open()).isFalse();
		assertThat(accepted.remarks()).isEmpty();
	}

	@Test
	void theEditorsFindingsAreAcceptedTheSameWay() throws IOException {
		AcceptFile accepted = file(HEAD + mark + ",feed-off-pitch,bracket.nc,floating holder,,\n");
		assertThat(accepted.accept(checked.file(), "shop/bracket.nc", checked.result().findings()).get(0).accepted())
				.contains("floating holder");
		AcceptFile other = file(HEAD + mark + ",feed-off-pitch,flange.nc,floating holder,,\n");
		assertThat(other.accept(checked.file(), "shop/bracket.nc", checked.result().findings()).get(0).accepted()).isEmpty();
	}

	@Test
	void anEntryForAnotherProgramDoesNot() throws IOException {
		AcceptFile accepted = file(HEAD + mark + ",feed-off-pitch,flange.nc,r,,\n");
		assertThat(accepted.judge(checked).findings().get(0).open()).isTrue();
		assertThat(accepted.remarks()).isEmpty();
	}

	@Test
	void anEntryWhoseFindingIsGoneIsStale() throws IOException {
		AcceptFile accepted = file(HEAD + "0000,hole-missing,bracket.nc,cast hole,,\n");
		accepted.judge(checked);
		assertThat(accepted.remarks()).singleElement().asString()
				.endsWith("line 2 accepts what is no longer found: hole-missing in bracket.nc (cast hole)");
	}

	@Test
	void entriesAreTakenOutAndAllOtherLinesStayAsTheyAre() throws IOException {
		Path path = folder.resolve("accepted.csv");
		String first = "0000,hole-missing,flange.nc,\"cast,\r\nnot drilled\",,\r\n";
		String second = "1111,feed-off-pitch,flange.nc,gr\u00f6\u00dfer,,\r\n";
		String third = "2222,,,any, first shift ,\r\n";
		Files.writeString(path, HEAD + first + second + third);
		List<AcceptFile.Entry> entries = AcceptFile.read(path.toString()).entries();
		assertThat(AcceptFile.remove(path, entries.subList(1, 2))).isTrue();
		assertThat(path).hasContent(HEAD + first + third);
		assertThat(AcceptFile.remove(path, entries.subList(2, 3))).as("the file has changed since").isFalse();
		assertThat(path).hasContent(HEAD + first + third);
	}

	@Test
	void aLineIsAddedToAFileThatMayNotBeThereYet() throws IOException {
		Path path = folder.resolve("accepted.csv");
		AcceptFile.add(path, "0000", "hole-missing", "flange.nc", new Acceptance(false, "cast", "", ""));
		Files.writeString(path, Files.readString(path).stripTrailing());
		AcceptFile.add(path, mark, "feed-off-pitch", "bracket.nc", new Acceptance(false, "floating \"S\" holder, 5 mm", "first shift",
				"2026-11-25"));
		assertThat(Files.readAllLines(path)).startsWith("fingerprint,rule,program,reason,person,date",
				"0000,hole-missing,flange.nc,cast,,");
		assertThat(AcceptFile.read(path.toString()).judge(checked).findings().get(0).acceptance())
				.contains(new Acceptance(false, "floating \"S\" holder, 5 mm", "first shift", "2026-11-25"));
	}

	@Test
	void aReasonIsAskedFor() {
		assertThatThrownBy(() -> file(HEAD + mark + ",feed-off-pitch,bracket.nc,,someone,\n")).isInstanceOf(Complaint.class)
				.hasMessageEndingWith("line 2 has no reason");
	}

	@Test
	void anotherTableIsRefused() throws IOException {
		assertThatThrownBy(() -> file("a,b\n1,2\n")).isInstanceOf(Complaint.class)
				.hasMessageContaining("the first line must be fingerprint,rule,");
		assertThatThrownBy(() -> file("")).isInstanceOf(Complaint.class);
		assertThatThrownBy(() -> file(HEAD + "\"open quote")).isInstanceOf(Complaint.class);
		assertThatThrownBy(() -> AcceptFile.read(folder.resolve("gone.csv").toString())).isInstanceOf(Complaint.class)
				.hasMessageEndingWith("no such file or folder");
		Path picture = Files.write(folder.resolve("photo.csv"), new byte[] {(byte) 0xFF, (byte) 0xD8});
		assertThatThrownBy(() -> AcceptFile.read(picture.toString())).isInstanceOf(Complaint.class)
				.hasMessageEndingWith("is no accept file (it is no UTF-8 text)");
	}

	private AcceptFile file(String text) throws IOException {
		return AcceptFile.read(Files.writeString(folder.resolve("accept.csv"), text).toString());
	}
}
