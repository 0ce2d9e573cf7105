package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.grammar.ProgramText;

/** A program that has been followed, for tests to look at. */
record Followed(List<Step> steps) {

	/** Follows a program given line by line on the generic milling profile. */
	static Followed milling(String... lines) {
		return on(MachineProfile.generic(), lines);
	}

	static Followed on(MachineProfile profile, String... lines) {
		return with(Map.of(), profile, lines);
	}

	/** Follows a program that has other programs beside it. */
	static Followed with(Map<String, String> folder, MachineProfile profile, String... lines) {
		List<Step> steps = new ArrayList<>();
		ProgramFolder files = name -> Optional.ofNullable(folder.get(name))
				.map(text -> new ProgramFile(name + ".nc", ProgramText.of(text)));
		Interpreter.run(new ProgramFile("main.nc", ProgramText.of(String.join("\n", lines))), files, profile, steps::add);
		return new Followed(steps);
	}

	<T extends Step> List<T> all(Class<T> kind) {
		return steps.stream().filter(kind::isInstance).map(kind::cast).toList();
	}

	List<Step.Move> moves() {
		return all(Step.Move.class);
	}

	List<Step.Arc> arcs() {
		return all(Step.Arc.class);
	}

	/** The strokes, those of rows one by one. */
	List<Step.Stroke> strokes() {
		List<Step.Stroke> strokes = new ArrayList<>();
		for (Step step : steps) {
			if (step instanceof Step.Row row) {
				IntStream.range(0, row.count()).mapToObj(row::stroke).forEach(strokes::add);
			} else if (step instanceof Step.Stroke stroke) {
				strokes.add(stroke);
			}
		}
		return strokes;
	}

	Step.Stroke stroke(int index) {
		return strokes().get(index);
	}

	List<Step.Event> events(Step.EventKind kind) {
		return all(Step.Event.class).stream().filter(event -> event.kind() == kind).toList();
	}

	private static boolean minor(Step.NotFollowed lost) {
		return lost.weight() == Step.NotFollowed.Weight.MINOR || lost.weight() == Step.NotFollowed.Weight.MAY_CALL
				|| lost.weight() == Step.NotFollowed.Weight.UNKNOWN_CODE;
	}

	/** Why anything could not be followed, remarks left out. */
	List<String> lost() {
		return all(Step.NotFollowed.class).stream().filter(lost -> !minor(lost)).map(lost -> lost.why().words()).toList();
	}

	List<String> remarks() {
		return all(Step.NotFollowed.class).stream().filter(Followed::minor).map(lost -> lost.why().words()).toList();
	}

	/** The end of the last motion. */
	Point end() {
		for (int i = steps.size() - 1; i >= 0; i--) {
			Step step = steps.get(i);
			if (step instanceof Step.Move move) {
				return move.to();
			} else if (step instanceof Step.Arc arc) {
				return arc.to();
			} else if (step instanceof Step.Synchronised motion) {
				return motion.to();
			}
		}
		return Point.UNKNOWN;
	}

	/** The state in force at the end. */
	Modal state() {
		return steps.get(steps.size() - 1).modal();
	}

	/** Places of the strokes as {@code x,y} in mm with up to three decimals. */
	List<String> places() {
		return strokes().stream().map(stroke -> number(stroke.place().x()) + "," + number(stroke.place().y())).toList();
	}

	/** Ends of the moves as {@code x,y,z}. */
	List<String> ends() {
		return moves().stream().map(move -> text(move.to())).toList();
	}

	static String text(Point point) {
		return number(point.x()) + "," + number(point.y()) + "," + number(point.z());
	}

	static String number(double value) {
		if (Double.isNaN(value)) {
			return "?";
		}
		double rounded = Math.round(value * 1000) / 1000.0;
		return rounded == Math.rint(rounded) ? String.valueOf((long) rounded) : String.valueOf(rounded);
	}
}
