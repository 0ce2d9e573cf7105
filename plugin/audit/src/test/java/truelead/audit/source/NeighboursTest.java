package truelead.audit.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import truelead.checker.program.ProgramFile;

class NeighboursTest {

	@TempDir
	Path folder;

	@Test
	void aProgramNumberIsFoundHoweverItsFileIsNamed() throws IOException {
		assertThat(find("O8001", "8001")).hasValue("O8001");
		assertThat(find("o8002.nc", "8002")).hasValue("o8002.nc");
		assertThat(find("0051.tap", "51")).hasValue("0051.tap");
		assertThat(find("O52.txt", "52")).isEmpty();
	}

	@Test
	void aNamedSubprogramIsFoundWithoutItsExtension() throws IOException {
		assertThat(find("Holes.ngc", "holes")).hasValue("Holes.ngc");
	}

	@Test
	void theExtensionOfTheCallerComesFirst() throws IOException {
		write("O7.cnc");
		write("O7.tap");
		assertThat(find("O7.nc", "7")).hasValue("O7.nc");
	}

	@Test
	void nothingOutsideTheFolderIsRead(@TempDir Path elsewhere) throws IOException {
		Files.writeString(elsewhere.resolve("O9.nc"), "M99\n");
		Files.createSymbolicLink(folder.resolve("O9.nc"), elsewhere.resolve("O9.nc"));
		Neighbours neighbours = new Neighbours(folder.resolve("main.nc"));
		assertThat(neighbours.find("9")).isEmpty();
		assertThat(neighbours.find("../" + elsewhere.getFileName() + "/O9")).isEmpty();
	}

	private Optional<String> find(String file, String called) throws IOException {
		write(file);
		return new Neighbours(folder.resolve("main.nc")).find(called).map(ProgramFile::name);
	}

	@Test
	void theFoldersMachineProfileIsAnOrdinaryFileInIt(@TempDir Path elsewhere) throws IOException {
		Neighbours neighbours = new Neighbours(folder.resolve("main.nc"));
		assertThat(neighbours.profile()).isEmpty();
		Path outside = Files.writeString(elsewhere.resolve("mill.properties"), "base = milling-inch\n");
		Files.createSymbolicLink(folder.resolve("truelead-machine.properties"), outside);
		assertThat(neighbours.profile()).isEmpty();
		Files.delete(folder.resolve("truelead-machine.properties"));
		Files.writeString(folder.resolve("truelead-machine.properties"), "base = turning\n");
		assertThat(neighbours.profile().orElseThrow().text().toString()).isEqualTo("base = turning\n");
	}

	@Test
	void theProfileOfTheNearestFolderAboveServesAProgramWhoseFolderHasNone() throws IOException {
		Files.writeString(folder.resolve("truelead-machine.properties"), "base = turning\n");
		Path deep = Files.createDirectories(folder.resolve("flange/second-side"));
		assertThat(new Neighbours(deep.resolve("main.nc")).profile().orElseThrow().text().toString()).isEqualTo("base = turning\n");
		Files.writeString(folder.resolve("flange/truelead-machine.properties"), "base = rs274\n");
		assertThat(new Neighbours(deep.resolve("main.nc")).profile().orElseThrow().text().toString()).isEqualTo("base = rs274\n");
	}

	private void write(String file) throws IOException {
		Files.writeString(folder.resolve(file), "M99\n");
	}
}
