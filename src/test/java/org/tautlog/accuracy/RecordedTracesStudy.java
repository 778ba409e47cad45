package org.tautlog.accuracy;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tautlog.accuracy.RecordedTraces.Run;
import org.tautlog.signature.EndState;
import org.tautlog.signature.Feature;
import org.tautlog.signature.Signature;

/**
 * What recorded traces teach: not a test but a program, run by {@code mvn -Dquick test -Dtest=RecordedTracesStudy} where the
 * data lies beside the checkout. It writes {@code reports/recorded-traces.md}.
 */
class RecordedTracesStudy {
    private static final int REUSES_A_ROW = 5;

    @Test
    void write_the_report() throws IOException {
        assumeTrue(RecordedTraces.arePresent(), () -> "no recorded traces at " + RecordedTraces.folder());
        var station = RecordedTraces.station();
        var loosened = RecordedTraces.loosened();
        var text = new StringBuilder();
        text.append("""
                # What recorded traces teach

                Two open sets of real traces, read by the program's own reader; `mvn -Dquick test -Dtest=RecordedTracesStudy` writes
                this page again where the data lies beside the checkout (it is not in the repository). The joints are other ones, small
                screws, so the window says nothing; the reading of the curve must hold.

                Sources: 5,000 tightenings of an automatic station, thread-forming screws in plastic to 1.4 N·m
                (github.com/nikolaiwest/2023-anomaly-detection-hicss, MIT; labels West and Deuse, doi:10.5281/zenodo.14729547, CC BY 4.0);
                1,210 loosening traces (Al Assadi et al., J. Manuf. Syst. 65 (2022) 19-32, CC BY 4.0).

                ## 5,000 tightenings of a station

                """);
        line(text, "| what was read (snug torque 1.0 N·m) | of %d |\n| --- | --- |\n", station.size());
        found(text, "snug point", station, s -> s.snug().angleDeg());
        found(text, "elastic line", station, s -> s.elastic().torqueRateNmPerDeg());
        found(text, "prevailing torque", station, Signature::prevailingTorqueNm);
        found(text, "yield onset by gradient", station, s -> s.onset().angleDeg());
        found(text, "final torque", station, s -> s.end().torqueNm());
        long silent = station.stream()
                .map(Run::signature)
                .flatMap(s -> List.of(
                        s.snug().angleDeg(), s.elastic().originDeg(), s.onset().angleDeg())
                        .stream())
                .filter(feature -> !feature.isFound() && feature.whyMissing().isBlank())
                .count();
        line(text, "\nFeatures missing without a reason: %d. Why there is no elastic line:\n\n", silent);
        reasons(text, station);
        text.append("\n| against the station's own list | median | 5 to 95 % |\n| --- | --- | --- |\n");
        spread(
                text,
                "peak torque read less listed, N·m",
                station,
                run -> run.signature().end().peakTorqueNm().number() - run.labelledPeakNm());
        spread(
                text,
                "angle at the stop less listed peak angle, deg",
                station,
                run -> run.signature().end().angleDeg().number() - run.labelledPeakDeg());
        spread(
                text,
                "spring-back, deg",
                station,
                run -> run.signature().marks().springBackDeg().number());
        spread(
                text,
                "torque at the stop over peak torque",
                station,
                run -> run.signature().end().torqueNm().number()
                        / run.signature().end().peakTorqueNm().number());
        spread(text, "pauses joined", station, run -> run.signature().marks().pauses());
        spread(
                text,
                "back-steps outside pauses and spring-back",
                station,
                run -> run.signature().marks().backSteps());
        text.append("""

                The failures rise with the reuse of the part, as its authors say; what the reader sees of it:

                | times used before | n | failed by the station (interval) | final torque, median N·m | peak angle, median deg | torque rate, median N·m/deg | end plastic or in the onset zone |
                | --- | --- | --- | --- | --- | --- | --- |
                """);
        var byReuse = station.stream()
                .collect(Collectors.groupingBy(run -> run.reuse() / REUSES_A_ROW, TreeMap::new, Collectors.toList()));
        byReuse.forEach((row, runs) -> {
            int failed = (int) runs.stream().filter(run -> !run.ok()).count();
            int bent = (int) runs.stream()
                    .filter(run -> run.signature().onset().endState() == EndState.PLASTIC
                            || run.signature().onset().endState() == EndState.ONSET_ZONE)
                    .count();
            line(
                    text,
                    "| %d to %d | %d | %s | %.3f | %.1f | %.4f | %.1f %% |\n",
                    row * REUSES_A_ROW,
                    row * REUSES_A_ROW + REUSES_A_ROW - 1,
                    runs.size(),
                    new Share(failed, runs.size()).words(),
                    at(runs, 0.5, run -> run.signature().end().torqueNm().number()),
                    at(runs, 0.5, run -> run.signature().end().angleDeg().number()),
                    at(
                            runs.stream()
                                    .filter(run -> run.signature()
                                            .elastic()
                                            .torqueRateNmPerDeg()
                                            .isFound())
                                    .toList(),
                            0.5,
                            run -> run.signature()
                                    .elastic()
                                    .torqueRateNmPerDeg()
                                    .number()),
                    100.0 * bent / runs.size());
        });
        text.append("""

                What was learned:

                * The final point is never the last sample: the tool springs back by 3 to 4.5 deg, and what the reader takes as peak and
                  stop agrees with the station's list to the last digit in 90 of 100 runs and more.
                * A thread-forming screw turns 1,700 deg and seats within some 10 to 20 deg: two thirds have no elastic zone 20 deg long,
                  and the reader says so in place of a line through the seating. Of those it reads, the torque rate falls with reuse.
                * Failures rise with reuse while the final torque stays within 1 %: the angle at the stop falls by 120 deg. A torque window
                  alone would not see the wear; torque and angle together do.

                ## Loosening traces

                """);
        long snug = loosened.stream().filter(s -> s.snug().angleDeg().isFound()).count();
        long back = loosened.stream().filter(s -> s.marks().backSteps() > 0).count();
        long springs = loosened.stream()
                .filter(s -> s.marks().springBackDeg().number() > 0)
                .count();
        line(
                text,
                "%d ids for 1,210 runs: one id stands twice, with the same samples. %d have a snug point (a loosening has none). %d step"
                        + " back in angle at their end, past the greatest angle: the drive untwists, and they are read as spring-back;"
                        + " %d step back before it.\n",
                loosened.size(),
                snug,
                springs,
                back);
        Files.createDirectories(Path.of("reports"));
        Files.writeString(Path.of("reports", "recorded-traces.md"), text.toString());
    }

    private static void found(StringBuilder text, String name, List<Run> runs, Function<Signature, Feature> feature) {
        int hits = (int) runs.stream()
                .filter(run -> feature.apply(run.signature()).isFound())
                .count();
        line(text, "| %s | %d, %.1f %% |\n", name, hits, 100.0 * hits / runs.size());
    }

    private static void reasons(StringBuilder text, List<Run> runs) {
        Map<String, Long> reasons = runs.stream()
                .map(run -> run.signature().elastic().torqueRateNmPerDeg())
                .filter(feature -> !feature.isFound())
                .collect(Collectors.groupingBy(
                        feature -> feature.whyMissing().replaceAll("[0-9]+(\\.[0-9]+)?", "x"),
                        TreeMap::new,
                        Collectors.counting()));
        reasons.forEach((reason, times) -> line(text, "* %d: %s\n", times, reason));
    }

    private static void spread(StringBuilder text, String name, List<Run> runs, ToDoubleFunction<Run> value) {
        line(
                text,
                "| %s | %.3f | %.3f to %.3f |\n",
                name,
                at(runs, 0.5, value),
                at(runs, 0.05, value),
                at(runs, 0.95, value));
    }

    private static double at(List<Run> runs, double share, ToDoubleFunction<Run> value) {
        var sorted = runs.stream().mapToDouble(value).sorted().toArray();
        return sorted.length == 0 ? Double.NaN : sorted[(int) (share * (sorted.length - 1))];
    }

    private static void line(StringBuilder text, String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, Arrays.copyOf(values, values.length)));
    }
}
