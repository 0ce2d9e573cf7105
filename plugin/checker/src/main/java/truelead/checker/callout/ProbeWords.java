package truelead.checker.callout;

/** Whether a comment names a probe, which cuts nothing. */
public final class ProbeWords {

	private ProbeWords() {
	}

	/** Whether any word of the comment is a probe's. */
	public static boolean in(String comment) {
		int start = 0;
		while (start < comment.length()) {
			int end = start;
			while (end < comment.length() && Character.isLetter(comment.charAt(end))) {
				end++;
			}
			if (end > start && TradeWords.words().meaning(comment.substring(start, end))
					.filter(meaning -> meaning == Meaning.PROBE).isPresent()) {
				return true;
			}
			start = end + 1;
		}
		return false;
	}
}
