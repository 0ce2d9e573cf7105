package truelead.checker.sheet;

import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.program.BlockRef;
import truelead.checker.program.LengthUnit;
import truelead.checker.rule.Figures;
import truelead.checker.thread.BoltLimits;
import truelead.checker.thread.Limits;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;
import truelead.checker.tool.ToolUse;

/** The numbers that every thread has, however it is made. Lengths in mm; NaN where not known. */
public interface ThreadSheet {

	/** Number of the thread in the program, from 0; those that a lathe cuts by a single point follow the others. */
	int index();

	/** The block that starts it. */
	BlockRef block();

	/** The tool in the spindle, or in the turret. */
	ToolUse tool();

	/** How the thread is made, in words of the trade. */
	String method();

	/** The thread, and who says so. */
	Optional<Fact<ThreadSpec>> thread();

	/** What to call it: the thread's designation, or that nothing names one. */
	default String name() {
		return thread().map(fact -> fact.value().designation()).orElse("thread not named");
	}

	/** Whether it is the thread of a screw and not of a hole. */
	boolean outside();

	/** The limits of the hole; empty for a thread outside, and where no table has them. */
	Optional<Limits> limits();

	/** The limits of the screw; empty for a thread inside, and where neither table nor formula has them. */
	default Optional<BoltLimits> boltLimits() {
		return thread().filter(named -> outside()).flatMap(named -> ThreadTable.standard().boltLimits(named.value()));
	}

	/** The program's unit there. */
	LengthUnit unit();

	/** Spindle speed, rev/min. */
	double speed();

	/** The same as people read it. */
	default String revolutions() {
		return Double.isNaN(speed()) ? "speed not known" : "S" + Figures.number(speed(), 2);
	}

	/** Direction of the spindle, in words. */
	String turning();

	/** The feed as programmed with its mode, or the lead of a synchronised move. */
	String feed();

	/** What feed and speed advance in a turn. */
	double advance();

	/** What the thread needs in a turn: pitch times starts. */
	double lead();

	/** Number of turns in the material, from the top of the hole or the face to the tool's end; of a helix all of it. */
	double turns();

	/** Difference of advance and lead in a turn, mm; positive for too fast. */
	default double feedError() {
		return advance() - lead();
	}

	/** The pitch of the thread; NaN where nothing names one. */
	default double pitch() {
		return thread().map(fact -> fact.value().pitch()).orElse(Double.NaN);
	}
}
