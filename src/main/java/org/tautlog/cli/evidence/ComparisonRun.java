package org.tautlog.cli.evidence;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.Archive;
import org.tautlog.cli.logs.ReadingAccount;
import org.tautlog.cli.logs.SpecificationSearch;
import org.tautlog.cli.terminal.Progress;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.intake.LogReader;
import org.tautlog.intake.ReadOptions;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.judge.Verdict;
import org.tautlog.problem.Problem;
import org.tautlog.review.evidence.SpecificationComparison;

/** One pass over traces, each judged by two specifications. */
final class ComparisonRun {
    private static final int MOST_CHANGES = 20;

    private final JointSpecification first;
    private final JointSpecification second;
    private final List<String> sha256;
    private final SpecificationComparison comparison;
    private final List<Problem> problems = new ArrayList<>();

    ComparisonRun(Path first, Path second) throws IOException {
        this.first = SpecificationSearch.read(first);
        this.second = SpecificationSearch.read(second);
        this.sha256 = List.of(Archive.sha256(first), Archive.sha256(second));
        this.comparison = new SpecificationComparison(this.first, this.second);
    }

    SpecificationComparison comparison() {
        return comparison;
    }

    /** What kept something out of the comparison so far. */
    List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** Whether nothing was rejected on the way. */
    boolean judge(@Nullable Path archive, List<Path> logs, PrintWriter err) throws IOException {
        if ((archive == null) == logs.isEmpty()) {
            throw Refusal.wrongUse("name either LOGS or --archive DIR, one of them");
        }
        boolean whole = archive == null ? readLogs(logs, err) : readArchive(archive, err);
        if (comparison.total() == 0) {
            throw Refusal.nothingRead("there is no trace to judge");
        }
        return whole;
    }

    private boolean readArchive(Path archive, PrintWriter err) throws IOException {
        try (var query = Archive.open(archive).query();
                var progress = Progress.onTerminal("judging", err)) {
            problems.addAll(query.everyTrace(kept -> {
                comparison.accept(kept.value());
                progress.step();
            }));
            problems.forEach(problem -> err.println(Terminal.harmless(problem.sentence())));
            return problems.isEmpty();
        }
    }

    private boolean readLogs(List<Path> logs, PrintWriter err) {
        var summary = LogReader.read(logs, ReadOptions.withDefaults(), comparison::accept);
        problems.addAll(summary.problems());
        ReadingAccount.print(summary, err);
        return summary.traces().rejected() == 0 && summary.files().rejected() == 0;
    }

    void print(PrintWriter out) {
        if (words(first).equals(words(second)) && !sha256.get(0).equals(sha256.get(1))) {
            out.println("two files of different contents both call themselves " + words(first) + ": sha-256 first "
                    + sha256.get(0) + ", then " + sha256.get(1)
                    + "; give the changed one a version of its own before it judges");
        }
        out.println(comparison.total() + " traces: first by " + words(first) + ", then by " + words(second));
        for (var before : Verdict.values()) {
            for (var after : Verdict.values()) {
                int count = comparison.count(before, after);
                if (count > 0) {
                    out.println(String.format(
                            Locale.ROOT,
                            "  %6d  %s%s",
                            count,
                            before.word(),
                            before == after ? ", as before" : " -> " + after.word()));
                }
            }
        }
        var changes = comparison.changes();
        changes.stream()
                .limit(MOST_CHANGES)
                .forEach(change ->
                        out.println(Terminal.harmless(change.first().identity().words() + ": "
                                + change.first().verdict().word() + " -> "
                                + change.second().verdict().word()
                                + change.second().findings().stream()
                                        .findFirst()
                                        .map(finding -> ", " + finding.message())
                                        .orElse(""))));
        if (changes.size() > MOST_CHANGES) {
            out.println("and " + (changes.size() - MOST_CHANGES) + " more in the table");
        }
        out.println(
                changes.size() + " verdicts change, on " + comparison.engines().size() + " engines");
    }

    private static String words(JointSpecification specification) {
        return Terminal.harmless(specification.name() + " version " + specification.version());
    }
}
