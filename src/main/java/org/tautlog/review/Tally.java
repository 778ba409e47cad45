package org.tautlog.review;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.review.stream.Stream;

/** What is counted over a shift: verdicts, engines, findings. */
record Tally(
        @Nullable OffsetDateTime first,
        @Nullable OffsetDateTime last,
        int engines,
        List<String> enginesHeld,
        int enginesOpen,
        VerdictCounts counts,
        FirstPass firstPass,
        List<FindingTally> findings) {
    private static final Comparator<FindingTally> GRAVEST_FIRST = Comparator.comparing(FindingTally::severity)
            .thenComparingInt(FindingTally::tightenings)
            .reversed()
            .thenComparing(FindingTally::code);
    private static final int MOST_NAMED = 3;

    private static final class Met {
        private final Map<Stream, Integer> streams = new TreeMap<>();
        private Consequence severity = Consequence.NOTE;
        private final Set<String> lots = new TreeSet<>();
        private int tightenings;
        private int leading;
        private @Nullable OffsetDateTime first;
        private @Nullable OffsetDateTime last;
    }

    static Tally of(List<Judgement> judgements) {
        var counts = VerdictCounts.none();
        var firstPass = new FirstPass(0, 0);
        var worst = new HashMap<String, Verdict>();
        var met = new EnumMap<FindingCode, Met>(FindingCode.class);
        OffsetDateTime first = null;
        OffsetDateTime last = null;
        for (var judgement : judgements) {
            var verdict = judgement.verdict();
            var identity = judgement.identity();
            counts = counts.plus(verdict);
            firstPass = firstPass.plus(identity.attempt(), verdict == Verdict.CONFORMING);
            worst.merge(identity.serial(), verdict, (a, b) -> a.compareTo(b) > 0 ? a : b);
            first = earlier(first, identity.time());
            last = later(last, identity.time());
            count(judgement, met);
        }
        return new Tally(
                first,
                last,
                worst.size(),
                worst.entrySet().stream()
                        .filter(engine -> engine.getValue() == Verdict.NONCONFORMING)
                        .map(Map.Entry::getKey)
                        .sorted()
                        .toList(),
                (int) worst.values().stream()
                        .filter(verdict -> verdict == Verdict.UNJUDGED || verdict == Verdict.REVIEW)
                        .count(),
                counts,
                firstPass,
                tallies(met));
    }

    List<FirstAction> actions() {
        var asking = new LinkedHashMap<String, List<FindingTally>>();
        for (var tally : leading(findings)) {
            asking.computeIfAbsent(Advice.on(tally.code()), unused -> new ArrayList<>())
                    .add(tally);
        }
        var actions = new ArrayList<FirstAction>();
        asking.forEach((action, tallies) -> actions.add(new FirstAction(
                tallies.stream().map(FindingTally::code).toList(),
                tallies.stream().map(Tally::where).distinct().collect(Collectors.joining("; ")),
                action)));
        return actions;
    }

    /** The findings that lead at least once, gravest and then most frequent first. */
    static List<FindingTally> leading(List<FindingTally> findings) {
        return findings.stream()
                .filter(tally -> tally.leading() > 0)
                .sorted(Comparator.comparing(FindingTally::severity)
                        .thenComparingInt(FindingTally::leading)
                        .reversed())
                .toList();
    }

    private static String where(FindingTally tally) {
        if (tally.mostInCount() == tally.tightenings()) {
            return switch (tally.tightenings()) {
                        case 1 -> "once, on ";
                        case 2 -> "both on ";
                        default -> "all " + tally.tightenings() + " on ";
                    }
                    + tally.mostIn().words();
        }
        return tally.mostInCount() * 2 > tally.tightenings() && tally.tightenings() > MOST_NAMED
                ? tally.mostInCount() + " of them on " + tally.mostIn().words()
                : "spread over " + tally.streams() + " spindles";
    }

    private static void count(Judgement judgement, Map<FindingCode, Met> met) {
        var codes = new EnumMap<FindingCode, Consequence>(FindingCode.class);
        for (var finding : judgement.findings()) {
            if (finding.severity() != Consequence.NOTE) {
                codes.merge(finding.code(), finding.severity(), (a, b) -> a.compareTo(b) > 0 ? a : b);
            }
        }
        codes.forEach((code, severity) -> {
            var one = met.computeIfAbsent(code, unused -> new Met());
            one.tightenings++;
            one.severity = one.severity.compareTo(severity) > 0 ? one.severity : severity;
            one.leading += judgement.findings().get(0).code() == code ? 1 : 0;
            if (!judgement.identity().boltLot().isEmpty()) {
                one.lots.add(judgement.identity().boltLot());
            }
            one.streams.merge(Stream.of(judgement.identity()), 1, Integer::sum);
            one.first = earlier(one.first, judgement.identity().time());
            one.last = later(one.last, judgement.identity().time());
        });
    }

    private static List<FindingTally> tallies(Map<FindingCode, Met> met) {
        var tallies = new ArrayList<FindingTally>();
        met.forEach((code, one) -> {
            var most = one.streams.entrySet().stream()
                    .max(Map.Entry.<Stream, Integer>comparingByValue()
                            .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                    .orElseThrow();
            tallies.add(new FindingTally(
                    code,
                    one.severity,
                    one.tightenings,
                    one.leading,
                    most.getKey(),
                    most.getValue(),
                    one.streams.size(),
                    List.copyOf(one.lots),
                    one.first,
                    one.last));
        });
        tallies.sort(GRAVEST_FIRST);
        return tallies;
    }

    private static @Nullable OffsetDateTime earlier(@Nullable OffsetDateTime a, @Nullable OffsetDateTime b) {
        return b == null || (a != null && !b.isBefore(a)) ? a : b;
    }

    private static @Nullable OffsetDateTime later(@Nullable OffsetDateTime a, @Nullable OffsetDateTime b) {
        return b == null || (a != null && !b.isAfter(a)) ? a : b;
    }
}
