package org.tautlog.cli.evidence;

import java.io.IOException;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tautlog.archive.ArchiveQuery;
import org.tautlog.cli.terminal.Counted;
import org.tautlog.cli.terminal.Refusal;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.BriefJudgement;
import org.tautlog.review.evidence.BoltLots;
import org.tautlog.review.evidence.Bracketing;
import org.tautlog.review.evidence.Containment;
import org.tautlog.review.evidence.ExplainedStep;
import org.tautlog.review.evidence.StandingSearch;
import org.tautlog.review.evidence.StepSpan;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** What a containment starts from: exactly one of an engine, a finding, a spindle at a moment, a lot. */
final class Suspicion {
    private static final int MOST_STEPS = 5;
    private static final int CLOSE_MINUTES = 10;

    @Option(names = "--serial", paramLabel = "S", description = "From what is wrong with this engine.")
    private String serial = "";

    @Option(names = "--bolt", paramLabel = "N", description = "Of that engine, only this bolt position.")
    private String bolt = "";

    @Option(names = "--finding", paramLabel = "CODE", description = "From this finding, wherever it was made.")
    private String finding = "";

    @Option(
            names = "--station",
            paramLabel = "X",
            description = "From this station's spindle, with --spindle, --around.")
    private String station = "";

    @Option(names = "--spindle", paramLabel = "Y", description = "The spindle.")
    private String spindle = "";

    @Option(names = "--around", paramLabel = "TIME", description = "The moment (ISO 8601).")
    private @Nullable OffsetDateTime around;

    /** How far the nearest tightening lies from that moment, in words; empty until it was looked for, or where it meets it. */
    private String distance = "";

    @Option(names = "--lot", paramLabel = "L", description = "From this bolt lot.")
    private String lot = "";

    @Option(
            names = "--clock-margin",
            paramLabel = "MINUTES",
            description = "By how much clocks may differ; both ends of a bracket move out by it (default: 0).")
    private int clockMargin;

    /** A person's word on a step for good. */
    static final class Explanation {
        @Option(
                names = "--explained-from",
                paramLabel = "TIME",
                required = true,
                description =
                        "From this moment on (ISO 8601) a level moved for good, for a known reason: a bracket closes"
                                + " at it, and the reports say on whose word. Without it a moved level is held to the end.")
        private OffsetDateTime from = OffsetDateTime.MIN;

        @Option(names = "--explained-by", paramLabel = "NAME", required = true, description = "Whose word it is.")
        private String by = "";

        @Option(names = "--explanation", paramLabel = "TEXT", required = true, description = "The reason.")
        private String why = "";

        ExplainedStep step() {
            try {
                return new ExplainedStep(from, by, why);
            } catch (IllegalArgumentException e) {
                throw Refusal.wrongUse(String.valueOf(e.getMessage()));
            }
        }
    }

    @ArgGroup(exclusive = false)
    private @Nullable Explanation explanation;

    /** The suspicion as it was stated. */
    String words() {
        if (!lot.isEmpty()) {
            return "bolt lot " + lot;
        }
        if (!finding.isEmpty()) {
            return code().title();
        }
        return serial.isEmpty()
                ? "spindle " + station + '/' + spindle + " around " + around + distance
                : "engine " + serial + (bolt.isEmpty() ? "" : ", bolt " + bolt);
    }

    List<Containment> contain(StandingSearch standing) throws IOException {
        refuseUnclear();
        var bracketing = new Bracketing(
                standing, Duration.ofMinutes(clockMargin), explanation == null ? null : explanation.step());
        var found = found(standing, bracketing);
        if (explanation != null
                && found.stream().allMatch(one -> one.explained().isEmpty())) {
            throw Refusal.wrongUse("no level that holds these engines moves for good at " + explanation.from
                    + "; that word explains nothing, and nothing is written" + spans(bracketing.steps()));
        }
        return found;
    }

    /** Why nothing is held: what was asked for is not there, or nothing about it is suspect. */
    String unfound(ArchiveQuery query, StandingSearch standing) throws IOException {
        if (serial.isEmpty()) {
            return "the archive shows no such suspect";
        }
        var bolts = standing.ofEngine(serial).stream()
                .map(one -> one.identity().bolt())
                .distinct()
                .sorted(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()))
                .map(Terminal::harmless)
                .toList();
        if (bolts.isEmpty()) {
            return DossierRun.absent(query, serial);
        }
        return bolt.isEmpty()
                ? "every tightening of " + Terminal.harmless(serial) + " conforms; to bracket one all the same name it"
                        + " with --bolt N: " + String.join(", ", bolts)
                : "the archive has no recording of bolt " + Terminal.harmless(bolt) + " of " + Terminal.harmless(serial)
                        + "; there are " + String.join(", ", bolts);
    }

    private static String spans(List<StepSpan> steps) {
        return steps.isEmpty()
                ? ""
                : steps.stream()
                        .limit(MOST_STEPS)
                        .map(step -> Terminal.harmless(step.feature().title() + " on " + step.place() + " "
                                + step.from()
                                        .map(from -> "from " + from + " to ")
                                        .orElse("up to ") + step.to()))
                        .collect(Collectors.joining(", ", "; a word may explain a step of ", ""));
    }

    private void refuseUnclear() {
        long given = Stream.of(serial, finding, station, lot)
                .filter(word -> !word.isEmpty())
                .count();
        if (given != 1 || station.isEmpty() != (around == null)) {
            throw Refusal.wrongUse(
                    "name one of --serial S, --finding CODE, --station X --spindle Y --around TIME, --lot L");
        }
        if (clockMargin < 0) {
            throw Refusal.wrongUse("--clock-margin is " + clockMargin + "; clocks differ by 0 minutes or more");
        }
    }

    private List<Containment> found(StandingSearch standing, Bracketing bracketing) throws IOException {
        var lots = new BoltLots(standing, Duration.ofMinutes(clockMargin));
        if (!lot.isEmpty()) {
            return lots.of(lot).stream().toList();
        }
        if (!finding.isEmpty()) {
            var code = code();
            var brackets = new ArrayList<Containment>();
            for (var stream : standing.streamsWith(code)) {
                bracketing.around(stream, code, one -> one.shows(code)).ifPresent(brackets::add);
            }
            return joined(brackets, lots.lotsWith(code, brackets));
        }
        return serial.isEmpty() ? aroundMoment(standing, bracketing) : ofEngine(standing, bracketing, lots);
    }

    private static List<Containment> joined(List<Containment> brackets, List<Containment> lots) {
        return Stream.concat(brackets.stream(), lots.stream()).toList();
    }

    private List<Containment> ofEngine(StandingSearch standing, Bracketing bracketing, BoltLots lots)
            throws IOException {
        var brackets = new ArrayList<Containment>();
        var causes = new LinkedHashSet<FindingCode>();
        for (var one : standing.ofEngine(serial)) {
            if ((bolt.isEmpty() && one.shows(null))
                    || (!bolt.isEmpty() && one.identity().bolt().equals(bolt))) {
                var cause = one.causes().stream().findFirst();
                bracketing.around(stream(one), cause.orElse(null), one::equals).ifPresent(brackets::add);
                cause.ifPresent(causes::add);
            }
        }
        var followed = new ArrayList<Containment>();
        for (var cause : causes) {
            followed.addAll(lots.lotsWith(cause, brackets));
        }
        return joined(brackets, followed);
    }

    private List<Containment> aroundMoment(StandingSearch standing, Bracketing bracketing) throws IOException {
        var stream = new org.tautlog.review.stream.Stream(station, spindle);
        var nearest = standing.ofStream(stream).stream()
                .filter(one -> one.identity().time() != null)
                .min(Comparator.comparing(this::away));
        nearest.ifPresent(one -> distance = distance(one));
        return nearest.isEmpty()
                ? List.of()
                : bracketing.around(stream, null, one -> one.equals(nearest.get()) || near(one)).stream()
                        .toList();
    }

    private String distance(BriefJudgement nearest) {
        var away = away(nearest);
        var hours = away.toHours();
        return away.toMinutes() <= Math.max(clockMargin, CLOSE_MINUTES)
                ? ""
                : ", " + (hours > 0 ? Counted.of(hours, "hour") : Counted.of(away.toMinutes(), "minute"))
                        + " from the nearest tightening";
    }

    private boolean near(BriefJudgement judgement) {
        return judgement.identity().time() != null && away(judgement).compareTo(Duration.ofMinutes(clockMargin)) <= 0;
    }

    private Duration away(BriefJudgement judgement) {
        var time = judgement.identity().time();
        return time == null || around == null
                ? Duration.ZERO
                : Duration.between(time, around).abs();
    }

    private FindingCode code() {
        return Stream.of(FindingCode.values())
                .filter(code -> code.word().equals(finding))
                .findFirst()
                .orElseThrow(() -> Refusal.wrongUse("'" + Terminal.harmless(finding) + "' is no finding; there are "
                        + String.join(
                                ", ",
                                Stream.of(FindingCode.values())
                                        .map(FindingCode::word)
                                        .toList())));
    }

    private static org.tautlog.review.stream.Stream stream(BriefJudgement judgement) {
        return org.tautlog.review.stream.Stream.of(judgement.identity());
    }
}
