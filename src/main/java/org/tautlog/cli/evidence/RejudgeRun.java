package org.tautlog.cli.evidence;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.tautlog.archive.Archive;
import org.tautlog.archive.Imported;
import org.tautlog.archive.Importer;
import org.tautlog.archive.SourceFile;
import org.tautlog.archive.SpecificationUsed;
import org.tautlog.archive.Stamp;
import org.tautlog.cli.logs.SpecificationSearch;
import org.tautlog.cli.terminal.Counted;
import org.tautlog.cli.terminal.Progress;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.JudgesInOrder;
import org.tautlog.problem.Problem;

/** One pass over the traces of an archive: each judged by one specification, the verdicts added to the earlier ones. */
final class RejudgeRun {
    /** What a run leaves behind. */
    record Result(
            JointSpecification specification,
            Imported imported,
            Optional<SpecificationUsed> later,
            List<Problem> problems) {
        String sentence(Path archive) {
            var by = Terminal.harmless(specification.name() + " version " + specification.version());
            var stands = later.map(one -> "; where " + Terminal.harmless(one.name() + " version " + one.version())
                            + " judged too, that one stands, as it was first used later")
                    .orElse("");
            return sentence(archive, by) + stands;
        }

        private String sentence(Path archive, String by) {
            return imported.changedNothing()
                    ? "nothing new: " + by + " judged all of it already"
                    : String.format(
                            Locale.ROOT,
                            "kept in %s as batch %s: %s by %s; the earlier ones stay",
                            archive,
                            imported.batch(),
                            Counted.of(imported.judgements(), "verdict"),
                            by);
        }
    }

    private RejudgeRun() {}

    static Result run(Path file, Archive archive, Stamp stamp, PrintWriter err) throws IOException {
        var specification = SpecificationSearch.read(file);
        var used = new SpecificationUsed(specification.name(), specification.version(), Files.readString(file));
        try (var query = archive.query();
                var importer = archive.importer(stamp, used);
                var progress = Progress.onTerminal("judging", err);
                var judges = new JudgesInOrder(
                        specification, Runtime.getRuntime().availableProcessors(), (judgement, curve) -> {
                            keep(judgement, importer);
                            progress.step();
                        })) {
            var later = later(query.specifications().value().orElse(List.of()), used.sha256());
            var problems = query.everyTrace(kept -> judges.judge(kept.value()));
            judges.finish();
            problems.forEach(problem -> err.println(Terminal.harmless(problem.sentence())));
            return new Result(specification, importer.commit(), later, problems);
        }
    }

    /** The specification that was first used last, if that of the hash was used before it. */
    private static Optional<SpecificationUsed> later(List<SpecificationUsed> inOrder, String sha256) {
        boolean known = inOrder.stream().anyMatch(one -> one.sha256().equals(sha256));
        return inOrder.stream()
                .reduce((earlier, later) -> later)
                .filter(last -> known && !last.sha256().equals(sha256));
    }

    private static void keep(Judgement judgement, Importer importer) {
        try {
            var source = judgement.source();
            importer.source(new SourceFile(source.file(), source.sha256()));
            importer.judgement(judgement);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
