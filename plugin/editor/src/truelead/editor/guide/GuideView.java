package truelead.editor.guide;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.ViewPart;
import truelead.editor.look.PlainAction;
import truelead.editor.page.PageLayout;
import truelead.editor.page.PageText;
import truelead.editor.page.Reading;
import truelead.help.HelpBook;
import truelead.help.HelpPage;

/** The guide: every rule and chapter in a list that can be searched, and the page of the one chosen. */
public final class GuideView extends ViewPart {

	/** Its id in plugin.xml. */
	public static final String ID = "truelead.editor.guide.view";

	private final Deque<Reading> before = new ArrayDeque<>();
	private final IPropertyChangeListener themeListener = event -> again();
	private Optional<Reading> shown = Optional.empty();
	private Text search;
	private TreeViewer list;
	private PageText page;
	private Action back;

	/** Opens the view at a page, with the focus in it. */
	public static void show(Reading reading) {
		try {
			GuideView view = (GuideView) PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage().showView(ID);
			view.open(reading);
			view.page.widget().setFocus();
		} catch (PartInitException cannotOpen) {
			ILog.of(GuideView.class).log(cannotOpen.getStatus());
		}
	}

	@Override
	public void createPartControl(Composite parent) {
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(parent);
		search = new Text(parent, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
		search.setMessage("Search rules and chapters");
		GridDataFactory.fillDefaults().grab(true, false).applyTo(search);
		SashForm halves = new SashForm(parent, SWT.VERTICAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(halves);
		list = new TreeViewer(halves, SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL);
		list.setContentProvider(new PageTree());
		list.setLabelProvider(new PageLabels());
		list.setInput(HelpBook.groups());
		list.expandAll();
		list.addSelectionChangedListener(changed -> chosen().filter(chosen -> shown.map(Reading::page).filter(chosen::equals).isEmpty())
				.ifPresent(this::open));
		page = new PageText(halves);
		halves.setWeights(28, 72);
		search.addListener(SWT.Modify, event -> search(search.getText()));
		search.addListener(SWT.DefaultSelection, event -> first().ifPresent(this::open));
		search.addListener(SWT.KeyDown, event -> {
			if (event.keyCode == SWT.ARROW_DOWN) {
				list.getControl().setFocus();
				first().ifPresent(found -> list.setSelection(new StructuredSelection(found), true));
			}
		});
		actions();
		PlatformUI.getWorkbench().getThemeManager().addPropertyChangeListener(themeListener);
		open(HelpBook.overview());
	}

	private void actions() {
		back = new PlainAction("Back", ISharedImages.IMG_TOOL_BACK, this::back);
		Action overview = new PlainAction("Overview", ISharedImages.IMG_ETOOL_HOME_NAV, () -> open(HelpBook.overview()));
		back.setEnabled(false);
		List.of(back, overview).forEach(getViewSite().getActionBars().getToolBarManager()::add);
	}

	private void search(String words) {
		Map<String, List<HelpPage>> found = new LinkedHashMap<>();
		HelpBook.groups().forEach((group, pages) -> {
			List<HelpPage> fitting = pages.stream().filter(candidate -> candidate.says(words)).toList();
			if (!fitting.isEmpty()) {
				found.put(group, fitting);
			}
		});
		list.setInput(found);
		list.expandAll();
	}

	/** The first page that is listed; one that has the words in its title goes before those that have them in their text. */
	private Optional<HelpPage> first() {
		List<HelpPage> listed = ((Map<?, ?>) list.getInput()).values().stream().flatMap(pages -> ((List<?>) pages).stream())
				.map(HelpPage.class::cast).toList();
		return listed.stream().filter(found -> found.title().contains(search.getText().strip())).findFirst()
				.or(() -> listed.stream().findFirst());
	}

	private Optional<HelpPage> chosen() {
		return Optional.ofNullable(list.getStructuredSelection().getFirstElement()).filter(HelpPage.class::isInstance)
				.map(HelpPage.class::cast);
	}

	private void open(HelpPage chosen) {
		open(new Reading(chosen, "", Subject.lesson(chosen.name())));
	}

	private void open(Reading reading) {
		shown.filter(last -> !last.equals(reading)).ifPresent(before::push);
		back.setEnabled(!before.isEmpty());
		lay(reading);
	}

	private void back() {
		if (!before.isEmpty()) {
			lay(before.pop());
			back.setEnabled(!before.isEmpty());
		}
	}

	private void lay(Reading reading) {
		shown = Optional.of(reading);
		page.show(PageLayout.of(reading, this::open));
		list.setSelection(new StructuredSelection(reading.page()), true);
	}

	private void again() {
		if (!page.widget().isDisposed()) {
			page.widget().getDisplay().asyncExec(() -> {
				if (!page.widget().isDisposed()) {
					page.again();
				}
			});
		}
	}

	@Override
	public void setFocus() {
		search.setFocus();
	}

	@Override
	public void dispose() {
		PlatformUI.getWorkbench().getThemeManager().removePropertyChangeListener(themeListener);
		super.dispose();
	}
}
