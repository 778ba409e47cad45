package org.tautlog.report.shift;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tautlog.judge.Verdict;
import org.tautlog.report.words.Figures;
import org.tautlog.report.words.Sentence;
import org.tautlog.report.words.ShiftClock;
import org.tautlog.review.ShiftReview;
import org.tautlog.review.cause.Against;
import org.tautlog.review.stream.Change;

/** The answers to a reader's first questions, in sentences made of the review's own numbers. */
final class ShiftAnswers {
    private static final int MOST_CHANGES = 5;
    private static final int MOST_HELD = 24;
    private static final int MOST_PLACES = 6;

    private ShiftAnswers() {}

    static List<String> unsafe(ShiftReview review) {
        var counts = review.counts();
        var answer = new ArrayList<String>();
        if (counts.total() == 0) {
            return List.of("Nothing was judged: no trace could be read.");
        }
        if (counts.of(Verdict.NONCONFORMING) > 0) {
            answer.add(Figures.count(counts.of(Verdict.NONCONFORMING), "tightening does", "tightenings do")
                    + " not conform, on " + Figures.count(review.enginesHeld().size(), "engine", "engines")
                    + ". Hold " + (review.enginesHeld().size() == 1 ? "it" : "them")
                    + " until a qualified person has decided.");
        } else {
            answer.add("No tightening was found nonconforming.");
        }
        if (counts.of(Verdict.UNJUDGED) > 0) {
            answer.add(Figures.count(counts.of(Verdict.UNJUDGED), "tightening", "tightenings")
                    + " could not be judged; that is not a pass.");
        }
        if (counts.of(Verdict.REVIEW) > 0) {
            answer.add(Figures.count(counts.of(Verdict.REVIEW), "more asks", "more ask") + " for a look.");
        }
        int odd = review.shapes().outliers().size();
        if (odd > 0) {
            answer.add(Figures.count(odd, "conforming tightening has", "conforming tightenings have")
                    + " a curve that leaves the envelope of its peers, where chance gives about "
                    + Figures.of(review.shapes().expected(), 1) + ": look at " + (odd == 1 ? "it" : "them")
                    + " too, under \u201CCurves that leave their peers\u201D.");
        }
        if (review.imported().rejected() > 0) {
            answer.add(Figures.count(review.imported().rejected(), "recording or row", "recordings or rows")
                    + " could not be read: an engine may have tightenings that nobody judged.");
        }
        return answer;
    }

    static List<String> changes(ShiftReview review) {
        var answer = new ArrayList<>(changesWithin(review));
        answer.addAll(allShift(review));
        var since = review.sincePrevious();
        if (since != null) {
            answer.add(StreamWords.sincePrevious(since));
        }
        return answer;
    }

    /** What is off all shift long: no step within the shift shows it. */
    private static List<String> allShift(ShiftReview review) {
        return CauseWords.offsets(review).stream()
                .filter(one -> one.against() != Against.BEFORE)
                .map(CauseWords::allShift)
                .toList();
    }

    private static List<String> changesWithin(ShiftReview review) {
        if (review.seriesSearched() == 0) {
            return List.of("Too few tightenings per spindle to tell.");
        }
        var cases = review.peers().cases();
        if (review.changes().isEmpty() && cases.isEmpty()) {
            return List.of("No level moved for certain, in "
                    + Figures.count(review.seriesSearched(), "series", "series") + " searched.");
        }
        var answer = new ArrayList<String>();
        var clock = ShiftClock.of(review);
        cases.stream().limit(MOST_CHANGES).forEach(one -> answer.add(StreamWords.moved(one, clock)));
        var others = review.changes().stream()
                .filter(change -> !review.peers().moved(change.stream(), change.feature()))
                .toList();
        var together = others.stream()
                .collect(Collectors.groupingBy(ShiftAnswers::movedWith, LinkedHashMap::new, Collectors.toList()))
                .values();
        together.stream().limit(MOST_CHANGES).forEach(changes -> answer.add(sentence(changes, clock)));
        if (together.size() > MOST_CHANGES) {
            answer.add("And " + (together.size() - MOST_CHANGES) + " more, listed with the control charts.");
        }
        return answer;
    }

    /** What spindles of a station that moved alike have in common. */
    private static List<Object> movedWith(Change change) {
        return List.of(
                change.stream().station(),
                change.feature(),
                change.point().size().value() > 0,
                change.alike() > 1 ? "" : change.stream().spindle());
    }

    private static String sentence(List<Change> changes, ShiftClock clock) {
        var first = changes.get(0);
        if (changes.size() == 1) {
            return sentence(first, clock);
        }
        var feature = first.feature();
        var size = changes.stream()
                .mapToDouble(change -> Math.abs(change.point().size().value()))
                .summaryStatistics();
        int decimals = Figures.decimals(feature);
        return Sentence.capital(feature.title()) + (first.point().size().value() > 0 ? " rose" : " fell") + " on "
                + changes.stream().map(change -> change.stream().words()).collect(Collectors.joining(", "))
                + ", " + changes.size() + " of the station's " + first.ofStreams() + " spindles, by "
                + Figures.of(size.getMin(), decimals) + " to " + Figures.of(size.getMax(), decimals) + ' '
                + feature.unit() + "; on " + first.stream().words() + " at " + clock.words(first.first()) + '.';
    }

    /** One change in a sentence: what, where, from what to what, since when, alone or with its neighbours. */
    static String sentence(Change change, ShiftClock clock) {
        var feature = change.feature();
        int decimals = Figures.decimals(feature);
        var point = change.point();
        var neighbours = change.ofStreams() == 1
                ? ""
                : change.alike() == 1
                        ? ", on no other spindle of the station for certain"
                        : ", as on " + change.alike() + " of the station's " + change.ofStreams() + " spindles";
        return Sentence.capital(feature.title()) + " of " + change.stream().words()
                + (point.size().value() > 0 ? " rose" : " fell") + " from "
                + Figures.of(point.before(), decimals) + " to " + Figures.of(point.after(), decimals) + ' '
                + feature.unit() + " at " + clock.words(change.first()) + neighbours + '.';
    }

    static List<String> where(ShiftReview review) {
        var answer = new ArrayList<String>();
        CauseWords.offsets(review)
                .forEach(one -> answer.add(Sentence.capital(one.what()) + ": differs from "
                        + one.against().title() + '.'));
        if (review.allConform()) {
            answer.add(
                    answer.isEmpty()
                            ? "Nowhere: every tightening that was judged conforms."
                            : "Every tightening that was judged conforms.");
            return answer;
        }
        review.leadingTallies().stream().limit(MOST_PLACES).forEach(tally -> {
            var place = tally.mostInCount() == tally.tightenings()
                    ? "all on " + tally.mostIn().words()
                    : tally.mostInCount() + " on " + tally.mostIn().words() + ", the others on "
                            + Figures.count(tally.streams() - 1, "other spindle", "other spindles");
            answer.add(Sentence.capital(tally.code().title()) + ": "
                    + (tally.tightenings() == 1
                            ? "once, on " + tally.mostIn().words()
                            : tally.tightenings() + " times, " + place)
                    + '.');
        });
        rest(review).ifPresent(answer::add);
        return answer;
    }

    /** Those that the lists have no room for, by name and number: nothing is left out without a word. */
    private static Optional<String> rest(ShiftReview review) {
        var rest = review.leadingTallies().stream().skip(MOST_PLACES).toList();
        return rest.isEmpty()
                ? Optional.empty()
                : Optional.of("And " + rest.size() + " more: "
                        + rest.stream()
                                .map(tally -> tally.code().title() + " ("
                                        + tally.mostIn().words()
                                        + (tally.streams() > 1
                                                ? " and " + Figures.count(tally.streams() - 1, "other", "others")
                                                : "")
                                        + ')')
                                .collect(Collectors.joining(", "))
                        + ". The table of findings has them all.");
    }

    static List<String> hold(ShiftReview review) {
        var held = review.enginesHeld();
        return held.subList(0, Math.min(MOST_HELD, held.size()));
    }

    static List<String> since(ShiftReview review) {
        var clock = ShiftClock.of(review);
        var answer = new ArrayList<String>();
        review.leadingTallies().stream().limit(MOST_PLACES).forEach(tally -> {
            var first = tally.first();
            var last = tally.last();
            if (first != null && last != null) {
                answer.add(Sentence.capital(tally.code().title())
                        + (first.equals(last)
                                ? ": at " + clock.words(first)
                                : ": first at " + clock.words(first) + ", last at " + clock.words(last))
                        + '.');
            }
        });
        int more = review.leadingTallies().size() - MOST_PLACES;
        if (more > 0 && !answer.isEmpty()) {
            answer.add("For " + Figures.count(more, "more finding", "more findings") + " see the table of findings.");
        }
        return answer.isEmpty()
                ? List.of(review.allConform() ? "No onset to tell." : "The export gives no times.")
                : answer;
    }
}
