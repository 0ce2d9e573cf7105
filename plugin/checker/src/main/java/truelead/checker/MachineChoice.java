package truelead.checker;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.job.MachineNotes;
import truelead.checker.job.Note;
import truelead.checker.job.Remark;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.ProfileGuess;
import truelead.checker.profile.ProfileReading;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.grammar.Span;

/**
 * The machine a program is checked on. The nearest that names one wins: a note in the program, the profile of its folder, the one given by
 * whoever checks; where nobody does, the words of the program may tell turning from milling.
 *
 * @param profile the profile to use
 * @param assumed where it comes from, or what was assumed and from what; one sentence
 * @param remarks what in the note or the folder's profile was not understood
 */
record MachineChoice(MachineProfile profile, Optional<String> assumed, List<Remark> remarks) {

	static MachineChoice of(ProgramFile program, ProgramFolder folder, MachineProfile given) {
		List<Remark> remarks = new ArrayList<>();
		Optional<MachineProfile> ofFolder = folder.profile().map(file -> read(file, remarks));
		Optional<Note.OfMachine> note = MachineNotes.first(program);
		Optional<MachineProfile> named = note.flatMap(found -> named(found.name().value(), ofFolder, given));
		if (named.isPresent()) {
			int line = note.get().comment().at().line() + 1;
			return new MachineChoice(named.get(), Optional.of("machine profile " + named.get().name() + " by the note in line "
					+ line), remarks);
		}
		note.ifPresent(unknown -> remarks.add(noSuch(unknown.name(), ofFolder)));
		if (ofFolder.isPresent()) {
			return new MachineChoice(ofFolder.get(), Optional.of("machine profile " + ofFolder.get().name() + " by " + ProgramFolder.PROFILE
					+ " in the folder"), remarks);
		}
		ProfileGuess guess = ProfileGuess.of(program.text(), given);
		if (guess.profile().assumed() && TappingCentre.speaks(program.text())) {
			return new MachineChoice(TappingCentre.profile(), guess.assumed().map(assumed -> assumed
					+ "; G77 and G78 are taken for tapping with the lead I or J, G100 for a tool change"), remarks);
		}
		return new MachineChoice(guess.profile(), guess.assumed(), remarks);
	}

	private static MachineProfile read(ProgramFile file, List<Remark> remarks) {
		ProfileReading reading = MachineProfile.read(file.text().toString(), file.name());
		reading.problems().forEach(problem -> remarks.add(new Remark(
				new Location(file, problem.line(), new Span(0, file.text().block(problem.line()).text().length())), problem.message())));
		return reading.profile();
	}

	private static Optional<MachineProfile> named(String name, Optional<MachineProfile> ofFolder, MachineProfile given) {
		if (ofFolder.filter(profile -> profile.name().equalsIgnoreCase(name)).isPresent()) {
			return ofFolder;
		}
		if (given.name().equalsIgnoreCase(name) && !given.assumed()) {
			return Optional.of(given);
		}
		return MachineProfile.shipped().stream().filter(name::equalsIgnoreCase).findFirst().map(MachineProfile::named);
	}

	private static Remark noSuch(Fact<String> name, Optional<MachineProfile> ofFolder) {
		List<String> known = new ArrayList<>(MachineProfile.shipped());
		ofFolder.ifPresent(profile -> known.add(profile.name()));
		return new Remark(name.at().orElseThrow(), "no machine profile is called \"" + name.value() + "\"; there are "
				+ String.join(", ", known));
	}
}
