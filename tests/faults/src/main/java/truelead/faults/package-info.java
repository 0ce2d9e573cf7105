/**
 * The fault bench: seeded good threading programs, and faults put into them one at a time. It knows nothing of the
 * checker but its command and the names of the rules; threads, holes and feeds are worked out here a second time.
 *
 * <p>{@code tests/faults} writes good threading programs from seeds, one in five for a lathe, and puts some hundred and thirty faults into
 * them, one at a time. Beside some programs stands a machine profile of the folder ({@code Machine}). The bench imports nothing of ours,
 * has its own table of threads and its own arithmetic, and hears of the checker only what {@code check} writes as SARIF. A few hundred
 * programs are part of the tests; ten thousand good ones and ten thousand with a fault:
 * <pre>
 *     mvn -q -Dplain -DskipTests package
 *     java -cp tests/faults/target/classes:plugin/audit/target/truelead.jar truelead.faults.Bench 10000
 * </pre>
 *
 * <p>The table at the end says for each fault how often it was put in, found by the right rule at the right block, found elsewhere, missed,
 * and what else was said above information; before it stand the first offenders with their seed. More arguments: first seed, offenders of a
 * kind. {@code truelead.faults.Show SEED} prints a seed's good program, {@code truelead.faults.Show SEED "FAULT"} the faulty one and the
 * lines where the fault may be reported. A new fault is one entry in the list of its kind ({@code TappingFaults}, {@code HoleFaults},
 * {@code TurnFaults}, ...): its name, the rule, what it changes in the plan or in the written blocks, and the marks of those blocks. Lathe
 * programs are planned by {@code TurnPlan} in the manner of a {@code Hand}; their faults are in {@code TurnFaults} and
 * {@code TurnHoleFaults}, those of machine, tool and class in {@code ToolFaults}. A fault has no place where the program gives no evidence
 * of it (a thread that nothing names, a surface that nobody knows). Where bench and rule page disagree the page holds.
 */
package truelead.faults;
