package org.tautlog.accuracy;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tautlog.line.FenwaterEngine;

/** The page of the accuracy study. */
final class AccuracyPage {
    private static final List<String> PLAIN = List.of(Cells.AIMS, Cells.NO_RUN_OUT);
    private static final List<String> RUN_OUTS =
            List.of(Cells.AIMS, Cells.NO_RUN_OUT, Cells.FADING, Cells.THIRD, Cells.WANDER);

    private final List<Cell> cells;
    private final StringBuilder text = new StringBuilder();

    private AccuracyPage(List<Cell> cells) {
        this.cells = cells;
    }

    static String of(List<Cell> cells) {
        return new AccuracyPage(cells).page();
    }

    private String page() {
        text.append("""
                # How near the reader comes to the truth

                Simulated tightenings with a known truth, read and compared; `mvn -Dquick test -Dtest=AccuracyStudy` writes this page
                and `accuracy.csv` again, the same to the last digit. Two generators that share no code: *physics* integrates bolt,
                joint, drive and tool (round knee, relaxation during the pause, breaking loose); its free turning runs out of true by
                8 % of the prevailing torque once a turn and 4 % at 3.1 a turn. *formula* is built from closed curves, its run-out is
                3 % once a turn. What the program takes out of the free turning are at most two even swings, so the physics' run-out is
                of the kind it looks for; the rows "fades under load" (by a factor e each 8 kN), "third swing" (4 % at 1.7 a turn) and
                "phase wanders" (57 deg to and fro, over some seven turns) are not. "-": not drawn by that generator. Sampled by time,
                the speed swings by half about its mean. Noise is a share of the final torque. Intervals are 95 %: Clopper and Pearson
                for shares, order statistics for the 95 % error. An error is what was read less the truth; "95 %" is the size of error
                that 95 of 100 found features do not exceed.

                ## The aims

                At 0.5 % noise and steps of 0.5 deg, the onset 40 to 400 deg past the snug point.

                """);
        text.append(
                "| feature | aim | generator | n | found | bias | spread | 95 % (interval) | within the aim (interval) |\n");
        text.append("| --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
        aims(Quality.SNUG_ANGLE, PLAIN);
        aims(Quality.TORQUE_RATE, RUN_OUTS);
        aims(Quality.ONSET_ANGLE, RUN_OUTS);
        text.append("\n| claim | generator | n | share (interval) |\n| --- | --- | --- | --- |\n");
        for (var cell : named(Cells.NEVER)) {
            line(
                    "| onset claimed where there is none | %s | %d | %s |\n",
                    cell.generator.word(), cell.size(), cell.onsetClaimed().words());
        }
        int silent = cells.stream().mapToInt(Cell::failuresWithoutReason).sum();
        int read = cells.stream().mapToInt(Cell::size).sum();
        line("\n%d curves were read for this page; features missing without a reason: %d.\n", read, silent);
        text.append("""

                ### What bounds the torque rate

                With n samples of noise s over W deg of straight line no unbiased reading is better than sqrt(12) s / (W sqrt(n)); at
                0.5 % noise and an onset 40 deg past the snug point, some 100 deg are straight, which makes 0.25 %. What is left over
                is not noise: the run-out of the prevailing torque (its second swing is only partly seen in less than two turns of
                rundown), and the seating, which at a closing load of 2 kN still moves the line up to some 40 deg past the origin.

                """);
        text.append(OnsetBound.page());
        loads();
        text.append("\n## Each range by itself\n\n");
        for (var quality : Quality.values()) {
            if (quality != Quality.STOP_ANGLE) {
                range(quality);
            }
        }
        held();
        return text.toString();
    }

    private void aims(Quality quality, List<String> names) {
        for (var name : names) {
            named(name).forEach(cell -> aim(quality, cell));
        }
    }

    private void aim(Quality quality, Cell cell) {
        var errors = cell.errors(quality);
        line(
                "| %s | %.0f %s | %s%s | %d | %.1f %% | %+.2f | %.2f | %.2f (%.2f to %.2f) | %s |\n",
                quality.title,
                quality.aim,
                quality.unit,
                cell.generator.word(),
                condition(cell),
                cell.size(),
                100 * errors.found().value(),
                errors.bias(),
                errors.spread(),
                errors.usual(),
                errors.usualLow(),
                errors.usualHigh(),
                errors.within().words());
    }

    private static String condition(Cell cell) {
        boolean plain = cell.name.equals(Cells.AIMS) || cell.name.equals(Cells.SPRINGS);
        return plain ? "" : cell.name.substring("aims".length());
    }

    private void loads() {
        var joint = FenwaterEngine.joint();
        line(
                """

                ## Clamp load

                The physics takes stiffness, twist and torque terms from the joint model that the estimate reads as well, so its rows
                show what the reading of the curve adds and what the scatter of parts does, not whether that model is right. *springs*:
                formula curves whose load and torque rate come from a bolt and layers worked out apart (sections to the middle of head
                and nut, a pressure cone summed slice by slice, exact flank angles, even pressure under the head). Its bolt gives
                %+.1f %% and its layers %+.1f %% against the model's. That torque grows with load in proportion is taken for granted in both.

                | truth | n | bias, %% | spread, %% | 95 %%, %% | bounds hold it (interval) |
                | --- | --- | --- | --- | --- | --- |
                """,
                100 * (Springs.boltMmPerN() / joint.boltResilienceMmPerN() - 1),
                100 * (Springs.layersMmPerN(1) / joint.clampedResilienceMmPerN() - 1));
        for (var name : List.of(Cells.AIMS, Cells.NO_RUN_OUT, Cells.SPRINGS)) {
            for (var cell : named(name)) {
                if (cell.knows(Quality.CLAMP_LOAD)) {
                    var errors = cell.errors(Quality.CLAMP_LOAD);
                    line(
                            "| %s%s | %d | %+.2f | %.2f | %.2f | %s |\n",
                            name.equals(Cells.SPRINGS) ? "springs" : cell.generator.word(),
                            condition(cell),
                            cell.size(),
                            errors.bias(),
                            errors.spread(),
                            errors.usual(),
                            cell.loadHeld().words());
                }
            }
        }
    }

    private void range(Quality quality) {
        line(
                "### %s%s, %s\n\n",
                quality.title.substring(0, 1).toUpperCase(Locale.ROOT), quality.title.substring(1), quality.unit);
        text.append("| condition | found | bias | spread | 95 % | found | bias | spread | 95 % |\n");
        text.append("| --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
        text.append("| | physics | | | | formula | | | |\n");
        for (var name : Cells.ALL.keySet()) {
            if (quality.ofOnset() && name.equals(Cells.NEVER)) {
                continue;
            }
            line("| %s |", name);
            for (var generator : Generator.values()) {
                range(
                        quality,
                        named(name).stream()
                                .filter(cell -> cell.generator == generator)
                                .findFirst());
            }
            text.append('\n');
        }
        text.append('\n');
    }

    private void range(Quality quality, Optional<Cell> cell) {
        var known = cell.filter(one -> one.knows(quality)).map(one -> one.errors(quality));
        if (known.isEmpty()) {
            text.append(" - | - | - | - |");
        } else if (known.get().found().hits() == 0) {
            text.append(" 0.0 % | - | - | - |");
        } else {
            var errors = known.get();
            line(
                    " %.1f %% | %+.2f | %.2f | %.2f |",
                    100 * errors.found().value(), errors.bias(), errors.spread(), errors.usual());
        }
    }

    private void held() {
        text.append(
                "### Bounds of the clamp load\n\nShare of the estimates whose bounds hold the truth; 95 % is stated.\n\n");
        text.append("| condition | n | held (interval) |\n| --- | --- | --- |\n");
        cells.stream()
                .filter(cell -> cell.knows(Quality.CLAMP_LOAD))
                .forEach(cell -> line(
                        "| %s | %d | %s |\n",
                        cell.name, cell.size(), cell.loadHeld().words()));
    }

    private List<Cell> named(String name) {
        return cells.stream().filter(cell -> cell.name.equals(name)).toList();
    }

    private void line(String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values));
    }
}
