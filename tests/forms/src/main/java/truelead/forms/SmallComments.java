package truelead.forms;

import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What people write means the same in small letters. */
final class SmallComments implements Form {

	@Override
	public List<String> rewrite(Program program) {
		return program.blocks().stream()
				.map(block -> Words.eachComment(block, comment -> Words.written(block, comment).toLowerCase(Locale.ROOT))).toList();
	}

	/** A class in small letters is that of a bolt. */
	@Override
	public Set<String> judgedByIt() {
		return Set.of("tap-limit-against-class");
	}
}
