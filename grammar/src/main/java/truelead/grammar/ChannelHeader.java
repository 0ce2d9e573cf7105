package truelead.grammar;

import java.util.Optional;

/**
 * The line before the part of a program that one channel of a machine runs, as on lathes with two tool systems at work at once: {@code $1},
 * {@code $2} alone in a block (common practice, no source).
 */
public final class ChannelHeader {

	private ChannelHeader() {
	}

	/** Whether nothing but comments stands beside a channel's name in a block. */
	public static boolean is(Block block) {
		return of(block).isPresent();
	}

	/** The channel that a block names, {@code $1}; empty where anything but comments stands beside it. */
	public static Optional<String> of(Block block) {
		Optional<String> channel = Optional.empty();
		for (Element element : block.elements()) {
			if (channel.isEmpty() && element instanceof Element.Opaque opaque && names(opaque.name())) {
				channel = Optional.of(opaque.name());
			} else if (!(element instanceof Element.Comment)) {
				return Optional.empty();
			}
		}
		return channel;
	}

	/** Whether a statement's name is a mark at which a channel waits for another one: {@code !2L1}. */
	public static boolean waits(String name) {
		return name.startsWith("!");
	}

	/** Whether a name is that of a channel; one with more digits is a speed, whose S was typed with the wrong shift key. */
	public static boolean names(String name) {
		return name.length() == 2 && name.charAt(0) == '$' && name.charAt(1) >= '0' && name.charAt(1) <= '9';
	}
}
