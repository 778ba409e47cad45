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
    private static final List<String> GUARDED = List.of(Cells.AIMS, Cells.NO_RUN_OUT);

    private final List<Cell> cells = new ArrayList<>();
    private final Map<String, Cell> run = new HashMap<>();

    @Test
    void write_the_report() throws IOException {
        for (var name : Cells.ALL.keySet()) {
            for (var generator : Generator.values()) {
                cells.add(run(name, generator));
            }
        }
        Files.createDirectories(REPORTS);
        Files.writeString(REPORTS.resolve("accuracy.md"), page());
        Files.writeString(REPORTS.resolve("accuracy.csv"), table());
    }

    @Test
    void write_the_stored_values() throws IOException {
        var text = new StringBuilder(Aim.HEAD);
        for (var name : GUARDED) {
            for (var generator : Generator.values()) {
                var cell = run(name, generator);
                Arrays.stream(Quality.values())
                        .filter(cell::knows)
                        .forEach(quality -> text.append(Aim.of(cell, quality).row()));
            }
        }
        Files.writeString(STORED, text.toString());
    }

    private Cell run(String name, Generator generator) {
        boolean aims = GUARDED.contains(name) || name.equals(Cells.NEVER);
        return run.computeIfAbsent(
                name + generator, key -> Cell.run(name, generator, Cells.ALL.get(name), aims ? N_AIMS : N));
    }

    private String page() {
        var text = new StringBuilder();
        text.append("""
                # How near the reader comes to the truth

                Simulated tightenings with a known truth, read and compared; `mvn -Dquick test -Dtest=AccuracyStudy` writes this page
                and `accuracy.csv` again, the same to the last digit. Two generators that share no code and none of the reader's
                formulas: *physics* integrates bolt, joint, drive and tool (round knee, relaxation during the pause, breaking loose,
                run-out of 8 % of the prevailing torque); *formula* is built from closed curves. Noise is a share of the final torque.
                Intervals are 95 %: Clopper and Pearson for shares, order statistics for the 95 % error. An error is what was read
                less the truth; "95 %" is the size of error that 95 of 100 found features do not exceed.

                ## The aims

                At 0.5 % noise and steps of 0.5 deg, the onset 40 to 400 deg past the snug point.

                """);
        text.append(
                "| feature | aim | generator | n | found | bias | spread | 95 % (interval) | within the aim (interval) |\n");
        text.append("| --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
        for (var quality : List.of(Quality.SNUG_ANGLE, Quality.TORQUE_RATE, Quality.ONSET_ANGLE)) {
            for (var name : List.of(Cells.AIMS, Cells.NO_RUN_OUT)) {
                for (var cell : named(name)) {
                    aim(text, quality, cell);
                }
            }
        }
        text.append("\n| claim | generator | n | share (interval) |\n| --- | --- | --- | --- |\n");
        for (var cell : named(Cells.NEVER)) {
            line(
                    text,
                    "| onset claimed where there is none | %s | %d | %s |\n",
                    cell.generator.word(),
                    cell.size(),
                    cell.onsetClaimed().words());
        }
        int silent = cells.stream().mapToInt(Cell::failuresWithoutReason).sum();
        int read = cells.stream().mapToInt(Cell::size).sum();
        line(text, "\n%d curves were read for this page; features missing without a reason: %d.\n", read, silent);
        text.append("""

                What bounds the aims that are not reached. *Torque rate*: with n cells of noise s over W deg of straight line no
                unbiased reading is better than sqrt(12) s / (W sqrt(n)); at 0.5 % noise and an onset 40 deg past the snug point, some
                100 deg are straight, which makes 0.25 %. What is left over is not noise: the run-out of the prevailing torque (its
                second swing is only partly seen in less than two turns of rundown), and the seating, which at a closing load of 2 kN
                still moves the line up to some 40 deg past the origin. The rows without run-out show the difference. *Onset*: a knee
                as round as a real bolt's loses its gradient by about 1 % a degree, so 2 % of gradient is 2 deg of onset; a gradient
                over a wider span is quieter and is drawn late by the knee's long tail. The figures are the best of that trade.

                ## Each range by itself

                """);
        for (var quality : Quality.values()) {
            if (quality != Quality.STOP_ANGLE) {
                range(text, quality);
            }
        }
        text.append(
                "### Bounds of the clamp load\n\nShare of the estimates whose bounds hold the truth; 95 % is stated.\n\n");
        text.append("| condition | n | held (interval) |\n| --- | --- | --- |\n");
        for (var cell : cells) {
            if (cell.generator == Generator.PHYSICS) {
                line(
                        text,
                        "| %s | %d | %s |\n",
                        cell.name,
                        cell.size(),
                        cell.loadHeld().words());
            }
        }
        return text.toString();
    }

    private static void aim(StringBuilder text, Quality quality, Cell cell) {
        var errors = cell.errors(quality);
        line(
                text,
                "| %s | %.0f %s | %s%s | %d | %.1f %% | %+.2f | %.2f | %.2f (%.2f to %.2f) | %s |\n",
                quality.title,
                quality.aim,
                quality.unit,
                cell.generator.word(),
                cell.name.equals(Cells.NO_RUN_OUT) ? ", no run-out" : "",
                cell.size(),
                100 * errors.found().value(),
                errors.bias(),
                errors.spread(),
                errors.usual(),
                errors.usualLow(),
                errors.usualHigh(),
                errors.within().words());
    }

    private void range(StringBuilder text, Quality quality) {
        line(
                text,
                "### %s%s, %s\n\n",
                quality.title.substring(0, 1).toUpperCase(Locale.ROOT),
                quality.title.substring(1),
                quality.unit);
        text.append("| condition | found | bias | spread | 95 % | found | bias | spread | 95 % |\n");
        text.append("| --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
        text.append("| | physics | | | | formula | | | |\n");
        for (var name : Cells.ALL.keySet()) {
            if (quality.ofOnset() && name.equals(Cells.NEVER)) {
                continue;
            }
            line(text, "| %s |", name);
            for (var cell : named(name)) {
                boolean none = quality == Quality.CLAMP_LOAD && cell.generator == Generator.FORMULA;
                var errors = cell.errors(quality);
                if (none || errors.found().hits() == 0) {
                    text.append(none ? " - | - | - | - |" : " 0.0 % | - | - | - |");
                } else {
                    line(
                            text,
                            " %.1f %% | %+.2f | %.2f | %.2f |",
                            100 * errors.found().value(),
                            errors.bias(),
                            errors.spread(),
                            errors.usual());
                }
            }
            text.append('\n');
        }
        text.append('\n');
    }

    private String table() {
        var text = new StringBuilder(
                "condition,generator,feature,unit,n,found,bias,spread,usual,usual_low,usual_high,aim,within\n");
        for (var cell : cells) {
            for (var quality : Quality.values()) {
                var errors = cell.errors(quality);
                boolean none = quality == Quality.CLAMP_LOAD && cell.generator == Generator.FORMULA;
                if (!none && errors.found().hits() > 0) {
                    line(
                            text,
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
                            errors.within().hits());
                }
            }
        }
        return text.toString();
    }

    private List<Cell> named(String name) {
        return cells.stream().filter(cell -> cell.name.equals(name)).toList();
    }

    private static void line(StringBuilder text, String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values));
    }
}
