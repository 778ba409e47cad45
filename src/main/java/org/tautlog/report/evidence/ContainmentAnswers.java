package org.tautlog.report.evidence;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tautlog.archive.KeptDecision;
import org.tautlog.problem.Problem;
import org.tautlog.report.words.Figures;
import org.tautlog.report.words.Sentence;
import org.tautlog.report.words.Times;
import org.tautlog.review.evidence.Contained;
import org.tautlog.review.evidence.Containment;
import org.tautlog.review.evidence.EngineHold;
import org.tautlog.review.evidence.LotReach;
import org.tautlog.review.evidence.WordMet;
import org.tautlog.review.stream.Change;
import org.tautlog.review.stream.ChartedFeature;
import org.tautlog.trace.TraceIdentity;

/** The answers to a reader's questions about a containment, in sentences made of its own numbers. */
public final class ContainmentAnswers {
    private static final int MOST_LOTS = 5;
    private static final int MOST_SERIALS = 100;

    private ContainmentAnswers() {}

    /**
     * What kept something out of the list.
     *
     * @param hold the engines that are held
     * @return the sentences; none where the archive is as it was kept
     */
    public static List<String> problems(EngineHold hold) {
        if (hold.problems().isEmpty()) {
            return List.of();
        }
        return Stream.concat(
                        Stream.of("The archive is not as it was kept, so that the list may lack engines. Verify it."),
                        hold.problems().stream().map(Problem::sentence))
                .toList();
    }

    /**
     * From when to when one bracket runs.
     *
     * @param containment the bracket
     * @return the sentences
     */
    public static List<String> bracket(Containment containment) {
        if (isLot(containment)) {
            return List.of("A lot has no bracket: every tightening of it is in.");
        }
        return List.of(
                "Last known good: "
                        + containment.lastGood().map(ContainmentAnswers::words).orElse("none in the archive") + '.',
                "First known good: "
                        + containment
                                .firstGood()
                                .map(ContainmentAnswers::words)
                                .orElse(
                                        containment.isStillMoved()
                                                ? "open to the end of the archive: the level has not come back for certain"
                                                : "none in the archive")
                        + '.');
    }

    /**
     * How sure the ends of one bracket are.
     *
     * @param containment the bracket
     * @return the sentences
     */
    public static List<String> margins(Containment containment) {
        var answer = new ArrayList<String>();
        if (isLot(containment)) {
            answer.add("Only tightenings whose lot was exported are found; a bolt without a lot may be of it.");
            return answer;
        }
        answer.add("Known good is " + Containment.GOOD_RUN + " conforming tightenings in a row on the same spindle.");
        containment
                .explained()
                .ifPresent(met -> answer.add(Sentence.capital(titles(met)) + " moved for good there, as "
                        + met.word().by() + " states: “" + met.word().why() + "”. From "
                        + Times.minutes(met.word().from())
                        + " on the new level of it counts as good, on that word alone."));
        answer.addAll(
                containment
                        .change()
                        .map(change -> moved(change, containment))
                        .orElse(
                                List.of(
                                        "Asked of all " + containment.searched()
                                                + " tightenings there: no level moved or came back for certain around the suspects, so both ends rest on verdicts alone.")));
        long minutes = containment.clockMargin().toMinutes();
        answer.add(
                minutes == 0
                        ? "Clocks are taken as set alike."
                        : "Clocks may differ by " + Figures.count(minutes, "minute", "minutes")
                                + ": both ends lie that much further out.");
        if (containment.lastGood().isEmpty() || containment.firstGood().isEmpty()) {
            answer.add("An end without a known good is open: what the archive does not hold may be touched too.");
        }
        return answer;
    }

    /**
     * Where the bolt lots of one bracket went besides.
     *
     * @param containment the bracket
     * @return the sentences; none where no lot was exported
     */
    public static List<String> lots(Containment containment) {
        return containment.lots().stream()
                .limit(MOST_LOTS)
                .map(ContainmentAnswers::sentence)
                .toList();
    }

    /**
     * Why tightenings are in, with the first engines of each reason.
     *
     * @param containment the bracket
     * @return a sentence a reason that occurs
     */
    public static List<String> reasons(Containment containment) {
        var answer = new ArrayList<String>();
        for (var reason : Contained.Reason.values()) {
            var serials = containment.contained().stream()
                    .filter(one -> one.reason() == reason)
                    .map(Contained::serial)
                    .distinct()
                    .toList();
            if (!serials.isEmpty()) {
                int more = serials.size() - MOST_SERIALS;
                answer.add(Sentence.capital(reason.words()) + ": "
                        + String.join(", ", serials.subList(0, Math.min(MOST_SERIALS, serials.size())))
                        + (more > 0 ? " and " + more + " more" : ""));
            }
        }
        return answer;
    }

    /** Decisions in short, each with what it is about. */
    static String decided(List<KeptDecision> decisions) {
        return decisions.stream()
                .map(KeptDecision::decision)
                .map(one -> (one.bolt().isEmpty() ? "whole engine" : "bolt " + one.bolt()) + ": "
                        + one.action().word() + ", by " + one.by())
                .collect(Collectors.joining("; "));
    }

    static boolean isLot(Containment containment) {
        return containment.contained().stream().anyMatch(one -> one.reason() == Contained.Reason.OF_THE_LOT);
    }

    static String title(Containment containment) {
        return Sentence.capital(containment.place())
                + (containment.cause().isEmpty() ? "" : ", " + containment.cause());
    }

    private static List<String> moved(Change change, Containment containment) {
        var level = Sentence.capital(change.feature().title());
        return List.of(
                level + " moved at " + place(change) + ", asked of "
                        + change.point().n() + " of all "
                        + containment.searched() + " tightenings there; from "
                        + change.earliest().serial() + " on none is known good.",
                containment
                        .back()
                        .map(there -> level + " came back at " + place(there) + "; before "
                                + there.latest().serial() + " none is known good.")
                        .orElse(
                                containment.isStillMoved()
                                        ? level
                                                + " has not come back for certain: while it is moved, conforming is not known good."
                                                + missed(containment)
                                        : "It counts as moved up to the moment of that word."));
    }

    private static String missed(Containment containment) {
        return containment
                .explained()
                .map(met -> " That word does not explain it"
                        + met.missed()
                                .map(step -> ": one with a moment "
                                        + step.from()
                                                .map(from -> "from " + Times.minutes(from) + " to ")
                                                .orElse("up to ")
                                        + Times.minutes(step.to()) + " would")
                                .orElse("")
                        + '.')
                .orElse("");
    }

    private static String titles(WordMet met) {
        return met.features().stream().map(ChartedFeature::title).collect(Collectors.joining(" and "));
    }

    private static String place(Change change) {
        var earliest = change.earliest();
        return words(change.first())
                + (earliest.equals(change.latest())
                        ? ""
                        : " (between " + earliest.serial() + " and "
                                + change.latest().serial() + ", 95 %)");
    }

    private static String sentence(LotReach lot) {
        var inside = "Lot " + lot.lot() + ": " + Figures.count(lot.inside(), "tightening", "tightenings") + " inside";
        return lot.outside() == 0
                ? inside + ", none elsewhere."
                : inside + ", " + lot.outside() + " elsewhere (" + String.join(", ", lot.stationsOutside()) + "), on "
                        + Figures.count(lot.enginesOutside(), "engine", "engines")
                        + " outside this bracket. If the cause is the bolts, contain the lot.";
    }

    private static String words(TraceIdentity identity) {
        var time = identity.time();
        return identity.words() + (time == null ? "" : ", " + Times.minutes(time));
    }
}
