package truelead.forms;

import java.util.List;

/** All forms. */
final class Forms {

	static final List<Form> ALL = List.of(new QuarterTurned(), new TurnedByThirty(), new Moved(), new Raised(150), new Raised(-60),
			new LocalZero(), new TurnedBack(),
			new AnotherOffset(), new FurtherOffset(), new InInches(), new FeedPerTurn(), new FeedInEachBlock(), new FeedBeforeTheCycle(),
			new WordsInAnotherOrder(),
			new MoreDecimals(), new FewerZeros(), new CodesOfTwoDigits(), new SmallLetters(), new Packed(), new Spaced(), new Unnumbered(),
			new Numbered(), new Modal(),
			new UnsaidMotion(), new SmallComments(), new SemicolonComments(), new ToolNamed(ToolNamed.Where.ABOVE),
			new ToolNamed(ToolNamed.Where.BESIDE),
			new ToolNamed(ToolNamed.Where.BELOW), new RemarksBetween(), new BlankLines(), new LinesEndedByTwo(), new PlacesByIncrements(),
			new PlacesByRepeats('K'),
			new PlacesByRepeats('L'), new PlacesByALoop(), new PlacesInSubprograms(false), new PlacesInSubprograms(true),
			new PlaceBeforeTheCycle(), new CycleDefinedAlone('K'),
			new CycleDefinedAlone('L'), new CycleAtEachHole(), new CycleEndedAtEachHole(), new CycleEndedByG0(), new LongHand(),
			new PolarPlaces(), new NumbersInVariables(),
			new PeckedToTheTop(), new NextToolCalled(), new ToolInTwoBlocks(), new ChangeBeforeTool(), new SafeBetweenTools(),
			new StopsBetweenTools(), new SafeLineAtEachTool(),
			new SpeedInItsOwnBlock(), new ToolsInSubprograms(), new ChangesInASubprogram(), new OffsetFirst(), new ToolsRenumbered(),
			new HelixByIncrements(),
			new ArcsInParts(2), new ArcsInParts(4), new ArcsByRadius(), new CirclesWithTheirEnd(), new CirclesWithoutTheirEnd(),
			new CentresWritten(), new CentresAbsolute(),
			new HelicesInChords(), new RowsTwice(), new CyclesByIncrements(), new BackToTheInitialLevel(), new PlacesByCalls(),
			new CyclesInMacros(), new NamesInAList(), new DwellBeforeTapping(), new ToolWordsShort(), new ThreadingPassesWhole(),
			new G33ForG32(), new MovesByUAndW(),
			new OneAfterTheOther(new ArcsInParts(4), new ArcsByRadius()),
			new OneAfterTheOther(new ArcsInParts(4), new HelixByIncrements()));

	private Forms() {
	}
}
