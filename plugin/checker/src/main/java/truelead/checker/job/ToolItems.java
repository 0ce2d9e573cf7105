package truelead.checker.job;

import java.util.Optional;
import org.antlr.v4.runtime.ParserRuleContext;
import truelead.checker.thread.HolderKind;
import truelead.checker.thread.ToolKind;

/** Reads the items of a TOOL note into tool facts. */
final class ToolItems {

	private final NoteItems items;
	private final ToolFacts.Builder facts = new ToolFacts.Builder();
	private Optional<Integer> number = Optional.empty();
	private int read;

	ToolItems(NoteItems items) {
		this.items = items;
	}

	/** Empty without a remark where nothing of ours is in it: an ordinary comment that begins with TOOL and a colon. */
	Optional<Note> read(NoteParser.ToolNoteContext note) {
		ParserRuleContext notRead = null;
		for (NoteParser.ToolItemContext item : note.toolItem()) {
			if (item(item)) {
				read++;
			} else if (notRead == null) {
				notRead = item;
			}
		}
		if (notRead != null && note.toolItem().size() > 1) {
			items.notRead(notRead, "TOOL");
		}
		return read == 0 ? Optional.empty() : Optional.of(new Note.OfTool(items.comment(), number, facts.build()));
	}

	private boolean item(NoteParser.ToolItemContext item) {
		if (item instanceof NoteParser.ToolNumberContext given) {
			number = Optional.of((int) NoteItems.number(given.NUMBER().getText()));
		} else if (item instanceof NoteParser.ToolDiameterContext given) {
			facts.diameter = Optional.of(items.length(given.diameter().length(), item));
		} else if (item instanceof NoteParser.ToolReachContext given) {
			facts.reach = Optional.of(items.length(given.length(), item));
		} else if (item instanceof NoteParser.ToolNoseContext given) {
			facts.nose = Optional.of(items.length(given.length(), item));
		} else if (item instanceof NoteParser.ToolFlatContext given) {
			facts.tipFlat = Optional.of(items.length(given.length(), item));
		} else if (item instanceof NoteParser.ToolPitchContext given) {
			facts.pitch = Optional.of(items.length(given.length(), item));
		} else if (item instanceof NoteParser.ToolToothFeedContext given) {
			facts.toothFeed = Optional.of(items.length(given.length(), item));
		} else if (item instanceof NoteParser.ToolTeethContext given) {
			facts.teeth = Optional.of(items.fact((int) NoteItems.number(given.NUMBER().getText()), item));
		} else if (item instanceof NoteParser.ToolAngleContext given) {
			facts.pointAngle = Optional.of(items.fact(Math.toRadians(NoteItems.number(given.NUMBER().getText())), item));
		} else if (item instanceof NoteParser.ToolCombContext) {
			facts.comb = Optional.of(items.fact(true, item));
		} else if (item instanceof NoteParser.ToolSingleContext) {
			facts.comb = Optional.of(items.fact(false, item));
		} else if (item instanceof NoteParser.ToolEdgeFeedContext) {
			facts.edgeFeed = Optional.of(items.fact(true, item));
		} else if (item instanceof NoteParser.ToolLimitContext given) {
			facts.limit = Optional.of(items.fact(NoteItems.text(given.free()), item));
		} else if (item instanceof NoteParser.ToolLeadContext given) {
			return lead(given);
		} else if (item instanceof NoteParser.ToolHolderContext given) {
			facts.holder = Optional.of(items.fact(holder(given), item));
		} else {
			return free(item);
		}
		return true;
	}

	private boolean lead(NoteParser.ToolLeadContext given) {
		Optional<TapLead> lead = TapLead.of(given.lead(), facts.kind.filter(kind -> kind.value() == ToolKind.FORM_TAP).isPresent());
		lead.flatMap(TapLead::turns).ifPresent(turns -> facts.leadTurns = Optional.of(items.fact(turns, given)));
		lead.flatMap(TapLead::length).ifPresent(length -> facts.leadLength = Optional.of(items.fact(length, given)));
		return lead.isPresent() || free(given);
	}

	private Holder holder(NoteParser.ToolHolderContext given) {
		NoteParser.HolderContext kind = given.holder();
		Holder usual = Holder.usual(kind.RIGID() != null ? HolderKind.RIGID : kind.SYNCHRO() != null ? HolderKind.SYNCHRO
				: kind.FLOATING() != null ? HolderKind.FLOATING : HolderKind.SELF_REVERSING);
		return given.length() == null ? usual : new Holder(usual.kind(), items.length(given.length(), given).value());
	}

	private boolean free(NoteParser.ToolItemContext item) {
		ToolFacts read = FreeText.tool(NoteItems.text(item), FactSource.NOTE, items.location(item), items.unit());
		if (read.equals(ToolFacts.NONE)) {
			return false;
		}
		facts.or(read);
		return true;
	}
}
