package org.tautlog.cli.shift;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.tautlog.archive.ArchiveQuery;
import org.tautlog.archive.JudgementFilter;
import org.tautlog.archive.SpecificationUsed;
import org.tautlog.archive.table.Kept;
import org.tautlog.cli.evidence.ArchivedSpecifications;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.JudgesInOrder;
import org.tautlog.judge.Verdict;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.review.ImportRecord;
import org.tautlog.review.evidence.StandingJudgements;
import org.tautlog.review.shape.Envelope;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;

/** Judgements that an archive kept, by the specification that judged last among them, each with its curve. */
final class ArchivedTightenings {
    private static final int AT_ONCE = 400;
    private static final int MOST_DAYS = 7;

    private final ArchiveQuery query;
    private final List<SpecificationUsed> used;
    private final JudgementFilter asked;
    private final JointSpecification specification;
    private final List<Judgement> judgements;
    private final Set<Problem> problems = new LinkedHashSet<>();

    private ArchivedTightenings(
            ArchiveQuery query,
            JudgementFilter asked,
            List<SpecificationUsed> used,
            JointSpecification specification,
            List<Judgement> judgements,
            List<Problem> problems) {
        this.query = query;
        this.used = used;
        this.asked = asked;
        this.specification = specification;
        this.judgements = judgements;
        this.problems.addAll(problems);
    }

    static ArchivedTightenings of(ArchiveQuery query, JudgementFilter filter, PrintWriter err) throws IOException {
        var specifications = ArchivedSpecifications.in(query, err);
        var found = query.judgements(filter);
        var kept = found.value().orElse(List.of());
        var last = StandingJudgements.last(kept, specifications.used())
                .orElseThrow(() -> Refusal.nothingRead("the archive holds no judgement of that station and time"));
        var specification = specifications.readable().get(last.specificationSha256());
        if (specification == null) {
            throw new IOException("the archive does not hold the specification that judged as it was; verify it");
        }
        return new ArchivedTightenings(
                query,
                filter,
                specifications.used(),
                specification,
                StandingJudgements.of(kept, specifications.used()),
                found.problems());
    }

    JointSpecification specification() {
        return specification;
    }

    /** Hands out each in order of time; the curves of so many are held at a time. */
    ImportRecord each(JudgesInOrder.Sink sink) throws IOException {
        int kept = 0;
        for (int from = 0; from < judgements.size(); from += AT_ONCE) {
            var some = judgements.subList(from, Math.min(from + AT_ONCE, judgements.size()));
            var curves = curves(some);
            for (var judgement : some) {
                var curve = curves.get(judgement.source());
                if (curve != null) {
                    sink.accept(judgement, curve);
                    kept++;
                }
            }
        }
        return account(kept);
    }

    /**
     * Hands out what the streams did before: of each stream and bolt position the newest conforming first attempts, at most as
     * many as an envelope is learned from and from {@value #MOST_DAYS} days at most.
     */
    void past(JudgementFilter filter, JudgesInOrder.Sink sink) throws IOException {
        var begin = judgements.stream()
                .flatMap(judgement -> Optional.ofNullable(judgement.identity().time()).stream())
                .min(Comparator.comparing(OffsetDateTime::toInstant));
        if (begin.isEmpty()) {
            return;
        }
        var peers = new LinkedHashMap<List<String>, List<Judgement>>();
        judgements.forEach(judgement -> peers.put(place(judgement), List.of()));
        for (int days : List.of(1, MOST_DAYS)) {
            var before = all(query.judgements(filter.between(begin.get().minusDays(days), begin.get())));
            var standing = StandingJudgements.of(before, used).stream()
                    .filter(judgement -> judgement.verdict() == Verdict.CONFORMING
                            && judgement.identity().attempt() == 1
                            && judgement.specificationName().equals(specification.name()))
                    .collect(Collectors.groupingBy(ArchivedTightenings::place));
            peers.replaceAll((place, none) -> newest(standing.getOrDefault(place, List.of())));
            if (peers.values().stream().allMatch(own -> own.size() == Envelope.MOST_PEERS)) {
                break;
            }
        }
        for (var own : peers.values()) {
            var curves = curves(own);
            for (var judgement : own) {
                var curve = curves.get(judgement.source());
                if (curve != null) {
                    sink.accept(judgement, curve);
                }
            }
        }
    }

    private static List<String> place(Judgement judgement) {
        var identity = judgement.identity();
        return List.of(identity.station(), identity.spindle(), identity.bolt());
    }

    private static List<Judgement> newest(List<Judgement> judgements) {
        var inTime = new ArrayList<>(judgements);
        inTime.sort(Comparator.comparing(
                judgement -> Objects.requireNonNull(judgement.identity().time()).toInstant()));
        return List.copyOf(inTime.subList(Math.max(0, inTime.size() - Envelope.MOST_PEERS), inTime.size()));
    }

    private Map<Source, Curve> curves(List<Judgement> some) throws IOException {
        var curves = new HashMap<Source, Curve>();
        all(query.traces(some.stream().map(BriefJudgement::of).toList()))
                .forEach(trace ->
                        curves.put(trace.value().source(), trace.value().curve()));
        return curves;
    }

    private ImportRecord account(int kept) throws IOException {
        var files =
                judgements.stream().map(judgement -> judgement.source().file()).collect(Collectors.toSet());
        var traceless = new TracelessFiles(all(query.sources()), asked);
        var atImport = all(query.problems()).stream()
                .filter(problem -> files.contains(problem.value().where().file()) || traceless.rejected(problem))
                .map(Kept::value)
                .toList();
        var assumed = atImport.stream()
                .filter(problem -> problem.code() == ProblemCode.ASSUMED)
                .toList();
        var rejected = new ArrayList<>(atImport);
        rejected.removeAll(assumed);
        rejected.addAll(problems);
        int lost = judgements.size() - kept;
        return new ImportRecord(files.size(), 0, kept, (long) rejected.size() + lost, rejected, assumed);
    }

    private <T> List<T> all(Outcome<List<T>> outcome) {
        problems.addAll(outcome.problems());
        return outcome.value().orElse(List.of());
    }
}
