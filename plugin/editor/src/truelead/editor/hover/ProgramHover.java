package truelead.editor.hover;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.jface.text.IInformationControlCreator;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextHover;
import org.eclipse.jface.text.ITextHoverExtension;
import org.eclipse.jface.text.ITextHoverExtension2;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.editors.text.EditorsUI;
import truelead.editor.check.FindingAnnotation;
import truelead.editor.check.LiveCheck;
import truelead.editor.check.ShownFindings;

/** Tells of what is under the mouse: the findings there, with the numbers behind them and what to do, and what the words mean. */
public final class ProgramHover implements ITextHover, ITextHoverExtension, ITextHoverExtension2 {

	private final LiveCheck check;

	public ProgramHover(LiveCheck check) {
		this.check = check;
	}

	@Override
	public Object getHoverInfo2(ITextViewer viewer, IRegion region) {
		Told told = told((ISourceViewer) viewer, region);
		return told.isEmpty() ? null : told;
	}

	@Override
	@Deprecated
	public String getHoverInfo(ITextViewer viewer, IRegion region) {
		Told told = told((ISourceViewer) viewer, region);
		return told.isEmpty() ? null : Stream.concat(told.findings().stream().map(FindingAnnotation::getText),
				told.meaning().stream()).collect(Collectors.joining("\n"));
	}

	private Told told(ISourceViewer viewer, IRegion region) {
		List<FindingAnnotation> findings = ShownFindings.at(viewer.getAnnotationModel(), region.getOffset(), region.getLength());
		return new Told(viewer, findings, Meaning.of(check, viewer.getDocument(), region), picture(findings));
	}

	/** The picture of the first finding that has one; where the screen waits for the answer it comes later. */
	private static CompletableFuture<Optional<Pictures.Picture>> picture(List<FindingAnnotation> findings) {
		return Display.getCurrent() == null || findings.isEmpty() ? CompletableFuture.completedFuture(drawn(findings))
				: CompletableFuture.supplyAsync(() -> drawn(findings));
	}

	private static Optional<Pictures.Picture> drawn(List<FindingAnnotation> findings) {
		return findings.stream().flatMap(annotation -> Pictures.of(annotation.finding(), annotation.checked().result().work())
				.stream()).findFirst();
	}

	@Override
	public IRegion getHoverRegion(ITextViewer viewer, int offset) {
		IAnnotationModel model = ((ISourceViewer) viewer).getAnnotationModel();
		for (FindingAnnotation annotation : ShownFindings.at(model, offset, 0)) {
			Position position = model.getPosition(annotation);
			if (position != null) {
				return new Region(position.getOffset(), position.getLength());
			}
		}
		return Meaning.regionAt(viewer.getDocument(), offset);
	}

	@Override
	public IInformationControlCreator getHoverControlCreator() {
		return shell -> new ToldControl(shell, EditorsUI.getTooltipAffordanceString());
	}

	/** A severity as a word in a sentence. */
	static String word(Enum<?> value) {
		return value.name().toLowerCase(Locale.ROOT);
	}
}
