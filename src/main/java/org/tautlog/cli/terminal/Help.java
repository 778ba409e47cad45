package org.tautlog.cli.terminal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import org.tautlog.cli.logs.Judging;
import org.tautlog.report.page.SafetyNote;
import picocli.CommandLine;
import picocli.CommandLine.Help.Column;
import picocli.CommandLine.Help.TextTable;

/** Gives every command its exit codes, and each judging command the safety note, so that none can forget them. */
public final class Help {
    private static final String SAFETY = "safety";
    private static final int WIDTH = 100;

    /** A command whose result somebody may rely on for a tightening. */
    public interface Judging {}

    private Help() {}

    /**
     * Completes the help of every command below a root.
     *
     * @param root the line whose commands are all added
     */
    public static void complete(CommandLine root) {
        for (var command : root.getSubcommands().values()) {
            var usage = command.getCommandSpec().usageMessage().width(WIDTH);
            if (usage.exitCodeList().isEmpty()) {
                var codes = new LinkedHashMap<String, String>();
                Arrays.stream(ExitCode.values())
                        .forEach(code -> codes.put(Integer.toString(code.number()), code.meaning()));
                usage.exitCodeListHeading("%nExit codes:%n").exitCodeList(codes);
            }
            if (command.getCommand() instanceof Judging) {
                var keys = new ArrayList<>(command.getHelpSectionKeys());
                keys.add(SAFETY);
                command.setHelpSectionKeys(keys);
                command.getHelpSectionMap().put(SAFETY, Help::safety);
            }
            complete(command);
        }
    }

    private static String safety(CommandLine.Help help) {
        var table = TextTable.forColumns(help.colorScheme(), new Column(WIDTH, 2, Column.Overflow.WRAP));
        for (var sentence : SafetyNote.TEXT.split("(?<=\\.) ", -1)) {
            table.addRowValues(sentence);
        }
        return help.createHeading("%nSafety:%n") + table;
    }
}
