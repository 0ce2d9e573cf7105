package truelead.audit.standing;

import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import truelead.audit.result.Audited;
import truelead.audit.result.Gone;
import truelead.audit.result.Judged;
import truelead.audit.sarif.RelativeUri;
import truelead.audit.source.Paths;
import truelead.audit.source.ProgramBytes;
import truelead.audit.source.Source;
import truelead.audit.terminal.Complaint;

/**
 * An earlier SARIF log of ours, against which only what is new counts. A program is found in it by its path; where paths differ, by its
 * name and content, then by its content, then by its name alone if only one program of the log bears it.
 */
public final class Baseline implements Standing {

	private final List<BaselineProgram> programs;
	private final Set<String> claimed = new HashSet<>();
	private final Set<String> current = new HashSet<>();
	private final String shown;

	private Baseline(String shown, List<BaselineProgram> programs, List<Source> sources) {
		this.shown = shown;
		this.programs = programs;
		sources.forEach(source -> current.add(RelativeUri.of(source.shown())));
	}

	/** Reads the log that was named, for a run over these programs; ends the command with a complaint where it is no log of ours. */
	public static Baseline read(String typed, List<Source> sources) {
		Path path = Paths.of(typed);
		try (Reader reader = Files.newBufferedReader(path, StandardCharsets.UTF_8)) {
			return new Baseline(typed, BaselineProgram.all(JsonParser.parseReader(reader)), sources);
		} catch (FileSystemException unreadable) {
			throw new Complaint(typed + ": " + ProgramBytes.why(unreadable));
		} catch (IOException | JsonParseException | IllegalStateException | UnsupportedOperationException | ClassCastException
				| NumberFormatException unreadable) {
			throw new Complaint(typed + ": " + "is no SARIF log that Truelead wrote");
		} catch (IllegalArgumentException otherwise) {
			throw new Complaint(typed + ": " + otherwise.getMessage());
		}
	}

	@Override
	public Audited.Checked judge(Audited.Checked checked) {
		Optional<BaselineProgram> before = find(checked);
		before.ifPresent(program -> claimed.add(program.uri()));
		Map<String, List<Gone>> open = new HashMap<>();
		before.ifPresent(program -> program.findings()
				.forEach(gone -> open.computeIfAbsent(gone.fingerprint(), any -> new ArrayList<>()).add(gone)));
		List<Judged> judged = new ArrayList<>();
		Set<Gone> met = new HashSet<>();
		for (Judged finding : checked.findings()) {
			List<Gone> same = open.getOrDefault(finding.fingerprint(), List.of());
			met.addAll(same);
			judged.add(same.isEmpty() ? finding : finding.knownAlready());
		}
		List<Gone> gone = before.map(program -> program.findings().stream().filter(one -> !met.contains(one)).toList()).orElse(List.of());
		return checked.with(judged, gone);
	}

	private Optional<BaselineProgram> find(Audited.Checked checked) {
		String uri = RelativeUri.of(checked.source().shown());
		String name = checked.file().name();
		return first(program -> program.uri().equals(uri))
				.or(() -> free(program -> program.name().equals(name) && program.sha256().equals(checked.sha256())))
				.or(() -> free(program -> program.sha256().equals(checked.sha256())))
				.or(() -> only(program -> program.name().equals(name)));
	}

	private Optional<BaselineProgram> first(Predicate<BaselineProgram> wanted) {
		return programs.stream().filter(wanted).findFirst();
	}

	/** Not taken by another program of this run, neither so far nor by its path later on. */
	private Optional<BaselineProgram> free(Predicate<BaselineProgram> wanted) {
		return first(program -> wanted.test(program) && !claimed.contains(program.uri()) && !current.contains(program.uri()));
	}

	private Optional<BaselineProgram> only(Predicate<BaselineProgram> wanted) {
		return programs.stream().filter(wanted).count() == 1 ? free(wanted) : Optional.empty();
	}

	/** One sentence where programs of the log were not part of this run. */
	@Override
	public List<String> remarks() {
		List<BaselineProgram> unseen = programs.stream().filter(program -> !claimed.contains(program.uri())
				&& !program.findings().isEmpty()).toList();
		if (unseen.isEmpty()) {
			return List.of();
		}
		int findings = unseen.stream().mapToInt(program -> program.findings().size()).sum();
		return List.of(shown + " also holds " + findings + (findings == 1 ? " finding" : " findings") + " in " + unseen.size()
				+ (unseen.size() == 1 ? " program that was" : " programs that were") + " not checked now");
	}
}
