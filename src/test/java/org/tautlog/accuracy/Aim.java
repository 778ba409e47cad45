package org.tautlog.accuracy;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * How one feature came out where the study was last written: what the first {@value #N} curves gave, and what they may give at
 * most. The seeds are fixed, so the same reader gives the same values; what is allowed on top is half the width of the study's
 * own 95 % interval.
 *
 * @param condition name of the cell
 * @param generator of which curves
 * @param feature word of the feature
 * @param bias mean error, in the feature's unit
 * @param mostBias how far it may be from 0
 * @param usual error that 95 of 100 do not exceed
 * @param mostUsual what it may be
 * @param within how many are found and within the aim
 * @param leastWithin how many must be
 */
record Aim(
        String condition,
        String generator,
        String feature,
        double bias,
        double mostBias,
        double usual,
        double mostUsual,
        int within,
        int leastWithin) {
    static final int N = 250;
    static final String HEAD = """
            # What the first 250 seeds gave when the accuracy study was last written, and the worst they may give: half of the study's
            # 95 % interval more. Written by mvn -Dquick test -Dtest=AccuracyStudy#write_the_stored_values, never to hide a worse reader.
            condition,generator,feature,bias,mostBias,usual,mostUsual,within,leastWithin
            """;

    static Aim of(Cell study, Quality quality) {
        var all = study.errors(quality);
        var first = study.first(N).errors(quality);
        double fewer = N * (all.within().high() - all.within().low()) / 2;
        return new Aim(
                study.name,
                study.generator.word(),
                quality.word(),
                first.bias(),
                Math.abs(first.bias()) + all.biasHalf(),
                first.usual(),
                first.usual() + (all.usualHigh() - all.usualLow()) / 2,
                first.within().hits(),
                (int) Math.ceil(first.within().hits() - fewer));
    }

    static List<Aim> stored() throws IOException {
        try (var in = new InputStreamReader(
                        Objects.requireNonNull(Aim.class.getResourceAsStream("/accuracy/aims.csv")),
                        StandardCharsets.UTF_8);
                var rows = CSVFormat.DEFAULT
                        .builder()
                        .setCommentMarker('#')
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get()
                        .parse(in)) {
            return rows.stream().map(Aim::of).toList();
        }
    }

    private static Aim of(CSVRecord row) {
        return new Aim(
                row.get("condition"),
                row.get("generator"),
                row.get("feature"),
                Double.parseDouble(row.get("bias")),
                Double.parseDouble(row.get("mostBias")),
                Double.parseDouble(row.get("usual")),
                Double.parseDouble(row.get("mostUsual")),
                Integer.parseInt(row.get("within")),
                Integer.parseInt(row.get("leastWithin")));
    }

    String words() {
        return condition + ", " + generator + ": " + feature;
    }

    Quality quality() {
        return Arrays.stream(Quality.values())
                .filter(quality -> quality.word().equals(feature))
                .findFirst()
                .orElseThrow();
    }

    Generator of() {
        return Generator.valueOf(generator.toUpperCase(Locale.ROOT));
    }

    /** What is worse than it may be, in words; empty where nothing is. */
    String worse(Errors errors) {
        var words = new StringBuilder();
        if (Math.abs(errors.bias()) > mostBias) {
            words.append(words(" bias %.4f, was %.4f, at most %.4f;", errors.bias(), bias, mostBias));
        }
        if (errors.usual() > mostUsual) {
            words.append(words(" 95 %% error %.4f, was %.4f, at most %.4f;", errors.usual(), usual, mostUsual));
        }
        int hits = errors.within().hits();
        if (hits < leastWithin) {
            words.append(words(" %d within the aim, were %d, at least %d;", hits, within, leastWithin));
        }
        return words.toString();
    }

    String row() {
        return words(
                "\"%s\",%s,%s,%.4f,%.4f,%.4f,%.4f,%d,%d\n",
                condition, generator, feature, bias, mostBias, usual, mostUsual, within, leastWithin);
    }

    private static String words(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
