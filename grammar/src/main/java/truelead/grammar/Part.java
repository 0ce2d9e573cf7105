package truelead.grammar;

/** What the tree builder found at one place of a block, before it is decided whether the rest is damage, prose or another language. */
sealed interface Part {

	Span span();

	/** An element that stands as it is. */
	record Whole(Element element) implements Part {
		@Override
		public Span span() {
			return element.span();
		}
	}

	/** A name alone: the beginning of a richer language's statement or of prose; {@code text} as written. */
	record Keyword(String text, Span span) implements Part {
	}

	/** A statement that must have its block to itself; elsewhere its first word, {@code text}, is a name as in prose. */
	record Leading(Element element, String text) implements Part {
		@Override
		public Span span() {
			return element.span();
		}
	}

	/** An address letter without a value. */
	record Bare(Element.Word word) implements Part {
		@Override
		public Span span() {
			return word.span();
		}
	}

	/** Something that cannot stand here; {@code message} says what was expected. */
	record Misfit(String message, Span span) implements Part {
	}
}
