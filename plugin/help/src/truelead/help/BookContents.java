package truelead.help;

import java.util.List;
import org.eclipse.core.expressions.IEvaluationContext;
import org.eclipse.help.AbstractTocProvider;
import org.eclipse.help.IToc;
import org.eclipse.help.ITocContribution;
import org.eclipse.help.ITopic;
import org.eclipse.help.IUAElement;

/** The table of contents of the guide for the platform's help. */
public final class BookContents extends AbstractTocProvider {

	private static final String BUNDLE = "truelead.help";

	@Override
	public ITocContribution[] getTocContributions(String locale) {
		return new ITocContribution[] { new Contribution(locale) };
	}

	private static String address(HelpPage page) {
		return "/" + BUNDLE + "/" + page.name() + ".html";
	}

	/** A topic: a group with its pages, or a page. */
	private record Topic(String label, String href, List<Topic> topics) implements ITopic {

		Topic(HelpPage page) {
			this(page.title(), address(page), List.of());
		}

		@Override
		public String getLabel() {
			return label;
		}

		@Override
		public String getHref() {
			return href;
		}

		@Override
		public ITopic[] getSubtopics() {
			return topics.toArray(ITopic[]::new);
		}

		@Override
		public IUAElement[] getChildren() {
			return getSubtopics();
		}

		@Override
		public boolean isEnabled(IEvaluationContext context) {
			return true;
		}
	}

	/** The book as a whole. */
	private record Contents(List<Topic> topics) implements IToc {

		@Override
		public String getLabel() {
			return "Truelead";
		}

		@Override
		public String getHref() {
			return "/" + BUNDLE + "/contents";
		}

		@Override
		public ITopic[] getTopics() {
			return topics.toArray(ITopic[]::new);
		}

		@Override
		public ITopic getTopic(String href) {
			if (href == null) {
				return new Topic(getLabel(), address(HelpBook.overview()), topics);
			}
			return topics.stream().flatMap(group -> group.topics().stream()).filter(topic -> href.equals(topic.href())).findFirst()
					.orElse(null);
		}

		@Override
		public IUAElement[] getChildren() {
			return getTopics();
		}

		@Override
		public boolean isEnabled(IEvaluationContext context) {
			return true;
		}
	}

	private record Contribution(String locale) implements ITocContribution {

		@Override
		public String getCategoryId() {
			return null;
		}

		@Override
		public String getContributorId() {
			return BUNDLE;
		}

		@Override
		public String[] getExtraDocuments() {
			return new String[0];
		}

		@Override
		public String getId() {
			return BUNDLE + ".contents";
		}

		@Override
		public String getLocale() {
			return locale;
		}

		@Override
		public String getLinkTo() {
			return null;
		}

		@Override
		public IToc getToc() {
			return new Contents(HelpBook.groups().entrySet().stream()
					.map(group -> new Topic(group.getKey(), address(group.getValue().get(0)),
							group.getValue().stream().map(Topic::new).toList())).toList());
		}

		@Override
		public boolean isPrimary() {
			return true;
		}
	}
}
