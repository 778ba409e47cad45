package org.tautlog.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tautlog.judge.Verdict;
import org.tautlog.review.ShiftReview;
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
        var since = review.sincePrevious();
        if (since != null) {
            answer.add(StreamWords.sincePrevious(since));
        }
        return answer;
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
        cases.stream().limit(MOST_CHANGES).forEach(one -> answer.add(StreamWords.moved(one)));
        var others = review.changes().stream()
                .filter(change -> !review.peers().moved(change.stream(), change.feature()))
                .toList();
        others.stream().limit(MOST_CHANGES).forEach(change -> answer.add(sentence(change)));
        if (others.size() > MOST_CHANGES) {
            answer.add("And " + (others.size() - MOST_CHANGES) + " more, listed with the control charts.");
        }
        return answer;
    }

    /** One change in a sentence: what, where, from what to what, since when, alone or with its neighbours. */
    static String sentence(Change change) {
        var feature = change.feature();
        int decimals = Figures.decimals(feature);
        var point = change.point();
        var time = change.first().time();
        var neighbours = change.ofStreams() == 1
                ? ""
                : change.alike() == 1
                        ? ", on no other spindle of the station for certain"
                        : ", as on " + change.alike() + " of the station's " + change.ofStreams() + " spindles";
        return capital(feature.title()) + " of " + change.stream().words()
                + (point.size().value() > 0 ? " rose" : " fell") + " from "
                + Figures.of(point.before(), decimals) + " to " + Figures.of(point.after(), decimals) + ' '
                + feature.unit() + " at " + change.first().serial()
                + (time == null ? "" : ", " + Times.clock(time)) + neighbours + '.';
    }

    static List<String> where(ShiftReview review) {
        if (review.allConform()) {
            return List.of("Nowhere: every tightening that was judged conforms.");
        }
        var answer = new ArrayList<String>();
        review.leadingTallies().stream().limit(MOST_PLACES).forEach(tally -> {
            var place = tally.mostInCount() == tally.tightenings()
                    ? "all on " + tally.mostIn().words()
                    : tally.mostInCount() + " on " + tally.mostIn().words() + ", the others on "
                            + Figures.count(tally.streams() - 1, "other spindle", "other spindles");
            answer.add(capital(tally.code().title()) + ": "
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
        var answer = new ArrayList<String>();
        review.leadingTallies().stream().limit(MOST_PLACES).forEach(tally -> {
            var first = tally.first();
            var last = tally.last();
            if (first != null && last != null) {
                answer.add(capital(tally.code().title())
                        + (first.equals(last)
                                ? ": at " + Times.clock(first)
                                : ": first at " + Times.clock(first) + ", last at " + Times.clock(last))
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

    /** A message as a sentence: capital first, full stop last. */
    static String sentence(String message) {
        return capital(message) + (message.endsWith(".") ? "" : ".");
    }

    static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
