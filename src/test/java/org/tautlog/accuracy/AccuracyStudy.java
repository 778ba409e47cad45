package org.tautlog.accuracy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * The accuracy study: not a test but a program, run by {@code mvn -Dquick test -Dtest=AccuracyStudy}, two to three minutes. It
 * writes {@code reports/accuracy.md}, {@code reports/accuracy.csv} and the values that {@link AccuracyAimsTest} guards; the seeds
 * are the numbers from 1 on.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AccuracyStudy {
    private static final int N = 600;
    private static final int N_AIMS = 4_000;
    private static final Path REPORTS = Path.of("reports");

    private static final Path STORED = Path.of("src", "test", "resources", "accuracy", "aims.csv");
    private static final List<String> GUARDED = List.of(Cells.AIMS, Cells.NO_RUN_OUT, Cells.SPRINGS);

    private final List<Cell> cells = new ArrayList<>();
    private final Map<String, Cell> run = new HashMap<>();

    @Test
    void write_the_report() throws IOException {
        for (var name : Cells.ALL.keySet()) {
            for (var generator : generators(name)) {
                cells.add(run(name, generator));
            }
        }
        Files.createDirectories(REPORTS);
        Files.writeString(REPORTS.resolve("accuracy.md"), AccuracyPage.of(cells));
        Files.writeString(REPORTS.resolve("accuracy.csv"), table());
    }

    @Test
    void write_the_stored_values() throws IOException {
        var text = new StringBuilder(Aim.HEAD);
        for (var name : GUARDED) {
            for (var generator : generators(name)) {
                var cell = run(name, generator);
                Arrays.stream(Quality.values())
                        .filter(quality ->
                                cell.knows(quality) && (!name.equals(Cells.SPRINGS) || quality == Quality.CLAMP_LOAD))
                        .forEach(quality -> text.append(Aim.of(cell, quality).row()));
            }
        }
        Files.writeString(STORED, text.toString());
    }

    private static List<Generator> generators(String name) {
        return Arrays.stream(Generator.values())
                .filter(generator -> Cells.ALL.get(name).drawnBy(generator))
                .toList();
    }

    private Cell run(String name, Generator generator) {
        boolean many = name.startsWith("aims") || name.equals(Cells.NEVER);
        return run.computeIfAbsent(
                name + generator, key -> Cell.run(name, generator, Cells.ALL.get(name), many ? N_AIMS : N));
    }

    private String table() {
        var text = new StringBuilder(
                "condition,generator,feature,unit,n,found,bias,spread,usual,usual_low,usual_high,aim,within\n");
        for (var cell : cells) {
            for (var quality : Quality.values()) {
                var errors = cell.errors(quality);
                if (cell.knows(quality) && errors.found().hits() > 0) {
                    text.append(String.format(
                            Locale.ROOT,
                            "\"%s\",%s,%s,%s,%d,%d,%.4f,%.4f,%.4f,%.4f,%.4f,%.1f,%d\n",
                            cell.name,
                            cell.generator.word(),
                            quality.word(),
                            quality.unit,
                            cell.size(),
                            errors.found().hits(),
                            errors.bias(),
                            errors.spread(),
                            errors.usual(),
                            errors.usualLow(),
                            errors.usualHigh(),
                            quality.aim,
                            errors.within().hits()));
                }
            }
        }
        return text.toString();
    }
}
