package truelead.grammar;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.antlr.v4.runtime.atn.ATN;
import org.antlr.v4.runtime.atn.LexerATNSimulator;
import org.antlr.v4.runtime.atn.ParserATNSimulator;
import org.antlr.v4.runtime.atn.PredictionContextCache;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.antlr.v4.runtime.dfa.DFA;

/**
 * What ANTLR learns while it reads, shared by all readers. Its own caches grow without bound as new texts come; these are thrown away as a
 * whole once they have more than {@link BlockReader#MAX_CACHED_STATES} states, and learned anew.
 */
final class Caches {

	/** Readings between two looks at the size. */
	private static final int LOOK = 256;
	private static final AtomicReference<Caches> CURRENT = new AtomicReference<>(new Caches());

	private final DFA[] lexer = fresh(GCodeLexer._ATN);
	private final DFA[] parser = fresh(GCodeParser._ATN);
	private final PredictionContextCache contexts = new PredictionContextCache();
	private final AtomicInteger readings = new AtomicInteger();

	private static DFA[] fresh(ATN atn) {
		DFA[] states = new DFA[atn.getNumberOfDecisions()];
		for (int i = 0; i < states.length; i++) {
			states[i] = new DFA(atn.getDecisionState(i), i);
		}
		return states;
	}

	/** The caches in use now. */
	static Caches current() {
		Caches caches = CURRENT.get();
		if (caches.readings.incrementAndGet() % LOOK == 0 && caches.states() > BlockReader.MAX_CACHED_STATES) {
			CURRENT.compareAndSet(caches, new Caches());
		}
		return CURRENT.get();
	}

	/** Lets a lexer use them. */
	GCodeLexer use(GCodeLexer reader) {
		reader.setInterpreter(new LexerATNSimulator(reader, GCodeLexer._ATN, lexer, contexts));
		return reader;
	}

	/** Lets a parser use them. */
	GCodeParser use(GCodeParser reader) {
		ParserATNSimulator interpreter = new ParserATNSimulator(reader, GCodeParser._ATN, parser, contexts);
		interpreter.setPredictionMode(PredictionMode.SLL);
		reader.setInterpreter(interpreter);
		return reader;
	}

	/** The number of states learned. */
	int states() {
		int count = contexts.size();
		for (DFA dfa : lexer) {
			count += dfa.states.size();
		}
		for (DFA dfa : parser) {
			count += dfa.states.size();
		}
		return count;
	}
}
