package truelead.editor.walk;

/** The steps of the walk, each a sentence with a link that does it. */
enum Step {

	OPEN("Open <a>bearing-cap-faults.nc</a>, a demo program, at its first finding. Ctrl+. leads to the next one.", ""),
	RULE("Ask for the <a>rule</a> of a finding: F1 says what happens at the spindle, and when to accept it.", "truelead.editor.guide"),
	FIX("Take the <a>fix</a>: Ctrl+1, then Enter. Ctrl+Z takes it back.", ""),
	DRAWING("See the <a>hole drawn</a> to scale, with its numbers: the view Thread follows the caret.", ""),
	WHY("<a>Show me why</a>: a lesson with the numbers of the finding. Move them until the thread comes out right.", "truelead.editor.why"),
	REPORT("Audit the program: Ctrl+Alt+A. The <a>report</a> goes to the machine with it.", "truelead.editor.audit.report"),
	PLAN("<a>Plan a thread</a> of your own: say what is to be made, and choose among the ways to make it.", "truelead.editor.plan");

	private final String sentence;
	private final String command;

	Step(String sentence, String command) {
		this.sentence = sentence;
		this.command = command;
	}

	/** What a person reads, its link marked as SWT wants it. */
	String sentence() {
		return sentence;
	}

	/** The command that does it with the program in front; empty where it takes more than a command. */
	String command() {
		return command;
	}
}
