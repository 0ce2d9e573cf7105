package truelead.editor.thread;

import java.util.Optional;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.jface.viewers.IPostSelectionProvider;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.ISelectionChangedListener;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.actions.ActionFactory;
import org.eclipse.ui.part.ViewPart;
import truelead.checker.sheet.SheetFigures;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.CheckedText;
import truelead.editor.check.LiveCheck;
import truelead.editor.look.SharpPicture;

/** The threading operation at the caret: drawn to scale, and beside or below it its numbers with where each comes from. */
public final class ThreadView extends ViewPart {

	/** Its id in plugin.xml. */
	public static final String ID = "truelead.editor.thread.view";

	private static final int NAMES = 140;
	private static final int EDGE = 6;

	/** Height that the numbers keep, pixels. */
	private static final int LEAST = 120;

	private static final ShownThread NO_PROGRAM = ShownThread.empty("Open a program: the thread at the caret is drawn here.");

	private static final ShownThread CHECKING = ShownThread.empty("The program is being checked \u2026");

	private final ISelectionChangedListener caret = event -> caretMoved(event.getSelection());
	private final LiveCheck.Listener results = this::checked;
	private final Job job = Job.createSystem("Thread at the caret", (ICoreRunnable) monitor -> draw());
	private volatile CheckedEditor editor;
	private volatile int line;
	private volatile boolean dark;
	private volatile int width;
	private volatile int height;
	private final IPartListener2 parts = new IPartListener2() {
		@Override
		public void partActivated(IWorkbenchPartReference part) {
			follow(part.getPart(false));
		}

		@Override
		public void partBroughtToTop(IWorkbenchPartReference part) {
			follow(part.getPart(false));
		}

		@Override
		public void partClosed(IWorkbenchPartReference part) {
			if (editor != null && part.getPart(false) == editor) {
				leave();
				show(NO_PROGRAM);
			}
		}
	};
	private ShownThread shown = NO_PROGRAM;
	private Label title;
	private Label picture;
	private SashForm sash;
	private ScrolledComposite scroll;
	private Table figures;
	private Image image;

	@Override
	public void createPartControl(Composite parent) {
		GridLayoutFactory.fillDefaults().margins(4, 2).spacing(0, 2).applyTo(parent);
		title = new Label(parent, SWT.WRAP);
		title.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DIALOG_FONT));
		GridDataFactory.fillDefaults().grab(true, false).applyTo(title);
		sash = new SashForm(parent, SWT.HORIZONTAL);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(sash);
		scroll = new ScrolledComposite(sash, SWT.H_SCROLL | SWT.V_SCROLL);
		picture = new Label(scroll, SWT.NONE);
		picture.getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(event -> event.result = shown.text()));
		scroll.setContent(picture);
		scroll.addListener(SWT.Resize, event -> soon());
		figures = new Table(sash, SWT.FULL_SELECTION | SWT.MULTI | SWT.V_SCROLL | SWT.H_SCROLL);
		figures.getAccessible().addAccessibleListener(AccessibleListener.getNameAdapter(event -> event.result = "Numbers of the thread"));
		new TableColumn(figures, SWT.NONE).setWidth(NAMES);
		new TableColumn(figures, SWT.NONE);
		figures.addListener(SWT.Resize, event -> widen());
		menu();
		sash.addListener(SWT.Resize, event -> {
			sash.setOrientation(sash.getSize().x > sash.getSize().y ? SWT.HORIZONTAL : SWT.VERTICAL);
			soon();
		});
		sash.setWeights(55, 45);
		getSite().getPage().addPartListener(parts);
		show(shown);
		follow(getSite().getPage().getActiveEditor());
	}

	private void menu() {
		getViewSite().getActionBars().setGlobalActionHandler(ActionFactory.COPY.getId(), new Action("Copy Numbers") {
			@Override
			public void run() {
				copy();
			}
		});
		Menu menu = new Menu(figures);
		MenuItem copy = new MenuItem(menu, SWT.PUSH);
		copy.setText("Copy Numbers");
		copy.addListener(SWT.Selection, event -> copy());
		figures.setMenu(menu);
	}

	/** Puts the chosen numbers on the clipboard, all of them where none is chosen. */
	private void copy() {
		StringBuilder text = new StringBuilder();
		TableItem[] chosen = figures.getSelectionCount() > 0 ? figures.getSelection() : figures.getItems();
		for (TableItem item : chosen) {
			text.append(item.getText(0)).append('\t').append(item.getText(1)).append(System.lineSeparator());
		}
		if (!text.isEmpty()) {
			Clipboard clipboard = new Clipboard(figures.getDisplay());
			clipboard.setContents(new Object[] {text.toString()}, new Transfer[] {TextTransfer.getInstance()});
			clipboard.dispose();
		}
	}

	/** From now on the caret of this editor, whichever part the keys go to: the outline and the Problems view move it too. */
	private void follow(IWorkbenchPart part) {
		if (part instanceof CheckedEditor program && program != editor) {
			leave();
			editor = program;
			if (shown == NO_PROGRAM) {
				show(CHECKING);
			}
			program.check().addListener(results);
			((IPostSelectionProvider) program.getSelectionProvider()).addPostSelectionChangedListener(caret);
			caretMoved(program.getSelectionProvider().getSelection());
		}
	}

	private void leave() {
		CheckedEditor before = editor;
		editor = null;
		if (before != null) {
			before.check().removeListener(results);
			if (before.getSelectionProvider() instanceof IPostSelectionProvider carets) {
				carets.removePostSelectionChangedListener(caret);
			}
		}
	}

	private void caretMoved(ISelection selection) {
		if (selection instanceof ITextSelection text) {
			line = text.getStartLine();
			soon();
		}
	}

	private void checked(CheckedText checked) {
		CheckedEditor open = editor;
		if (open != null && open.check().last().filter(checked::equals).isPresent()) {
			picture.getDisplay().asyncExec(this::soon);
		}
	}

	private void soon() {
		if (!picture.isDisposed()) {
			// the room without scroll bars: a drawing that fits it has none
			width = scroll.getSize().x;
			height = sash.getOrientation() == SWT.VERTICAL ? sash.getSize().y - LEAST - EDGE : scroll.getSize().y;
			dark = SharpPicture.dark(figures.getBackground());
			job.schedule();
		}
	}

	/** Off the UI thread: what there is to show; shown only where it is another than before, so that nothing flickers. */
	private void draw() {
		CheckedEditor open = editor;
		Optional<CheckedText> checked = open == null ? Optional.empty() : open.check().last();
		if (checked.isPresent() && !picture.isDisposed()) {
			ShownThread now = ShownThread.at(checked.get(), line, dark, width, height);
			picture.getDisplay().asyncExec(() -> {
				if (!picture.isDisposed() && editor == open && !same(now)) {
					show(now);
				}
			});
		}
	}

	private boolean same(ShownThread now) {
		return now.width() == shown.width() && now.height() == shown.height() && now.title().equals(shown.title())
				&& now.text().equals(shown.text()) && now.figures().equals(shown.figures());
	}

	private void show(ShownThread thread) {
		shown = thread;
		title.setText(thread.title().replace("&", "&&"));
		title.requestLayout();
		Image before = image;
		image = thread.picture().map(one -> one.on(picture.getDisplay())).orElse(null);
		picture.setImage(image);
		picture.setToolTipText(thread.text());
		picture.setSize(picture.computeSize(SWT.DEFAULT, SWT.DEFAULT));
		giveRoom();
		if (before != null) {
			before.dispose();
		}
		figures.setRedraw(false);
		figures.removeAll();
		for (SheetFigures.Figure figure : thread.figures()) {
			new TableItem(figures, SWT.NONE).setText(new String[] {figure.name(), figure.value()});
		}
		widen();
		figures.setRedraw(true);
	}

	/** The values are as wide as the longest of them, and never narrower than the view, so that all can be read by scrolling. */
	private void widen() {
		figures.getColumn(1).pack();
		figures.getColumn(1).setWidth(Math.max(figures.getColumn(1).getWidth(), figures.getClientArea().width - NAMES));
	}

	/** One above the other, the drawing takes its height and the numbers the rest. */
	private void giveRoom() {
		int height = sash.getSize().y;
		int wanted = picture.getSize().y + EDGE;
		if (image != null && sash.getOrientation() == SWT.VERTICAL && wanted < height - LEAST) {
			sash.setWeights(wanted, height - wanted);
		}
	}

	@Override
	public void setFocus() {
		figures.setFocus();
	}

	@Override
	public void dispose() {
		getSite().getPage().removePartListener(parts);
		leave();
		job.cancel();
		if (image != null) {
			image.dispose();
		}
		super.dispose();
	}
}
