package org.tautlog.accuracy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.judge.Judge;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.line.Fault;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.signature.MadeCurve;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;
import org.tautlog.trace.TraceIdentity;

/**
 * The fault study: not a test but a program, run by {@code mvn -Dquick test -Dtest=FaultStudy}. It writes
 * {@code reports/faults.html} and {@code reports/faults.csv}; the seeds are the numbers from 1 on.
 */
class FaultStudy {
    private static final int N = 400;
    private static final int N_GOOD = 6_000;
    private static final int N_POOR = 1_000;
    private static final int ENGINES = 520;
    private static final Path REPORTS = Path.of("reports");

    /**
     * One fault at one size.
     *
     * @param fault which
     * @param size how large
     * @param found one of its own codes was found and the tightening did not pass
     * @param called one of them came first
     * @param alarmed the tightening did not pass
     * @param first how often each code came first
     */
    record Graded(FaultCase fault, double size, Share found, Share called, Share alarmed, Map<String, Integer> first) {}

    /**
     * Good tightenings.
     *
     * @param name where from
     * @param alarms how many did not pass
     * @param codes what they were called
     */
    record Good(String name, Share alarms, Map<String, Integer> codes) {}

    @Test
    void write_the_report() throws IOException {
        var graded = new ArrayList<Graded>();
        for (var fault : Faults.all()) {
            for (double size : fault.sizes()) {
                graded.add(grade(fault, size, N));
            }
        }
        var good = new ArrayList<>(List.of(made(N_GOOD), line(ENGINES)));
        good.addAll(poor(N_POOR));
        Files.createDirectories(REPORTS);
        Files.writeString(REPORTS.resolve("faults.html"), FaultPage.of(graded, good));
        Files.writeString(REPORTS.resolve("faults.csv"), table(graded, good));
    }

    static Graded grade(FaultCase fault, double size, int n) {
        var judgements = IntStream.rangeClosed(1, n)
                .parallel()
                .mapToObj(seed -> judge(fault.curve(seed, size), Faults.SPECIFICATION))
                .toList();
        int found = (int)
                judgements.stream().filter(judgement -> found(judgement, fault)).count();
        int alarmed = (int) judgements.stream().filter(FaultStudy::alarmed).count();
        int called = (int) judgements.stream()
                .filter(judgement -> found(judgement, fault)
                        && fault.codes().contains(judgement.findings().get(0).code()))
                .count();
        return new Graded(
                fault, size, new Share(found, n), new Share(called, n), new Share(alarmed, n), firsts(judgements));
    }

    static Good made(int n) {
        return made("formula, ordinary", n, made -> {});
    }

    /** Good tightenings whose recording is as poor as the stated ranges allow. */
    static List<Good> poor(int n) {
        return List.of(
                made("formula, noise of 1 % of the final torque", n, made -> made.noiseNm = 0.75),
                made("formula, torque in steps of 0.5 N·m", n, made -> made.torqueStepNm = 0.5),
                made("formula, steps of 0.5 N·m at 1 kHz, noise of 0.2 N·m", n, made -> stepped(made, 0.5, 0.2)),
                made("formula, steps of 0.2 N·m at 1 kHz, noise of 0.07 N·m", n, made -> stepped(made, 0.2, 0.07)));
    }

    private static void stepped(MadeCurve made, double torqueStepNm, double noiseNm) {
        made.kiloHertz = 1;
        made.torqueStepNm = torqueStepNm;
        made.noiseShare = 0;
        made.noiseNm = noiseNm;
    }

    private static Good made(String name, int n, Consumer<MadeCurve> change) {
        var judgements = IntStream.rangeClosed(1, n)
                .parallel()
                .mapToObj(seed -> {
                    var made = Faults.ordinary(seed);
                    change.accept(made);
                    return judge(made.make(), Faults.SPECIFICATION);
                })
                .filter(FaultStudy::alarmed)
                .toList();
        return new Good(name, new Share(judgements.size(), n), firsts(judgements));
    }

    /** The simulated line under its released specification, bolts without a fault of their own. */
    static Good line(int engines) {
        var alarms = new ConcurrentHashMap<String, Integer>();
        int[] counts = new int[2];
        SimulatedLine.of(engines, 11).tightenings().forEach(done -> {
            if (done.truth().fault() == Fault.NONE) {
                counts[0]++;
                var judgement = Judge.judge(done.trace(), FenwaterEngine.specification());
                if (alarmed(judgement)) {
                    counts[1]++;
                    alarms.merge(first(judgement), 1, Integer::sum);
                }
            }
        });
        return new Good("simulated line, released window", new Share(counts[1], counts[0]), new TreeMap<>(alarms));
    }

    private static boolean alarmed(Judgement judgement) {
        return judgement.verdict() != Verdict.CONFORMING;
    }

    private static boolean found(Judgement judgement, FaultCase fault) {
        return alarmed(judgement)
                && judgement.findings().stream()
                        .anyMatch(finding -> fault.codes().contains(finding.code()));
    }

    private static String first(Judgement judgement) {
        return alarmed(judgement) ? judgement.findings().get(0).code().word() : "conforming";
    }

    private static Map<String, Integer> firsts(List<Judgement> judgements) {
        return judgements.stream()
                .collect(Collectors.toMap(FaultStudy::first, judgement -> 1, Integer::sum, TreeMap::new));
    }

    static Judgement judge(Curve curve, JointSpecification specification) {
        var identity = new TraceIdentity("FW-000001", "S40", "1", "3", 1, null, "A17");
        return Judge.judge(new Trace(identity, new Source("made.csv", 1, ""), curve), specification);
    }

    private static String table(List<Graded> graded, List<Good> good) {
        var text =
                new StringBuilder("tightening,size,unit,matters,n,found,called_so,not_conforming,called_first,times\n");
        for (var row : graded) {
            row.first()
                    .forEach((code, times) -> text.append(String.format(
                            Locale.ROOT,
                            "\"%s\",%s,\"%s\",%s,%d,%d,%d,%d,%s,%d%n",
                            row.fault().name(),
                            row.size(),
                            row.fault().unit(),
                            row.size() == row.fault().matters(),
                            row.found().n(),
                            row.found().hits(),
                            row.called().hits(),
                            row.alarmed().hits(),
                            code,
                            times)));
        }
        for (var row : good) {
            text.append(String.format(
                    Locale.ROOT,
                    "\"good: %s\",,,,%d,,,%d,,%n",
                    row.name(),
                    row.alarms().n(),
                    row.alarms().hits()));
        }
        return text.toString();
    }
}
