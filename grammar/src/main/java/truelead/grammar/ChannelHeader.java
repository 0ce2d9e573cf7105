package truelead.grammar;

/**
 * The line before the part of a program that one channel of a machine runs, as on lathes with two tool systems at work at once: {@code $1}, {@code $2}
 * alone in a block (common practice, no source).
 */
public final class ChannelHeader {

	/** A sign and a number of one or two digits. */
	private static final int LONGEST = 3;

	private ChannelHeader() {
	}

	/** Whether nothing but comments stands beside a channel's number in a block. */
	public static boolean is(Block block) {
		boolean channel = false;
		for (Element element : block.elements()) {
			if (!channel && element instanceof Element.Opaque opaque && names(opaque.name())) {
				channel = true;
			} else if (!(element instanceof Element.Comment)) {
				return false;
			}
		}
		return channel;
	}

	/** Whether a statement's name is a mark at which a channel waits for another one: {@code !2L1}. */
	public static boolean waits(String name) {
		return name.startsWith("!");
	}

	/** Whether a name is that of a channel. */
	public static boolean names(String name) {
		boolean number = name.length() >= 2 && name.length() <= LONGEST && name.charAt(0) == '$';
		for (int i = 1; number && i < name.length(); i++) {
			number = name.charAt(i) >= '0' && name.charAt(i) <= '9';
		}
		return number;
	}
}
