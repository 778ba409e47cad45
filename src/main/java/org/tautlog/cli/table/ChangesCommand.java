package org.tautlog.cli.table;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.concurrent.Callable;
import org.tautlog.spc.study.ChangeTests;
import org.tautlog.spc.study.TestStudy;
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
                    + " large, trend with its slope, and whether neighbours resemble each other. Each group of --by is"
                    + " a series of its own."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog changes verdicts.csv --value torqueRateNmPerDeg --by station --by spindle",
            "  tautlog changes audit.csv --value torque --level 0.001 --json"
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            StudyCode.NOTHING_FOUND,
            StudyCode.FOUND,
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
        var groups = new LinkedHashMap<String, List<TestStudy>>();
        table.groups(columns)
                .forEach((name, rows) -> groups.put(name, ChangeTests.of(TestStudying.rows(rows), options)));
        return test.print(
                new TestStudying(
                        "changes",
                        value,
                        options.level(),
                        TestStudying.ofEach(options.level()),
                        columns.rejected(),
                        groups),
                line.getOut());
    }
}
