package truelead.faults;

import java.util.List;
import java.util.Map;

/** A program as text, and on which lines (from 1) each mark stands. */
record Print(String text, Map<String, List<Integer>> lines) {
}
