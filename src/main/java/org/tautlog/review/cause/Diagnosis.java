package org.tautlog.review.cause;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Why something differs, as far as can be told.
 *
 * @param pattern in which streams
 * @param against what it was held against
 * @param what the spindle, the lot or the tightening, in words
 * @param ranked all causes, likeliest first; empty where they cannot be ranked
 * @param pair the two causes that would explain it best if both were there; empty where none are ranked
 * @param other likelihood of two causes at once or of something else, 0 to 1
 * @param chance likelihood of nothing at all, 0 to 1
 * @param whyNot why no cause could be ranked; empty where they were
 */
public record Diagnosis(
        Pattern pattern,
        Against against,
        String what,
        List<RankedCause> ranked,
        List<Cause> pair,
        double other,
        double chance,
        String whyNot) {
    /** A cause is named where it is so many times as likely as every other one, as something else, and as chance. */
    public static final double ODDS = 5;

    /** For a single tightening: it was picked from hundreds, and nothing confirms it. Source: strong evidence in Ranking's. */
    public static final double ODDS_OF_ONE = 20;

    /**
     * And where at least so many cues speak for it, more than against: features that moved as it would move them, and the
     * streams in which they did, where most of its occurrences show in those. None may speak against it that it would move
     * about as far as any.
     */
    public static final int LEAST_CUES = 2;

    /** More causes than this are not told apart pair by pair. */
    public static final int MOST_SEPARATED = 3;

    private static final double MOST = 0.5;

    public Diagnosis {
        Objects.requireNonNull(pattern, "pattern");
        Objects.requireNonNull(against, "against");
        Objects.requireNonNull(what, "what");
        ranked = List.copyOf(ranked);
        pair = List.copyOf(pair);
        if (ranked.isEmpty() == whyNot.isEmpty()) {
            throw new IllegalArgumentException(
                    "causes are ranked, or there is a reason why not; never both or neither");
        }
    }

    static Diagnosis missing(Pattern pattern, Against against, String what, String whyNot) {
        return new Diagnosis(pattern, against, what, List.of(), List.of(), 0, 0, whyNot);
    }

    /** {@return the cause that can be named; empty where none can be told from the rest} */
    public Optional<RankedCause> named() {
        if (ranked.isEmpty()) {
            return Optional.empty();
        }
        var best = ranked.get(0);
        double next = Math.max(Math.max(other, chance), ranked.get(1).likelihood());
        boolean alone = ranked.stream().skip(1).noneMatch(one -> leftBeside(best, one));
        int pro = best.pro().size() + (best.cause().shareIn(pattern) >= MOST ? 1 : 0);
        double odds = pattern == Pattern.ONE_TIGHTENING ? ODDS_OF_ONE : ODDS;
        return best.likelihood() >= odds * next
                        && alone
                        && best.contradicting().isEmpty()
                        && pro >= LEAST_CUES
                        && best.contra().size() < pro
                ? Optional.of(best)
                : Optional.empty();
    }

    /**
     * Whether a cause is left beside another. Against an earlier shift tool, programme and parts may all have changed, so
     * there the curves alone must speak against it, without how often it shows in such streams.
     */
    private boolean leftBeside(RankedCause best, RankedCause one) {
        return ODDS * one.likelihood() > best.likelihood()
                || (against == Against.EARLIER_SHIFT && ODDS * byCurves(one) > byCurves(best));
    }

    private double byCurves(RankedCause one) {
        return one.likelihood() / one.cause().shareIn(pattern);
    }

    /**
     * {@return the causes that remain: each at least a fifth as likely as the likeliest, against an earlier shift by its curves
     * alone too, and likelier than chance}
     */
    public List<RankedCause> left() {
        return ranked.stream()
                .filter(one -> leftBeside(ranked.get(0), one) && one.likelihood() > chance)
                .toList();
    }

    /** {@return whether two causes at once or something else remain beside the likeliest cause} */
    public boolean otherLeft() {
        return !ranked.isEmpty() && ODDS * other > ranked.get(0).likelihood() && other > chance;
    }

    /**
     * {@return the checks on the floor that tell the likeliest causes left apart, those of the likeliest two at once among
     * them where such remain: one for each pair of the first {@value #MOST_SEPARATED}; empty where a cause is named}
     */
    public List<Separation> separations() {
        if (named().isPresent()) {
            return List.of();
        }
        var open = Stream.concat(
                        left().stream().map(RankedCause::cause), otherLeft() ? pair.stream() : Stream.<Cause>of())
                .distinct()
                .limit(MOST_SEPARATED)
                .toList();
        var separations = new ArrayList<Separation>();
        for (int i = 0; i < open.size(); i++) {
            for (int j = i + 1; j < open.size(); j++) {
                separations.add(Separation.of(open.get(i), open.get(j), pattern));
            }
        }
        return separations;
    }

    /** {@return whether something that is none of the causes is at least as likely as the likeliest of them} */
    public boolean unlikeAll() {
        return !ranked.isEmpty() && other >= ranked.get(0).likelihood();
    }
}
