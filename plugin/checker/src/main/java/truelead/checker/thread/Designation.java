package truelead.checker.thread;

/** How a thread is written in full, as its standard does, but in ASCII. */
final class Designation {
	private Designation() {
	}

	/** The designation of a thread: size, pitch always, then class and hand where they are said. */
	static String of(ThreadSpec spec) {
		StringBuilder text = new StringBuilder(size(spec));
		String pitch = Decimals.plain(spec.pitch(), 4);
		String tpi = Decimals.plain(spec.tpi(), 4);
		switch (spec.system()) {
			case METRIC, MJ -> text.append('x')
					.append(spec.starts() > 1 ? Decimals.plain(spec.lead(), 4) + "P" + pitch : pitch);
			case UNIFIED, UNJ -> text.append('-').append(tpi).append(' ').append(spec.series());
			case TR, SAW -> text.append('x').append(spec.starts() > 1 ? Decimals.plain(spec.lead(), 4) + "P" + pitch : pitch);
			case NPT, NPTF, NPSM, NPSC, BSW, BSF, ACME -> text.append('-').append(tpi).append(' ').append(spec.system());
			case STUB_ACME -> text.append('-').append(tpi).append(" STUB ACME");
			case BUTTRESS -> text.append('-').append(tpi).append(" BUTT");
			case RD, W -> text.append("x1/").append(tpi);
			default -> { }
		}
		if (spec.starts() > 1 && spec.tpi() > 0) {
			text.append(' ').append(spec.starts()).append("-START");
		}
		spec.threadClass().ifPresent(c -> text.append(spec.system() == ThreadSystem.G ? " " : "-").append(c));
		if (spec.hand() == Hand.LEFT) {
			text.append("-LH");
		}
		return text.toString();
	}

	private static String size(ThreadSpec spec) {
		return switch (spec.system()) {
			case METRIC -> "M" + spec.size();
			case MJ -> "MJ" + spec.size();
			case G -> "G " + spec.size();
			case RP -> "Rp " + spec.size();
			case RC -> "Rc " + spec.size();
			case R -> "R " + spec.size();
			case TR -> "Tr" + spec.size();
			case SAW, MINIATURE -> "S" + spec.size();
			case RD -> "Rd " + spec.size();
			case W -> "W " + spec.size();
			case PG -> "Pg " + spec.size();
			case BA -> spec.size() + " BA";
			default -> spec.size();
		};
	}
}
