package org.tautlog.report.shift;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tautlog.report.words.Figures;
import org.tautlog.report.words.Sentence;
import org.tautlog.review.ShiftReview;
import org.tautlog.review.cause.Against;
import org.tautlog.review.cause.Cause;
import org.tautlog.review.cause.Clue;
import org.tautlog.review.cause.Diagnosis;
import org.tautlog.review.cause.Pattern;
import org.tautlog.review.cause.RankedCause;
import org.tautlog.review.cause.Separation;

/** Why something differs, in sentences made of the review's own numbers. */
public final class CauseWords {
    private static final double WORTH_A_ROW = 0.05;
    private static final int LEAST_ROWS = 2;
    private static final int STEP_PERCENT = 5;
    private static final double OFTEN = 0.4;

    private CauseWords() {}

    /** The diagnosis of a spindle, lot or tightening. */
    static Optional<Diagnosis> about(ShiftReview review, Against against, String what) {
        return review.diagnoses().stream()
                .filter(one -> one.against() == against && one.what().equals(what))
                .findFirst();
    }

    /** Spindles, stations and shifts that are off; those that moved apart within the shift have cases of their own. */
    static List<Diagnosis> offsets(ShiftReview review) {
        return ofTools(review).stream()
                .filter(one -> one.pattern() != Pattern.ONE_SPINDLE || one.against() != Against.BEFORE)
                .toList();
    }

    /** All that ask for a check of spindle or station, in the order in which to do them. */
    static List<Diagnosis> ofTools(ShiftReview review) {
        return review.diagnoses().stream()
                .filter(one -> one.pattern() != Pattern.ONE_LOT && one.pattern() != Pattern.ONE_TIGHTENING)
                .toList();
    }

    /** One that is off all shift long, in a sentence. */
    static String allShift(Diagnosis one) {
        return Sentence.capital(one.what()) + " differs from " + one.against().title() + ": " + verdict(one) + '.';
    }

    /**
     * {@return the cause, or why none can be told, in a few words}
     *
     * @param one what came out
     */
    public static String verdict(Diagnosis one) {
        if (one.ranked().isEmpty()) {
            return "cause not ranked: " + one.whyNot();
        }
        var named = one.named();
        if (named.isPresent()) {
            return named.get().cause().title() + ", " + percent(named.get().likelihood());
        }
        if (one.chance() >= one.ranked().get(0).likelihood()) {
            return "cannot tell: scatter of good parts alone may do it, " + percent(one.chance());
        }
        if (one.unlikeAll()) {
            return "cannot tell: two causes at once, such as "
                    + both(one.pair()).replace(" at once", "") + ", or something else, " + percent(one.other());
        }
        var best = one.ranked().get(0);
        if (one.left().size() == 1 && !best.contradicting().isEmpty()) {
            return "cannot tell: " + best.cause().title() + " fits best, " + percent(best.likelihood()) + ", but "
                    + best.contradicting().stream()
                            .map(clue -> clue.cue().title())
                            .collect(Collectors.joining(" and "))
                    + " did not move as by that";
        }
        return (one.pattern() == Pattern.ONE_TIGHTENING ? "cannot tell from one tightening: " : "cannot tell: ")
                + Stream.concat(
                                one.left().stream()
                                        .map(left -> left.cause().title() + ", " + percent(left.likelihood())),
                                Stream.of(one)
                                        .filter(Diagnosis::otherLeft)
                                        .map(also ->
                                                both(also.pair()) + " or something else, " + percent(also.other())))
                        .collect(Collectors.joining("; or "));
    }

    private static String both(List<Cause> pair) {
        return pair.stream().map(Cause::title).collect(Collectors.joining(" and ")) + " at once";
    }

    /**
     * {@return what to do on the floor next: the check of the cause named, those that tell the causes left apart, or those of
     * the likeliest}
     *
     * @param one what came out
     */
    public static String check(Diagnosis one) {
        if (one.against() == Against.SPECIFICATION) {
            return "Stop this spindle until a qualified person has looked at what was found on it.";
        }
        if (one.against() == Against.EARLIER_SHIFT && one.ranked().isEmpty()) {
            return "Put a reference torque transducer in line with each of the station's spindles (ISO 5393), and compare"
                    + " programmes, sockets and couplings with those of the shift before.";
        }
        if (!one.ranked().isEmpty() && one.ranked().get(0).likelihood() <= one.chance()) {
            return "Nothing on the floor yet; look again when more of it is tightened.";
        }
        if (!one.separations().isEmpty()) {
            return one.separations().stream().map(Separation::sentence).collect(Collectors.joining(" "));
        }
        var left = one.named().map(List::of).orElseGet(one::left);
        return left.isEmpty()
                ? "Compare the traces of both sides by hand."
                : left.stream()
                        .limit(LEAST_ROWS)
                        .map(cause -> cause.cause().check(one.pattern()))
                        .collect(Collectors.joining(" "));
    }

    static Map<String, Object> model(Diagnosis one) {
        var shown = one.ranked().stream()
                .filter(cause ->
                        cause.likelihood() >= WORTH_A_ROW || one.ranked().indexOf(cause) < LEAST_ROWS)
                .toList();
        return Map.of(
                "what",
                        Sentence.capital(one.what()) + ", against "
                                + one.against().title(),
                "verdict", Sentence.capital(verdict(one)),
                "check", check(one),
                "rest", one.ranked().isEmpty() ? "" : rest(one),
                "rows", shown.stream().map(cause -> row(one, cause)).toList());
    }

    private static String rest(Diagnosis one) {
        return "Two causes at once or something else " + percent(one.other()) + ", scatter of good parts "
                + percent(one.chance()) + '.';
    }

    private static Map<String, Object> row(Diagnosis one, RankedCause ranked) {
        var cause = ranked.cause();
        var pattern = one.pattern();
        boolean fits = cause.shareIn(pattern) >= OFTEN;
        return Map.of(
                "cause", cause.title(),
                "likelihood", percent(ranked.likelihood()),
                "size", size(ranked),
                "clues",
                        Stream.concat(ranked.pro().stream(), ranked.contra().stream())
                                .map(CauseWords::clue)
                                .toList(),
                "streamsSide", fits ? "for" : "against",
                "streams",
                        "seen " + pattern.title() + ", as " + (fits ? "" : "only ")
                                + Math.round(100 * cause.shareIn(pattern)) + " of 100 such");
    }

    private static String size(RankedCause ranked) {
        boolean share = ranked.cause().unit().equals("%");
        return Figures.signed(share ? 100 * ranked.size() : ranked.size(), 1)
                + ' '
                + ranked.cause().unit();
    }

    private static Map<String, Object> clue(Clue clue) {
        var cue = clue.cue();
        return Map.of(
                "side", clue.agrees() ? "for" : "against",
                "feature", cue.title() + (cue.unit().isEmpty() ? "" : ", " + cue.unit()),
                "observed", Figures.signed(clue.seen(), cue.decimals()),
                "expected", Figures.signed(clue.foretold(), cue.decimals()),
                "sigma", Figures.signed(clue.spreads(), 1));
    }

    /** Rounded coarsely, as the odds rest on assumptions. */
    static String percent(double likelihood) {
        long rounded = STEP_PERCENT * Math.round(100 * likelihood / STEP_PERCENT);
        return rounded == 0 ? "below 5 %" : rounded >= 100 ? "above 95 %" : rounded + " %";
    }
}
