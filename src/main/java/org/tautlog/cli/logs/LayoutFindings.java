package org.tautlog.cli.logs;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Counted;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.intake.LayoutProposal;
import org.tautlog.problem.Problem;
import org.tautlog.report.judged.TraceBlocks;
import org.tautlog.trace.Trace;
import picocli.CommandLine.Model.CommandSpec;

/** What a proposed layout made of its export, in words and block characters. */
final class LayoutFindings {
    private static final int USUAL_WIDTH = 80;
    private static final int WIDEST = 160;
    private static final int HEIGHT = 8;
    private static final int MOST_PROBLEMS = 5;

    private LayoutFindings() {}

    static List<String> lines(LayoutProposal proposal, boolean drawn) {
        var lines = new ArrayList<String>();
        var traces = proposal.summary().traces();
        int columns = width(System.getenv("COLUMNS"), Terminal.isAttended());
        lines.add("");
        lines.add("# read with it: " + Counted.of(traces.kept(), "trace") + ", " + traces.rejected() + " rejected");
        proposal.summary().problems().stream()
                .limit(MOST_PROBLEMS)
                .forEach(problem -> lines.add("#   " + Terminal.harmless(problem.sentence())));
        for (var trace : drawn ? proposal.traces() : List.<Trace>of()) {
            lines.add("#");
            lines.add("# " + Terminal.harmless(trace.identity().words()) + ": "
                    + Counted.of(trace.curve().size(), "sample"));
            TraceBlocks.lines(trace.curve(), columns - 2, HEIGHT).forEach(line -> lines.add("# " + line));
        }
        return lines;
    }

    /** The lines of a proposal that a person must look at before anybody relies on it. */
    static List<String> toCheck(LayoutProposal proposal) {
        return proposal.text()
                .lines()
                .filter(line ->
                        Stream.of("CHECK THIS", "NO UNIT", "# AMBIGUOUS").anyMatch(line::contains))
                .map(Terminal::harmless)
                .toList();
    }

    static String whyNot(List<Problem> problems) {
        return problems.stream().map(Problem::sentence).map(Terminal::harmless).collect(Collectors.joining("; "));
    }

    /** The columns of the terminal as its shell or itself says; a width that cannot be is not believed. */
    static int width(@Nullable String columns, boolean terminal) {
        try {
            int width = columns != null
                    ? Integer.parseInt(columns.strip())
                    : terminal
                            ? CommandSpec.create()
                                    .usageMessage()
                                    .autoWidth(true)
                                    .width()
                            : USUAL_WIDTH;
            return Math.max(TraceBlocks.NARROWEST + 2, Math.min(WIDEST, width));
        } catch (NumberFormatException e) {
            return USUAL_WIDTH;
        }
    }
}
