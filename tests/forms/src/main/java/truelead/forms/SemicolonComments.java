package truelead.forms;

import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;
import truelead.grammar.Element;

/** A remark behind a semicolon is one in parentheses. */
final class SemicolonComments implements Form {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.remarks());
	}

	@Override
	public List<String> rewrite(Program program) {
		return program.blocks().stream().map(SemicolonComments::rewritten).toList();
	}

	private static String rewritten(Block block) {
		boolean last = block.comments().size() == 1 && block.elements().get(block.elements().size() - 1) instanceof Element.Comment;
		return last && !Words.head(block) ? Words.eachComment(block, comment -> "; " + comment.text()) : block.text();
	}
}
