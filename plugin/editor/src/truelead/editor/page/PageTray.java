package truelead.editor.page;

import java.util.Optional;
import org.eclipse.jface.dialogs.DialogTray;
import org.eclipse.jface.dialogs.TrayDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;
import truelead.help.HelpBook;

/**
 * A chapter of the guide at the side of a dialog, where the dialog keeps everything else from being read: F1 opens it and closes it again.
 */
public final class PageTray extends DialogTray {

	private static final int WIDTH = 360;

	/** A dialog of a few lines is made so high for as long as something is to be read beside it. */
	private static final int LEAST_HEIGHT = 460;

	private final String chapter;
	private final String heading;
	/** Size of the dialog without it, where it was given another one than the platform does. */
	private Optional<Point> before = Optional.empty();

	private PageTray(String chapter, String heading) {
		this.chapter = chapter;
		this.heading = heading;
	}

	/** Lets F1 on a page of a dialog open a chapter; the dialog's own help button, where it has one, too. */
	public static void install(Control page, String chapter) {
		install(page, chapter, "");
	}

	/** The same at a heading of the chapter. */
	public static void install(Control page, String chapter, String heading) {
		boolean[] asked = { false };
		Runnable toggle = () -> {
			// A key can come as a call for help too: once is enough.
			if (!asked[0]) {
				asked[0] = true;
				page.getDisplay().asyncExec(() -> {
					asked[0] = false;
					if (!page.isDisposed()) {
						toggle(page, new PageTray(chapter, heading));
					}
				});
			}
		};
		page.addHelpListener(help -> toggle.run());
		// Some desktops keep F1 from being a call for help.
		Listener key = event -> {
			if (event.keyCode == SWT.F1 && (event.stateMask & SWT.MODIFIER_MASK) == 0 && page.isVisible()
					&& event.widget instanceof Control control && control.getShell() == page.getShell()) {
				event.doit = false;
				event.type = SWT.None;
				toggle.run();
			}
		};
		page.getDisplay().addFilter(SWT.KeyDown, key);
		page.addDisposeListener(gone -> page.getDisplay().removeFilter(SWT.KeyDown, key));
	}

	private static void toggle(Control page, PageTray wanted) {
		if (page.getShell().getData() instanceof TrayDialog dialog) {
			boolean same = dialog.getTray() instanceof PageTray open && open.chapter.equals(wanted.chapter);
			if (dialog.getTray() != null) {
				PageTray open = dialog.getTray() instanceof PageTray tray ? tray : wanted;
				dialog.closeTray();
				open.before.ifPresent(dialog.getShell()::setSize);
			}
			if (!same) {
				Point alone = dialog.getShell().getSize();
				dialog.openTray(wanted);
				wanted.fit(dialog.getShell(), alone);
			}
		}
	}

	/** Makes a low dialog higher, and one that the tray has made wider than the screen as wide as that. */
	private void fit(Shell dialog, Point alone) {
		Rectangle now = dialog.getBounds();
		Rectangle screen = dialog.getMonitor().getClientArea();
		int width = Math.min(now.width, screen.width);
		int height = Math.max(now.height, Math.min(LEAST_HEIGHT, screen.height));
		if (width != now.width || height != now.height) {
			before = Optional.of(alone);
			dialog.setBounds(Math.max(screen.x, Math.min(now.x, screen.x + screen.width - width)),
					Math.max(screen.y, Math.min(now.y, screen.y + screen.height - height)), width, height);
		}
	}

	@Override
	protected Control createContents(Composite parent) {
		Composite area = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().applyTo(area);
		PageText text = new PageText(area);
		GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, 200).applyTo(text.widget());
		show(text, new Reading(HelpBook.named(chapter).orElseGet(HelpBook::overview), "", Optional.empty()));
		// once it has its room
		text.widget().getDisplay().asyncExec(() -> text.goTo(heading));
		return area;
	}

	private static void show(PageText text, Reading reading) {
		text.show(PageLayout.of(reading, next -> show(text, new Reading(next, "", Optional.empty()))));
	}
}
