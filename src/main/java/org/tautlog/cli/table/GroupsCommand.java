package org.tautlog.cli.table;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.spc.study.GroupComparison;
import org.tautlog.spc.study.StudyRow;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Tells the groups of any table apart. */
@Command(
        name = "groups",
        description = {
            "Compares the groups of --by: spreads by Brown and Forsythe, means by analysis of variance and Welch, ranks by"
                    + " Kruskal and Wallis, and which pairs differ with the number of pairs allowed for.",
            "",
            "Values that resemble their neighbours in time make groups seem to differ: see tautlog changes."
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  tautlog groups verdicts.csv --value finalTorqueNm --by spindle",
            "  tautlog groups verdicts.csv --value finalTorqueNm --by boltLot --json"
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
final class GroupsCommand implements Callable<Integer> {
    @Mixin
    private TableInputs table = new TableInputs();

    @Mixin
    private TestInputs test = new TestInputs();

    @Option(names = "--value", paramLabel = "COL", required = true, description = "Column to compare.")
    private String value = "";

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        if (table.by().isEmpty()) {
            throw Refusal.wrongUse("groups are told apart by a column; name it with --by COL");
        }
        var line = spec.commandLine();
        var options = test.options(null, null);
        var columns = table.read(List.of(value), List.of(), line.getErr());
        var groups = new LinkedHashMap<String, List<StudyRow>>();
        var rowsByGroup = table.groups(columns);
        rowsByGroup.forEach((name, rows) -> groups.put(name, TestStudying.rows(rows)));
        var tests = GroupComparison.of(groups, options);
        return test.print(
                new TestStudying(
                        "groups",
                        value,
                        options.level(),
                        TestStudying.ofEach(options.level()),
                        columns.rejected(),
                        TestStudying.spread(rowsByGroup.values()),
                        Map.of("", tests)),
                line.getOut());
    }
}
