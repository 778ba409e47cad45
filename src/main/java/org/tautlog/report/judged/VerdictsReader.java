package org.tautlog.report.judged;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Verdict;
import org.tautlog.review.stream.ChartedFeature;
import org.tautlog.review.stream.Cue;
import org.tautlog.review.stream.CueReading;
import org.tautlog.review.stream.PastShift;
import org.tautlog.review.stream.SetAside;
import org.tautlog.review.stream.Stream;
import org.tautlog.trace.TraceIdentity;

/** Reads back the table that {@link VerdictsCsv} wrote of an earlier shift, as far as a later one is compared with it. */
public final class VerdictsReader {
    private static final List<String> NEEDED = List.of(
            "verdict",
            "serial",
            "bolt",
            "station",
            "spindle",
            "attempt",
            "time",
            "boltLot",
            "findings",
            "finalTorqueNm");

    private VerdictsReader() {}

    /**
     * Reads a table.
     *
     * @param in the table; left open
     * @return the shift
     * @throws IOException where it cannot be read, or is no such table: what is missing is named
     */
    public static PastShift read(Reader in) throws IOException {
        var format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try {
            var parser = format.parse(in);
            for (var column : NEEDED) {
                if (!parser.getHeaderNames().contains(column)) {
                    throw new IOException("no column '" + column + "'; a table of verdicts of this program has one");
                }
            }
            return of(parser.getRecords());
        } catch (IllegalArgumentException e) {
            throw new IOException("not a table of verdicts of this program: " + e.getMessage(), e);
        }
    }

    private static PastShift of(List<CSVRecord> records) {
        var streams = new TreeMap<Stream, List<CSVRecord>>();
        for (var row : records) {
            if (Integer.parseInt(row.get("attempt")) == 1) {
                streams.computeIfAbsent(
                                new Stream(plain(row.get("station")), plain(row.get("spindle"))),
                                unused -> new ArrayList<>())
                        .add(row);
            }
        }
        var levels = new ArrayList<PastShift.Level>();
        var shares = new ArrayList<PastShift.Share>();
        for (Map.Entry<Stream, List<CSVRecord>> entry : new LinkedHashMap<>(streams).entrySet()) {
            var rows = entry.getValue();
            for (var feature : ChartedFeature.values()) {
                var values = rows.stream()
                        .filter(row -> !bearsFault(row))
                        .map(row -> number(row, feature))
                        .flatMap(value -> value.stream().boxed())
                        .toList();
                levels.add(new PastShift.Level(entry.getKey(), feature, values));
            }
            int conforming = (int) rows.stream()
                    .filter(row -> verdict(row) == Verdict.CONFORMING)
                    .count();
            shares.add(new PastShift.Share(entry.getKey(), conforming, rows.size()));
        }
        return new PastShift(levels, shares, cues(records));
    }

    /** In the table's order; levels are told from all of them together. */
    private static List<CueReading> cues(List<CSVRecord> records) {
        var readings = new ArrayList<CueReading>();
        for (var row : records) {
            int attempt = Integer.parseInt(row.get("attempt"));
            if (attempt == 1 && !bearsFault(row)) {
                var cues = new EnumMap<Cue, Double>(Cue.class);
                for (var cue : Cue.values()) {
                    number(row, cue).ifPresent(value -> cues.put(cue, value));
                }
                var identity = new TraceIdentity(
                        plain(row.get("serial")),
                        plain(row.get("station")),
                        plain(row.get("spindle")),
                        plain(row.get("bolt")),
                        attempt,
                        null,
                        plain(row.get("boltLot")));
                readings.add(new CueReading(identity, cues));
            }
        }
        return readings;
    }

    private static OptionalDouble number(CSVRecord row, Cue cue) {
        return switch (cue) {
            case PREVAILING_TORQUE -> number(row, "prevailingTorqueNm");
            case RUNDOWN -> number(row, "rundownDeg");
            case SNUG_TORQUE -> number(row, "snugTorqueNm");
            case TORQUE_RATE -> number(row, ChartedFeature.TORQUE_RATE);
            case TURN -> number(row, ChartedFeature.TURN);
            case FINAL_TORQUE -> number(row, ChartedFeature.FINAL_TORQUE);
            case END_GRADIENT -> number(row, "finalGradientRatio");
            case SPRING_BACK -> number(row, ChartedFeature.SPRING_BACK);
            case ONSET_TORQUE -> number(row, ChartedFeature.ONSET_TORQUE);
            case ONSET_ANGLE -> number(row, ChartedFeature.ONSET_ANGLE);
        };
    }

    private static OptionalDouble number(CSVRecord row, ChartedFeature feature) {
        return switch (feature) {
            case FINAL_TORQUE -> number(row, "finalTorqueNm");
            case TORQUE_RATE -> number(row, "torqueRateNmPerDeg");
            case TURN -> number(row, "turnDeg");
            case ONSET_TORQUE -> number(row, "yieldOnsetTorqueNm");
            case CLAMP_LOAD -> number(row, "clampLoadKN");
            case SPRING_BACK -> number(row, "springBackDeg");
            case ONSET_ANGLE -> {
                var onset = number(row, "yieldOnsetAngleDeg");
                var origin = number(row, "elasticOriginDeg");
                yield onset.isPresent() && origin.isPresent()
                        ? OptionalDouble.of(onset.getAsDouble() - origin.getAsDouble())
                        : OptionalDouble.empty();
            }
        };
    }

    private static OptionalDouble number(CSVRecord row, String column) {
        var text = row.isMapped(column) ? row.get(column) : "";
        return text.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(text));
    }

    private static boolean bearsFault(CSVRecord row) {
        var words = List.of(row.get("findings").split(" ", -1));
        return SetAside.bearsFault(
                verdict(row),
                Arrays.stream(FindingCode.values())
                        .filter(code -> words.contains(code.word()))
                        .toList());
    }

    private static Verdict verdict(CSVRecord row) {
        return Arrays.stream(Verdict.values())
                .filter(verdict -> verdict.word().equals(row.get("verdict")))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no verdict '" + row.get("verdict") + "'"));
    }

    private static String plain(String cell) {
        return cell.startsWith("'") ? cell.substring(1) : cell;
    }
}
