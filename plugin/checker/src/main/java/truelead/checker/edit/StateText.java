package truelead.checker.edit;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Modal;
import truelead.checker.machine.WorkOffset;
import truelead.checker.program.FeedMode;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Setting;
import truelead.checker.rule.Figures;

/** The state in force in words. */
final class StateText {

	private static final int DECIMALS = 4;

	private StateText() {
	}

	/** What is in force, by what it is, in the order people say it. */
	static Map<String, String> of(Modal modal) {
		Map<String, String> state = new LinkedHashMap<>();
		state.put("unit", modal.unit() == LengthUnit.MM ? "mm" : "inch");
		state.put("plane", modal.plane().name());
		state.put("distances", modal.absolute() ? "absolute" : "incremental");
		state.put("work offset", WorkOffset.name(modal.workOffset()));
		state.put("tool", number("T", modal.tool()));
		state.put("length offset", modal.lengthOffset().value() < 0 ? "H" + Figures.number(-modal.lengthOffset().value(), DECIMALS)
				+ ", subtracted" : number("H", modal.lengthOffset()));
		state.put("radius compensation", modal.compensation() == Compensation.OFF ? "off"
				: modal.compensation().name().toLowerCase(Locale.ROOT) + " of the path, " + number("D", modal.compensationOffset()));
		state.put("speed", modal.speed().known() ? figure(modal.speed()) + (modal.constantSurface() ? " surface speed" : " rev/min")
				: unknown(modal.speed()));
		state.put("spindle", modal.spindle().name().toLowerCase(Locale.ROOT));
		state.put("feed", feed(modal));
		state.put("coolant", modal.coolant() ? "on" : "off");
		state.put("rigid tapping", modal.rigid().isPresent() ? "on" : "off");
		state.put("cycles return to", modal.returnToInitial() ? "the initial level" : "the R level");
		return state;
	}

	private static String feed(Modal modal) {
		if (!modal.feed().known()) {
			return unknown(modal.feed());
		}
		String length = modal.unit() == LengthUnit.MM ? " mm" : " inch";
		return figure(modal.feed()) + (modal.feedMode() == FeedMode.PER_MINUTE ? length + "/min"
				: modal.feedMode() == FeedMode.PER_REVOLUTION ? length + " a turn" : " a minute, inverse time");
	}

	private static String number(String letter, Setting setting) {
		return setting.known() ? letter + figure(setting) : unknown(setting);
	}

	private static String figure(Setting setting) {
		return Figures.number(setting.value(), DECIMALS);
	}

	private static String unknown(Setting setting) {
		return setting.isSet() ? "not known" : "none";
	}
}
