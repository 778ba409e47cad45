package org.tautlog.spc;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads the published tables that the tests hold results against. */
public final class Published {
    private Published() {}

    public static List<CSVRecord> rows(String topic) {
        var stream = Published.class.getResourceAsStream("/published/" + topic + ".csv");
        if (stream == null) throw new IllegalArgumentException("no published table " + topic);
        var format = CSVFormat.DEFAULT
                .builder()
                .setCommentMarker('#')
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (var reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
            return format.parse(reader).getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static double[] column(String topic, String name) {
        return rows(topic).stream()
                .mapToDouble(row -> Double.parseDouble(row.get(name)))
                .toArray();
    }

    /** Rows of subgroups: every column but the first. */
    public static double[][] subgroups(String topic) {
        return rows(topic).stream()
                .map(row ->
                        row.stream().skip(1).mapToDouble(Double::parseDouble).toArray())
                .toArray(double[][]::new);
    }

    /** Values of one column by the label in another, in order of first appearance. */
    public static double[][] groups(String topic, String label, String name) {
        var groups = new java.util.LinkedHashMap<String, java.util.List<Double>>();
        for (var row : rows(topic))
            groups.computeIfAbsent(row.get(label), key -> new java.util.ArrayList<>())
                    .add(Double.parseDouble(row.get(name)));
        return groups.values().stream()
                .map(list -> list.stream().mapToDouble(x -> x).toArray())
                .toArray(double[][]::new);
    }

    public static void assertRelative(double expected, double actual, double relative, String what) {
        assertEquals(expected, actual, Math.abs(expected) * relative, what);
    }
}
