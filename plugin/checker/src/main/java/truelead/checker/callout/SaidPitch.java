package truelead.checker.callout;

import java.util.Optional;
import truelead.checker.program.LengthUnit;

/** A pitch that a comment says apart from any thread: {@code PITCH=1.75}, {@code P 1.25}, {@code 1.0 PITCH}, {@code 20 TPI}. */
final class SaidPitch {

	private final PartRow row;

	SaidPitch(PartRow row) {
		this.row = row;
	}

	/** The only pitch that is said; empty where none is, or two are. Turns an inch are told as a length. */
	Optional<Dimension> only() {
		Optional<Dimension> pitch = Optional.empty();
		for (int i = 0; i < row.parts().size(); i++) {
			if (row.parts().get(i) instanceof Part.Amount amount && amount.dimension().value() > 0 && (at(i) || turns(i))) {
				if (pitch.isPresent()) {
					return Optional.empty();
				}
				pitch = Optional.of(turns(i) ? Dimension.of(1 / amount.dimension().value(), LengthUnit.INCH) : amount.dimension());
			}
		}
		return pitch;
	}

	/** Whether an amount is a pitch: {@code PITCH 1.0}, {@code P=1.0}, {@code 1.0 PITCH}. */
	boolean at(int i) {
		Part.Amount amount = (Part.Amount) row.parts().get(i);
		return amount.role() == Part.Role.PITCH || amount.role() == Part.Role.PLAIN && (row.is(i + 1, Meaning.P)
				|| row.is(before(i), Meaning.P));
	}

	private boolean turns(int i) {
		return ((Part.Amount) row.parts().get(i)).dimension().unit().isEmpty()
				&& (row.is(i + 1, Meaning.TPI) || row.is(before(i), Meaning.TPI));
	}

	/** The part before an amount, without the sign between them. */
	private int before(int i) {
		int before = i - 1;
		while (before > 0 && row.parts().get(before) instanceof Part.Other o && (o.text().equals("=") || o.text().equals(":")
				|| o.text().equals("."))) {
			before--;
		}
		return before;
	}
}
