package org.tautlog.cli.table;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.concurrent.Callable;
import org.tautlog.spc.Digits;
import org.tautlog.spc.study.ChangeTests;
import org.tautlog.spc.study.StudyRow;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Looks for what changed along any column of any table. */
@Command(
        name = "changes",
        description = {
            "Looks for what changed along a column, in the order of the file: level and spread with since when and how"
                    + " large, trend with its slope (Mann-Kendall), level by ranks (Pettitt 1979), and whether"
                    + " neighbours resemble each other, which all of them allow for. Each group of --by is a series of"
                    + " its own.",
            "",
            "Something counts as changed where its p value, adjusted by Holm over all tests of the call, is at or below"
                    + " --level. Resemblance of neighbours is no change and leaves the exit code at 0."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog changes verdicts.csv --value torqueRateNmPerDeg --by station --by spindle",
            "  tautlog changes audit.csv --value torque --level 0.001 --json"
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            StudyCode.NOTHING_FOUND,
            "1:computed, and one of the four tests found a change, or rows could not be used, or a group could not be tested",
            StudyCode.WRONG_USE,
            StudyCode.NOTHING,
            StudyCode.FAILED
        },
        mixinStandardHelpOptions = true)
final class ChangesCommand implements Callable<Integer> {
    @Mixin
    private TableInputs table = new TableInputs();

    @Mixin
    private TestInputs test = new TestInputs();

    @Option(names = "--value", paramLabel = "COL", required = true, description = "Column to search.")
    private String value = "";

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        var line = spec.commandLine();
        var options = test.options(null, null);
        var columns = table.read(List.of(value), List.of(), line.getErr());
        var groups = new LinkedHashMap<String, List<StudyRow>>();
        var rowsByGroup = table.groups(columns);
        rowsByGroup.forEach((name, rows) -> groups.put(name, TestStudying.rows(rows)));
        return test.print(
                new TestStudying(
                        "changes",
                        value,
                        options.level(),
                        "in steady series of independent values any test of this call is positive by chance in "
                                + Digits.of(100 * options.level()) + " % of calls or fewer",
                        columns.rejected(),
                        TestStudying.spread(rowsByGroup.values()),
                        ChangeTests.of(groups, options)),
                line.getOut());
    }
}
