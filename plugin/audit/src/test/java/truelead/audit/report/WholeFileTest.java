package truelead.audit.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {

	@TempDir
	Path folder;

	@Test
	void isNotThereBeforeItIsFinished() throws IOException {
		Path report = folder.resolve("new/report.html");
		try (WholeFile file = WholeFile.at(report)) {
			file.writer().write("half");
			assertThat(report).doesNotExist();
			file.writer().write(" and whole \u00fc");
			file.finish();
		}
		assertThat(Files.readString(report)).isEqualTo("half and whole \u00fc");
	}

	@Test
	void anEarlierReportStaysWhereTheNewOneIsGivenUp() throws IOException {
		Path report = Files.writeString(folder.resolve("report.html"), "earlier");
		try (WholeFile file = WholeFile.at(report)) {
			file.writer().write("half");
		}
		assertThat(Files.readString(report)).isEqualTo("earlier");
		try (Stream<Path> left = Files.list(folder)) {
			assertThat(left).containsExactly(report);
		}
	}

	@Test
	void aFolderIsNoFile() {
		assertThatThrownBy(() -> WholeFile.at(folder)).isInstanceOf(IOException.class).hasMessage("is a folder");
	}
}
