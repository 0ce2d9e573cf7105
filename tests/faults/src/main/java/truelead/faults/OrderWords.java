package truelead.faults;

/** What a program says in words of the depth. */
final class OrderWords {
	private OrderWords() {
	}

	static boolean depthSaid(Feature feature, Tool tool) {
		return feature.note.contains("DEPTH") || tool.name.contains("DEPTH") || tool.name.contains("DEEP");
	}
}
