package truelead.checker.callout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What shops write at M0; from memory, no source. */
class PartTurnedTest {

	@ParameterizedTest
	@ValueSource(strings = {"TURN PART OVER", "TURN THE PART OVER", "flip", "FLIP PART 180", "OP 2", "OP20", "2ND OP", "LOAD NEXT PART",
			"UMSPANNEN", "TEIL UMDREHEN", "Teil wenden", "2. SEITE", "RÜCKSEITE", "SPANNUNG 2", "RETOURNER LA PIECE", "AUTRE COTE",
			"VOLTEAR PIEZA", "GIRARE IL PEZZO", "LATO 2", "CHANGE PARTS AND PRESS START", "SETUP 2 - BACK SIDE", "PULL BAR", "NEUE STANGE",
			"TRANSFER PART", "PART TRANSFERRED TO SUBSPINDLE", "GEGENSPINDEL"})
	void anotherPartOrSide(String comment) {
		assertThat(PartTurned.says(comment)).isTrue();
	}

	@ParameterizedTest
	@ValueSource(strings = {"", "CHECK THREAD", "CLEAR CHIPS", "GAUGE M8 HOLES", "OIL THE TAP", "OP 1", "TURN COOLANT ON", "TURN ON PROBE",
			"REMOVE CLAMPS IN MIDDLE", "TIGHTEN CLAMPS", "LOAD M6 TAP", "SPAENE ENTFERNEN", "GEWINDE PRUEFEN", "OPTIONAL STOP",
			"MAIN SPINDLE ONLY", "PART 1 OF THIS FIXTURE", "OPEN DOOR 2 TIMES"})
	void theSameHole(String comment) {
		assertThat(PartTurned.says(comment)).isFalse();
	}
}
