package org.tautlog.cli.table;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.intake.text.Words;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;
import org.tautlog.report.study.ChartedColumns;
import org.tautlog.report.study.KeptLimits;
import org.tautlog.spc.study.StudyKind;

/**
 * Holds what is asked for against what a file of limits was made of: the same columns in whatever order, by the same groups and
 * subgroups, in the same unit. What the command line leaves open is taken from the file.
 */
record LimitsInUse(Path file, KeptLimits kept) {
    /** The columns in the order of the limits; refuses any others. */
    ChartedColumns columns(ChartedColumns asked) {
        var own = kept.columns();
        if (!Set.copyOf(own.values()).equals(Set.copyOf(asked.values()))
                || own.values().size() != asked.values().size()) {
            throw refused("columns", own.values(), asked.values(), "--value");
        }
        if (!own.amount().equals(asked.amount())) {
            throw refused("amount", list(own.amount()), list(asked.amount()), "--amount");
        }
        if (!Set.copyOf(own.by()).equals(Set.copyOf(asked.by()))
                || own.by().size() != asked.by().size()) {
            throw refused("by", own.by(), asked.by(), "--by");
        }
        boolean open = asked.subgroupColumn().isEmpty() && asked.subgroupSize() == 0;
        if (!open && !asked.subgroupColumn().equals(own.subgroupColumn())) {
            throw refused("subgroupColumn", subgroup(own), subgroup(asked), "--subgroup");
        }
        if (!open && asked.subgroupSize() != own.subgroupSize()) {
            throw refused("subgroupSize", subgroup(own), subgroup(asked), "--subgroup");
        }
        boolean same =
                own.unit().isEmpty() || asked.unit().isEmpty() || own.unit().equals(asked.unit());
        if (!same) {
            throw refused("unit", list(own.unit()), list(asked.unit()), "--unit");
        }
        return new ChartedColumns(
                own.values(),
                own.amount(),
                own.by(),
                own.subgroupColumn(),
                own.subgroupSize(),
                own.unit().isEmpty() ? asked.unit() : own.unit());
    }

    /** The kind of the limits; refuses another. */
    StudyKind kind(@Nullable StudyKind asked) {
        if (asked != null && asked != kept.kind()) {
            throw refused("kind", List.of(kept.kind().word()), List.of(asked.word()), "--kind");
        }
        return kept.kind();
    }

    private static List<String> list(String word) {
        return word.isEmpty() ? List.of() : List.of(word);
    }

    private static List<String> subgroup(ChartedColumns columns) {
        return columns.subgroupSize() > 0
                ? List.of(Integer.toString(columns.subgroupSize()))
                : list(columns.subgroupColumn());
    }

    private Refusal refused(String key, List<String> kept, List<String> asked, String option) {
        var problem = new Problem(
                ProblemCode.BAD_VALUE,
                Where.file(file.toString()).at(key),
                "the limits have " + said(kept) + " here, the command line asks for " + said(asked),
                kept.isEmpty()
                        ? "no " + option
                        : kept.stream()
                                .map(word -> option + " " + Words.quoted(word))
                                .collect(Collectors.joining(" ")),
                "ask for that, or keep limits of your own with --freeze FILE");
        return Refusal.wrongUse(Terminal.harmless(problem.sentence()));
    }

    private static String said(List<String> words) {
        return words.isEmpty() ? "nothing" : words.stream().map(Words::quoted).collect(Collectors.joining(", "));
    }
}
