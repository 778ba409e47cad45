package org.tautlog.cli.table;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tautlog.spc.Digits;
import org.tautlog.spc.study.OutlierTests;
import org.tautlog.spc.study.TestStudy;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Looks for strays in any column of any table. */
@Command(
        name = "outliers",
        description = {
            "Looks for values that do not belong with the others: one column by Grubbs, generalized ESD, modified z and a"
                    + " running window; several columns by robust distance. Each group of --by is tested by itself.",
            "",
            "A stray is a question to a person; nothing is removed."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog outliers verdicts.csv --value finalTorqueNm --by station --by spindle",
            "  tautlog outliers verdicts.csv --value finalTorqueNm --value torqueRateNmPerDeg --by spindle --json"
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            StudyCode.NOTHING_FOUND,
            StudyCode.FOUND + ", or a group that could not be tested",
            StudyCode.WRONG_USE,
            StudyCode.NOTHING,
            StudyCode.FAILED
        },
        mixinStandardHelpOptions = true)
final class OutliersCommand implements Callable<Integer> {
    @Mixin
    private TableInputs table = new TableInputs();

    @Mixin
    private TestInputs test = new TestInputs();

    @Option(
            names = "--value",
            paramLabel = "COL",
            required = true,
            description = "Column to test; repeated for several together.")
    private List<String> values = List.of();

    @Option(
            names = "--most",
            paramLabel = "N",
            description = "Most strays that generalized ESD looks for (default: 10).")
    private @Nullable Integer most;

    @Option(
            names = "--half-window",
            paramLabel = "N",
            description = "Neighbours on either side in the running window (default: 10).")
    private @Nullable Integer halfWindow;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        var line = spec.commandLine();
        var options = test.options(most, halfWindow);
        var columns = table.read(values, List.of(), line.getErr());
        var groups = new LinkedHashMap<String, List<TestStudy>>();
        var rowsByGroup = table.groups(columns);
        rowsByGroup.forEach(
                (name, rows) -> groups.put(name, OutlierTests.of(values, TestStudying.rows(rows), options)));
        var value = String.join(", ", values);
        return test.print(
                new TestStudying(
                        "outliers",
                        value,
                        options.level(),
                        chance(options.level(), values.size()),
                        columns.rejected(),
                        TestStudying.spread(rowsByGroup.values()),
                        groups),
                line.getOut());
    }

    private static String chance(double level, int columns) {
        double percent = 100 * level;
        return columns > 1
                ? "by chance a stray is called in " + Digits.of(percent) + " % of calm groups"
                : "by chance Grubbs and generalized ESD call a stray in " + Digits.of(percent)
                        + " % of calm groups, modified z flags about 1 good value in 2000 and a window of 10 on either"
                        + " side about 1 in 300; narrower windows flag more";
    }
}
