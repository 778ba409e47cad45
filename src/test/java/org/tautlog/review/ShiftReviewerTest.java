package org.tautlog.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.review.stream.ChartedFeature;
import org.tautlog.review.stream.Stream;
import org.tautlog.trace.TraceIdentity;

class ShiftReviewerTest {
    private final ShiftReview review = MadeShift.review(60, 12);

    @Test
    void every_tightening_is_counted_once_in_the_whole_and_once_in_its_stream() {
        assertEquals(480, review.counts().total());
        assertEquals(60, review.engines());
        assertEquals(8, review.streams().size());
        for (var verdict : Verdict.values()) {
            assertEquals(
                    review.counts().of(verdict),
                    review.streams().stream()
                            .mapToInt(stream -> stream.counts().of(verdict))
                            .sum());
        }
    }

    @Test
    void the_worst_stands_first() {
        var verdicts = review.listed().stream()
                .map(listed -> listed.judgement().verdict())
                .toList();
        for (int i = 1; i < verdicts.size(); i++) {
            assertTrue(verdicts.get(i - 1).compareTo(verdicts.get(i)) >= 0, verdicts.toString());
        }
        assertEquals("FW-000024", review.listed().get(0).judgement().identity().serial());
    }

    @Test
    void a_bounded_list_keeps_the_worst_and_says_how_many_it_left() {
        var bounded = MadeShift.review(60, 1);
        assertEquals(1, bounded.listed().size());
        assertEquals(review.listed().get(0).judgement(), bounded.listed().get(0).judgement());
        assertEquals(review.listed().size() - 1, bounded.unlisted());
    }

    @Test
    void peers_are_of_the_same_spindle_and_never_the_tightening_itself() {
        for (var listed : review.listed()) {
            assertTrue(
                    listed.peers().size() >= 4, "peers of " + listed.judgement().identity());
            assertFalse(listed.peers().contains(listed.outline()), "its own peer");
        }
    }

    @Test
    void the_drifting_spindle_is_found_alone_and_dated() {
        var rates = review.changes().stream()
                .filter(change -> change.feature() == ChartedFeature.TORQUE_RATE)
                .toList();
        assertEquals(1, rates.size(), rates.toString());
        var change = rates.get(0);
        assertEquals(new Stream("S40", "3"), change.stream());
        assertEquals(1, change.alike());
        assertEquals(4, change.ofStreams());
        assertEquals("FW-000032", change.first().serial());
    }

    @Test
    void charts_are_drawn_for_every_spindle_and_feature_from_first_attempts() {
        assertEquals(8 * ChartedFeature.values().length, review.charts().size());
        assertTrue(
                review.charts().stream()
                        .allMatch(chart -> chart.values().size() + chart.aside().size() == 60
                                || chart.feature() == ChartedFeature.CLAMP_LOAD
                                || chart.feature() == ChartedFeature.SPRING_BACK),
                "points");
    }

    @Test
    void a_later_good_attempt_does_not_mend_the_first_pass() {
        var reviewer = new ShiftReviewer(MadeShift.specification(), 5);
        var bad = MadeShift.named("FW-000001", 300);
        var good = MadeShift.named("FW-000001", 360);
        reviewer.accept(bad.judgement(), bad.curve());
        reviewer.accept(again(good.judgement()), good.curve());
        var two = reviewer.review(new ImportRecord(1, 0, 2, 0, List.of(), List.of()));
        assertEquals(new FirstPass(0, 1), two.firstPass());
        assertEquals(List.of("FW-000001"), two.enginesHeld());
        assertEquals(1, two.charts().get(0).values().size());
    }

    @Test
    void a_kind_of_finding_is_tallied_with_its_place_and_time() {
        var tally = review.tallies().stream()
                .filter(one -> one.code() == FindingCode.TURN_SHORT)
                .findFirst()
                .orElseThrow();
        assertEquals(new Stream("S50", "1"), tally.mostIn());
        assertEquals(tally.tightenings(), tally.mostInCount());
        assertTrue(tally.first() != null && tally.first().isBefore(tally.last()), "first and last");
    }

    @Test
    void every_finding_has_advice() {
        for (var code : FindingCode.values()) {
            assertTrue(Advice.on(code).endsWith("."), code.word());
        }
    }

    private static Judgement again(Judgement judgement) {
        var id = judgement.identity();
        return new Judgement(
                new TraceIdentity(id.serial(), id.station(), id.spindle(), id.bolt(), 2, id.time(), id.boltLot()),
                judgement.source(),
                judgement.specificationName(),
                judgement.specificationVersion(),
                judgement.signature(),
                judgement.verdict(),
                judgement.findings());
    }
}
