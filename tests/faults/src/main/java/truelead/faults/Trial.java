package truelead.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** A seed's good program, or the same with one fault: the text, and the lines at which the fault may be reported. */
record Trial(long seed, Optional<Fault> fault, String text, List<Integer> lines) {

    static Trial good(long seed) {
        return new Trial(seed, Optional.empty(), Programs.print(Planner.plan(seed)).text(), List.of());
    }

    /** The seed's program with this fault; empty where the fault has no place in it. */
    static Optional<Trial> bad(long seed, Fault fault) {
        Job job = Planner.plan(seed);
        List<String> marks = fault.setter().put(job, new Dice(seed * 7919 + 13));
        if (marks.isEmpty()) {
            return Optional.empty();
        }
        Print print = Programs.print(job);
        if (print.text().equals(good(seed).text())) {
            return Optional.empty();
        }
        TreeSet<Integer> lines = new TreeSet<>();
        for (String mark : marks) {
            lines.addAll(print.lines().getOrDefault(mark, List.of()));
            if (mark.equals("anywhere")) {
                print.text().lines().forEach(l -> lines.add(lines.size() + 1));
            }
        }
        return Optional.of(new Trial(seed, Optional.of(fault), print.text(), new ArrayList<>(lines)));
    }

    /** File name that leads back to seed and fault. */
    String name() {
        return fault.map(f -> seed + "-bad.nc").orElse(seed + "-good.nc");
    }
}
