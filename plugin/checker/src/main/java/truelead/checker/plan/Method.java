package truelead.checker.plan;

import truelead.checker.thread.LeadForm;

/** A way to make an internal thread, with its lead in threads (DIN 2197 forms, the long end, so that the full thread is there). */
public enum Method {
	FORM_TAP("forming tap", "FORM TAP", "C", true),
	SPIRAL_POINT("cutting tap, spiral point", "SPIRAL POINT TAP", "B", false),
	SPIRAL_FLUTE("cutting tap, spiral flute", "SPIRAL FLUTE TAP", "C", false),
	STRAIGHT_FLUTE("cutting tap, straight flute", "STRAIGHT FLUTE TAP", "C", false),
	THREAD_MILL("thread mill, single form", "THREAD MILL", "", false),
	COMB_MILL("thread mill, comb", "COMB THREAD MILL", "", false);

	private final String title;
	private final String tool;
	private final String form;
	private final boolean forming;

	Method(String title, String tool, String form, boolean forming) {
		this.title = title;
		this.tool = tool;
		this.form = form;
		this.forming = forming;
	}

	/** As people say it. */
	public String title() {
		return title;
	}

	/** As a program's comment names the tool. */
	public String tool() {
		return tool;
	}

	/** Whether it displaces metal instead of cutting it. */
	public boolean forming() {
		return forming;
	}

	/** Whether it is a tap. */
	public boolean tap() {
		return !form.isEmpty();
	}

	/** The lead in threads; 0 for thread mills, which have none. */
	public double lead() {
		return tap() ? LeadForm.of(form, forming).orElseThrow().most() : 0;
	}
}
