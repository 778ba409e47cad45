package org.tautlog.accuracy;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPInputStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.signature.Signature;
import org.tautlog.signature.SignatureReader;
import org.tautlog.trace.Curve;

/**
 * The open recorded traces, where they lie beside the checkout, read by the same reader as everything else.
 *
 * <p>Sources: 5,000 tightenings of an automatic station, github.com/nikolaiwest/2023-anomaly-detection-hicss (MIT), labels West
 * and Deuse, doi:10.5281/zenodo.14729547 (CC BY 4.0); 1,210 loosening traces, Al Assadi et al., J. Manuf. Syst. 65 (2022)
 * 19-32 (CC BY 4.0).
 */
final class RecordedTraces {
    /** A low snug torque of these small screws: the joints are other ones, so no window holds. */
    static final TighteningMethod METHOD = new TighteningMethod(1.0, 10);

    /**
     * One run as read, beside what its station said of it.
     *
     * @param ok what the station said
     * @param reuse how often the part had been used before
     * @param labelledPeakNm highest torque by the station's list
     * @param labelledPeakDeg greatest angle by the station's list
     * @param signature what the reader says
     */
    record Run(boolean ok, int reuse, double labelledPeakNm, double labelledPeakDeg, Signature signature) {}

    private RecordedTraces() {}

    static Path folder() {
        var named = System.getProperty("tautlog.data", System.getenv("TAUTLOG_DATA"));
        return Path.of(named == null ? "../shared/data" : named);
    }

    static boolean arePresent() {
        return Files.exists(folder().resolve("industrial_tightening_5000/traces.csv.gz"));
    }

    static List<Run> station() {
        var labels = new HashMap<String, CSVRecord>();
        for (var row : rows(folder().resolve("industrial_tightening_5000/runs.csv"))) {
            labels.put(row.get("run_id"), row);
        }
        var runs = new ArrayList<Run>();
        for (var curve :
                curves("industrial_tightening_5000/traces.csv.gz", 3, 4, 1).entrySet()) {
            var label = labels.get(curve.getKey());
            runs.add(new Run(
                    label.get("result").equals("OK"),
                    Integer.parseInt(label.get("reuse_count")),
                    Double.parseDouble(label.get("peak_torque_Nm")),
                    Double.parseDouble(label.get("peak_angle_deg")),
                    read(curve.getValue())));
        }
        return runs;
    }

    static List<Signature> loosened() {
        return curves("loosening_traces_1210/traces.csv.gz", 1, 2, -1).values().stream()
                .map(RecordedTraces::read)
                .toList();
    }

    private static Signature read(Curve curve) {
        return SignatureReader.read(curve, METHOD, ReadingRule.withDefaults());
    }

    private static Map<String, Curve> curves(String file, int angle, int torque, int stage) {
        var curves = new java.util.LinkedHashMap<String, Curve>();
        String run = "";
        List<double[]> samples = new ArrayList<>();
        try (var rows = parser(folder().resolve(file))) {
            for (var row : rows) {
                if (!row.get(0).equals(run) && !samples.isEmpty()) {
                    curves.put(run, curve(samples));
                    samples.clear();
                }
                run = row.get(0);
                samples.add(new double[] {
                    Double.parseDouble(row.get(angle)),
                    Double.parseDouble(row.get(torque)),
                    stage < 0 ? 1 : Double.parseDouble(row.get(stage))
                });
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        curves.put(run, curve(samples));
        return curves;
    }

    private static Curve curve(List<double[]> samples) {
        return Curve.of(
                        samples.stream().mapToDouble(s -> s[0]).toArray(),
                        samples.stream().mapToDouble(s -> s[1]).toArray())
                .withStages(samples.stream().mapToInt(s -> (int) s[2]).toArray());
    }

    private static List<CSVRecord> rows(Path file) {
        try (var rows = parser(file)) {
            return rows.getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static CSVParser parser(Path file) throws IOException {
        var in = Files.newInputStream(file);
        return CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new InputStreamReader(
                        file.toString().endsWith(".gz") ? new GZIPInputStream(in) : in, StandardCharsets.UTF_8));
    }
}
