package truelead.grammar;

/** A part of a block that could not be read: where it stands, and what was expected there, in words for the programmer. */
public record Problem(Span span, String message) {
}
