package truelead.editor.navigate;

import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.Path;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.text.IDocument;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditor;
import truelead.checker.edit.Name;
import truelead.checker.edit.Places;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.CheckedText;
import truelead.editor.command.ProgramCommand;
import truelead.editor.look.Kind;
import truelead.grammar.ProgramText;

/**
 * Goes to what the name at the caret stands for: a block number, a label, a subprogram here or in a file beside this one, where a variable
 * is set.
 */
public final class ToNamed extends ProgramCommand {

	@Override
	protected void run(CheckedEditor editor) {
		go(editor, editor.viewer().getSelectedRange().x);
	}

	/** Goes from a place of the text. */
	static void go(CheckedEditor editor, int caret) {
		Optional<CheckedText> checked = editor.check().last();
		if (checked.isEmpty()) {
			return;
		}
		IDocument document = editor.viewer().getDocument();
		MachineProfile machine = checked.get().result().work().shop().profile();
		Job job = Job.create("Going to what is named", (ICoreRunnable) monitor -> {
			ProgramText text = editor.check().textOf(document);
			Places places = new Places(text, machine);
			int line = text.lineOf(Math.min(caret, text.length()));
			Optional<Name> name = places.at(line, caret - text.lineStart(line)).filter(found -> found.kind() != Name.Kind.WORD);
			Optional<Places.Place> here = name.flatMap(sought -> places.definition(sought, line));
			if (here.isPresent()) {
				onScreen(editor, () -> reveal(editor, text, here.get()));
			} else {
				Optional<ProgramFile> other = name.filter(sought -> sought.kind() == Name.Kind.PROGRAM || sought.kind() == Name.Kind.SUB)
						.flatMap(sought -> checked.get().check().folder().find(sought.key()));
				onScreen(editor, () -> other.ifPresentOrElse(file -> open(editor, file, name.orElseThrow(), machine),
						() -> say(editor, true, name.map(sought -> text.line(line).substring(sought.span().start(), sought.span().end())
								+ " is not in this program, nor in a file beside it")
								.orElse("nothing here that stands for another place"))));
			}
		});
		job.setSystem(true);
		job.schedule();
	}

	private static void onScreen(CheckedEditor editor, Runnable work) {
		editor.getSite().getShell().getDisplay().asyncExec(() -> {
			if (editor.viewer() != null && editor.viewer().getTextWidget() != null) {
				work.run();
			}
		});
	}

	private static void reveal(ITextEditor editor, ProgramText text, Places.Place place) {
		editor.getSite().getPage().getNavigationHistory().markLocation(editor);
		editor.selectAndReveal(text.lineStart(place.line()) + place.name().span().start(), place.name().span().length());
	}

	private static void open(CheckedEditor from, ProgramFile other, Name name, MachineProfile machine) {
		IFile file = Adapters.adapt(from.getEditorInput(), IFile.class);
		if (file == null || !file.getParent().getFile(new Path(other.name())).exists()) {
			say(from, true, "it is in " + other.name() + ", which lies outside the workspace");
			return;
		}
		try {
			IEditorPart opened = IDE.openEditor(from.getSite().getPage(), file.getParent().getFile(new Path(other.name())));
			Optional<Places.Place> place = new Places(other.text(), machine).definition(name, 0);
			if (opened instanceof ITextEditor editor && place.isPresent()) {
				reveal(editor, other.text(), place.get());
			}
		} catch (PartInitException cannotOpen) {
			say(from, true, cannotOpen.getMessage());
		}
	}
}
