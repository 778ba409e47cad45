package org.tautlog.signature;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.zip.GZIPInputStream;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.trace.Curve;

/**
 * Real traces read without failing, and their stops told from the spring-back.
 *
 * <p>Sources: 5,000 tightenings of an automatic station, github.com/nikolaiwest/2023-anomaly-detection-hicss (MIT), labels
 * West and Deuse, doi:10.5281/zenodo.14729547 (CC BY 4.0); 1,210 loosening traces, Al Assadi et al., J. Manuf. Syst. 65
 * (2022) 19-32 (CC BY 4.0). They lie outside the checkout, in the folder that the system property or environment variable
 * names; without them the tests are skipped.
 */
class RecordedTracesTest {
    private static Path data(String file) {
        var named = System.getProperty("tautlog.data", System.getenv("TAUTLOG_DATA"));
        var path = Path.of(named == null ? "../shared/data" : named, file);
        assumeTrue(Files.exists(path), () -> "no recorded traces at " + path + "; set -Dtautlog.data to their folder");
        return path;
    }

    /** Hands over the rows of one run after the other: angle, torque and, where there is a fourth column, stage. */
    private static int eachRun(Path file, int angle, int torque, int stage, Consumer<Curve> taker) throws IOException {
        int runs = 0;
        try (var in = new GZIPInputStream(Files.newInputStream(file));
                var rows = CSVFormat.DEFAULT
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get()
                        .parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            String run = "";
            List<double[]> samples = new ArrayList<>();
            for (var row : rows) {
                if (!row.get(0).equals(run) && !samples.isEmpty()) {
                    taker.accept(curve(samples));
                    runs++;
                    samples.clear();
                }
                run = row.get(0);
                samples.add(new double[] {
                    Double.parseDouble(row.get(angle)),
                    Double.parseDouble(row.get(torque)),
                    stage < 0 ? 1 : Double.parseDouble(row.get(stage))
                });
            }
            taker.accept(curve(samples));
            return runs + 1;
        }
    }

    private static Curve curve(List<double[]> samples) {
        return Curve.of(
                        samples.stream().mapToDouble(s -> s[0]).toArray(),
                        samples.stream().mapToDouble(s -> s[1]).toArray())
                .withStages(samples.stream().mapToInt(s -> (int) s[2]).toArray());
    }

    @Test
    void five_thousand_station_tightenings_stop_before_they_spring_back() throws IOException {
        var method = new TighteningMethod(1.0, 10);
        var back = new ArrayList<Double>();
        var peakShare = new ArrayList<Double>();
        int runs = eachRun(data("industrial_tightening_5000/traces.csv.gz"), 3, 4, 1, curve -> {
            var signature = SignatureReader.read(curve, method, ReadingRule.withDefaults());
            back.add(signature.marks().springBackDeg().number());
            double greatest = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < curve.size(); i++) {
                greatest = Math.max(greatest, curve.angleDeg(i));
            }
            assertEquals(greatest, signature.end().angleDeg().number(), 0.03);
            peakShare.add(signature.end().torqueNm().number()
                    / signature.end().peakTorqueNm().number());
            assertTrue(signature.snug().angleDeg().isFound()
                    || !signature.snug().angleDeg().whyMissing().isBlank());
            assertTrue(signature.elastic().originDeg().isFound()
                    || !signature.elastic().originDeg().whyMissing().isBlank());
        });
        assertEquals(5000, runs);
        back.sort(Double::compare);
        assertEquals(3, back.get(runs / 20), 0.01);
        assertEquals(4.5, back.get(runs * 19 / 20), 0.01);
        peakShare.sort(Double::compare);
        assertEquals(1, peakShare.get(runs / 2), 0.02, "torque at the stop over peak torque");
    }

    @Test
    void loosening_traces_are_read_and_all_but_one_hold_no_snug_point() throws IOException {
        var method = new TighteningMethod(1.0, 10);
        int[] found = {0};
        int runs = eachRun(data("loosening_traces_1210/traces.csv.gz"), 1, 2, -1, curve -> {
            var signature = SignatureReader.read(curve, method, ReadingRule.withDefaults());
            found[0] += signature.snug().angleDeg().isFound() ? 1 : 0;
        });
        assertTrue(runs >= 1209, runs + " runs");
        assertTrue(found[0] <= 1, found[0] + " with a snug point");
    }
}
