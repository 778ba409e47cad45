package org.tautlog.report.evidence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.tautlog.archive.KeptDecision;
import org.tautlog.archive.ledger.DecisionAction;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.problem.Problem;
import org.tautlog.report.judged.ListedModel;
import org.tautlog.report.judged.ShapeWords;
import org.tautlog.report.words.Figures;
import org.tautlog.report.words.Sentence;
import org.tautlog.report.words.Times;
import org.tautlog.review.evidence.BoltPosition;
import org.tautlog.review.evidence.EngineDossier;
import org.tautlog.review.evidence.EngineTightening;
import org.tautlog.review.evidence.PositionStanding;
import org.tautlog.review.evidence.Repeat;
import org.tautlog.review.evidence.Said;
import org.tautlog.review.evidence.SameCause;
import org.tautlog.review.shape.Departure;
import org.tautlog.trace.TraceIdentity;

/** An auditor's questions about an engine, answered in sentences made of the dossier's own fields. */
public final class DossierAnswers {
    private static final int MOST_OTHERS = 12;

    private DossierAnswers() {}

    /**
     * Is this engine sound?
     *
     * @param dossier what is known
     * @return the answer, its first sentence alone enough
     */
    public static List<String> sound(EngineDossier dossier) {
        var answer = new ArrayList<String>();
        answer.add(
                switch (dossier.soundness()) {
                    case NOT_SOUND -> "No. Hold it until a qualified person has decided.";
                    case HELD -> "It is held back by a recorded decision.";
                    case NOT_KNOWN -> "Not known. Treat it as suspect until what is open is closed.";
                    case REVIEW -> "Not yet: a qualified person must look first.";
                    case SOUND_BY_DECISION -> "Yes, by recorded decisions: not every verdict alone says so.";
                    case SOUND -> "Yes, as far as its traces tell: every bolt position that is known of conforms.";
                });
        if (!dossier.problems().isEmpty()) {
            answer.add(
                    "The archive is not as it was kept, so that this answer may lack something; what is wrong with it"
                            + " stands under what is not known. Verify it.");
        }
        for (var position : dossier.positions()) {
            if (position.standing() == PositionStanding.NONCONFORMING
                    || position.standing() == PositionStanding.REVIEW) {
                answer.add(name(position) + ": " + position.standing().word() + headline(position) + ".");
            }
            outrun(position).ifPresent(answer::add);
            position.decidedBy().ifPresent(decision -> answer.add(covered(position, decision)));
        }
        for (var position : dossier.positions()) {
            position.attempts().forEach(attempt -> departure(position, attempt).ifPresent(answer::add));
        }
        var told = dossier.positions().stream()
                .flatMap(position -> position.decidedBy().stream())
                .toList();
        dossier.decisions().stream()
                .filter(decision -> decision.standing() && !told.contains(decision))
                .forEach(decision -> answer.add(sentence(decision)));
        return answer;
    }

    /**
     * What is not known?
     *
     * @param dossier what is known
     * @return the answer
     */
    public static List<String> unknown(EngineDossier dossier) {
        var answer = new ArrayList<String>();
        var missing = dossier.standing(PositionStanding.MISSING);
        var stated = dossier.specification().boltPositions();
        missing(missing, position -> stated.contains(position.bolt()), "the specification states")
                .ifPresent(answer::add);
        missing(missing, position -> !stated.contains(position.bolt()), "at least half of the other engines have")
                .ifPresent(answer::add);
        positions(dossier).ifPresent(answer::add);
        dossier.positions().stream()
                .flatMap(position -> position.repeats().stream()
                        .filter(repeat -> repeat.need() != Repeat.Need.NONE || repeat.decidedAfter())
                        .map(repeat -> sentence(position, repeat)))
                .forEach(answer::add);
        dossier.positions().stream()
                .filter(position -> newBoltPending(dossier, position))
                .map(position -> "A new bolt or part was decided for " + name(position)
                        + "; no later attempt is in the archive.")
                .forEach(answer::add);
        dossier.standing(PositionStanding.UNJUDGED)
                .forEach(position -> answer.add(
                        name(position) + " could not be judged" + headline(position) + "; that is not a pass."));
        unseen(dossier, answer);
        var load = dossier.clampLoad();
        answer.add(
                load.isEmpty()
                        ? "No clamp load is estimated."
                        : "Clamp load was not measured: it is estimated, for "
                                + Figures.count(load.get().bolts(), "bolt position", "bolt positions")
                                + (load.get().withoutEstimate() > 0
                                        ? "; " + Figures.count(load.get().withoutEstimate(), "has", "have")
                                                + " no estimate"
                                        : "")
                                + '.');
        dossier.problems().stream().map(Problem::sentence).forEach(answer::add);
        return answer;
    }

    /** What a decision covers stays told: a reader of the answer alone must know which bolt it was, and why. */
    private static String covered(BoltPosition position, KeptDecision decision) {
        var judgement = position.last().orElseThrow().judgement();
        var more = judgement.findings().stream()
                .skip(1)
                .filter(finding -> finding.severity() != Consequence.NOTE)
                .map(ListedModel::title)
                .distinct()
                .collect(Collectors.joining(", "));
        return name(position) + ": " + judgement.verdict().word() + headline(position)
                + (more.isEmpty() ? "" : "; " + more)
                + ". Decided: " + sentence(decision);
    }

    private static Optional<String> outrun(BoltPosition position) {
        return position.outrun()
                .filter(decision -> position.standing() != PositionStanding.CONFORMING)
                .flatMap(decision ->
                        position.last().map(last -> name(position) + ": attempt " + uncovered(last, decision)));
    }

    private static String uncovered(EngineTightening last, KeptDecision decision) {
        var attempt = last.judgement().identity().attempt();
        var words = "the decision to " + decision.decision().action().word() + " of " + Times.minutes(decision.time());
        return last.knownAt(decision.entry())
                .map(seen -> attempt + " is judged worse since " + words + ": then " + judged(seen) + ", now "
                        + judged(last.standing()) + ". It does not cover that; a person must decide anew.")
                .orElse(attempt + " came into the archive after " + words + ", which does not cover it.");
    }

    private static String judged(Said said) {
        return said.verdict().word() + " by version " + said.version()
                + said.findings().stream()
                        .sorted()
                        .map(FindingCode::title)
                        .collect(Collectors.collectingAndThen(
                                Collectors.joining(", "), titles -> titles.isEmpty() ? "" : " (" + titles + ')'));
    }

    /** A curve that leaves its peers' envelope asks for a look, whatever its verdict. */
    private static Optional<String> departure(BoltPosition position, EngineTightening attempt) {
        return attempt.drawn()
                .flatMap(listed -> listed.shape().found())
                .filter(shape -> shape.departure().leaves())
                .map(shape -> name(position)
                        + (position.attempts().size() > 1
                                ? ", attempt " + attempt.judgement().identity().attempt()
                                : "")
                        + ": "
                        + ShapeWords.words(
                                shape.departure(),
                                Departure.hasPlace(attempt.judgement().findings())) + '.');
    }

    private static Optional<String> missing(
            List<BoltPosition> missing, Predicate<BoltPosition> wanted, String whoAsks) {
        var names = missing.stream().filter(wanted).map(DossierAnswers::name).toList();
        return names.isEmpty()
                ? Optional.empty()
                : Optional.of("No recording of " + String.join(", ", names) + ", which " + whoAsks
                        + ". A missing trace is suspect, not good.");
    }

    private static Optional<String> positions(EngineDossier dossier) {
        var stated = dossier.specification().boltPositions();
        if (stated.isEmpty()) {
            return Optional.of("How many bolt positions it has: the specification does not state them, "
                    + (dossier.surroundings().engines() == 0
                            ? "and the archive holds no other engine of that time to tell."
                            : "so that only those count which at least half of the other engines have."));
        }
        var others = dossier.positions().stream()
                .filter(position -> !stated.contains(position.bolt()))
                .filter(position -> position.standing() != PositionStanding.MISSING)
                .map(DossierAnswers::name)
                .toList();
        return others.isEmpty()
                ? Optional.empty()
                : Optional.of("The specification states no such position: " + String.join(", ", others) + '.');
    }

    private static boolean newBoltPending(EngineDossier dossier, BoltPosition position) {
        return dossier.decisions().stream()
                .filter(KeptDecision::standing)
                .filter(kept -> position.repeats().stream()
                        .noneMatch(repeat -> kept.equals(repeat.decision().orElse(null))))
                .map(KeptDecision::decision)
                .anyMatch(decision -> decision.bolt().equals(position.bolt())
                        && (decision.action() == DecisionAction.RE_TIGHTEN
                                || decision.action() == DecisionAction.REPLACE));
    }

    private static void unseen(EngineDossier dossier, List<String> answer) {
        dossier.tightenings().stream()
                .flatMap(one -> one.drawn().stream())
                .flatMap(listed -> listed.shape().whyMissing().stream())
                .collect(Collectors.groupingBy(why -> why, TreeMap::new, Collectors.counting()))
                .forEach((why, n) -> answer.add("Where along its length the curve of "
                        + Figures.count(n, "tightening", "tightenings") + " departs from its peers: " + why + '.'));
        long lost = dossier.tightenings().stream()
                .filter(one -> one.drawn().isEmpty())
                .count();
        if (lost > 0) {
            answer.add("The archive has lost the trace of "
                    + Figures.count(lost, "judged tightening", "judged tightenings") + "; verify it.");
        }
        long disagreed = dossier.tightenings().stream()
                .filter(EngineTightening::disagreed)
                .count();
        if (disagreed > 0) {
            answer.add("Specification versions disagree on " + Figures.count(disagreed, "tightening", "tightenings")
                    + "; the last one counts.");
        }
    }

    /**
     * Who else?
     *
     * @param dossier what is known
     * @return the answer
     */
    public static List<String> others(EngineDossier dossier) {
        var around = dossier.surroundings();
        var looked = "Looked at: " + Figures.count(around.tightenings(), "tightening", "tightenings") + " of "
                + Figures.count(around.engines(), "other engine", "other engines")
                + (around.hours() > 0 ? " within " + around.hours() + " hours." : ", whatever their time.");
        if (dossier.others().isEmpty()) {
            return List.of("Nothing to search for: no finding of this engine points to a cause.", looked);
        }
        var answer = new ArrayList<String>();
        dossier.others().stream()
                .sorted(Comparator.comparing(cause -> cause.code().usual() == Consequence.UNJUDGED))
                .forEach(cause -> answer.add(sentence(cause)));
        answer.add(looked);
        return answer;
    }

    /** A position in words: {@code Bolt 3 (S40)}. */
    static String name(BoltPosition position) {
        return "Bolt " + (position.bolt().isEmpty() ? "(unnamed)" : position.bolt())
                + (position.station().isEmpty() ? "" : " (" + position.station() + ')');
    }

    static String sentence(KeptDecision kept) {
        var decision = kept.decision();
        return Sentence.capital(decision.action().word())
                + (decision.bolt().isEmpty() ? ", whole engine" : ", bolt " + decision.bolt())
                + ", by " + decision.by() + ", " + Times.minutes(kept.time()) + ": \u201C"
                + decision.reason() + "\u201D.";
    }

    static String sentence(BoltPosition position, Repeat repeat) {
        var why = switch (repeat.need()) {
            case NONE -> " after an attempt that left the bolt elastic.";
            case PAST_ONSET -> " after an attempt that took the bolt past its yield onset.";
            case NOT_TOLD -> " after an attempt whose curve does not tell whether the bolt passed its yield onset.";
            case EARLIER_MISSING -> " and an earlier attempt is not in the archive.";
        };
        var decided = repeat.decision()
                .map(kept -> (repeat.decidedAfter()
                                ? " Decided after attempt " + repeat.attempt() + " was made: "
                                : " Decided: ")
                        + sentence(kept))
                .orElse(
                        repeat.undecided()
                                ? " It conforms only with a recorded decision, re-tighten (with a new bolt) or replace;"
                                        + " none is recorded."
                                : "");
        return name(position) + ": attempt " + repeat.attempt() + why + decided;
    }

    private static String sentence(SameCause cause) {
        var where = (cause.scope() == SameCause.Scope.SPINDLE ? "on spindle " : "in bolt lot ") + cause.name();
        var title = (cause.code() == FindingCode.TOO_FEW_SAMPLES
                        ? "Not to be told from the samples"
                        : Sentence.capital(cause.code().title()))
                + ' ' + where + ": ";
        if (cause.others().isEmpty()) {
            return title + "none of " + Figures.count(cause.of(), "other tightening", "other tightenings") + '.';
        }
        var names = cause.others().stream()
                .map(TraceIdentity::serial)
                .distinct()
                .limit(MOST_OTHERS)
                .collect(Collectors.joining(", "));
        long engines =
                cause.others().stream().map(TraceIdentity::serial).distinct().count();
        return title + cause.others().size() + " of "
                + Figures.count(cause.of(), "other tightening", "other tightenings") + ": " + names
                + (engines > MOST_OTHERS ? " and " + (engines - MOST_OTHERS) + " more." : ".");
    }

    private static String headline(BoltPosition position) {
        return position.last()
                .flatMap(last -> last.judgement().findings().stream().findFirst())
                .map(finding -> ", " + ListedModel.title(finding) + " (" + ListedModel.message(finding) + ')')
                .orElse("");
    }
}
