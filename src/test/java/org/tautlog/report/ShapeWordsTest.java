package org.tautlog.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tautlog.review.shape.Departure;
import org.tautlog.review.shape.ShapeReview;
import org.tautlog.review.shape.ShapeStream;
import org.tautlog.review.shape.Zone;
import org.tautlog.review.stream.Stream;
import org.tautlog.spc.Answer;
import org.tautlog.spc.Reason;

class ShapeWordsTest {
    @Test
    void a_departure_says_where_on_which_side_by_how_much_and_against_how_many() {
        assertEquals(
                "its curve leaves the envelope of 48 peers from 258 to 283 deg past the elastic origin (elastic zone):"
                        + " 1.3 N·m too little at 270 deg, 7.9 standard deviations, the limit is 5.0",
                ShapeWords.words(new Departure(48, 7.91, 5.02, 1e-6, 270, 257.5, 282.5, -1.28, Zone.ELASTIC)));
    }

    @Test
    void a_curve_within_says_how_near_it_came() {
        assertEquals(
                "its curve stays within the envelope of 24 peers; furthest from their middle at −45 deg past the elastic"
                        + " origin, by 2.1 standard deviations, the limit is 5.3",
                ShapeWords.words(new Departure(24, 2.13, 5.31, 0.4, -45, -47.5, -42.5, 0.1, Zone.RUN_DOWN)));
    }

    @Test
    void what_could_not_be_compared_says_why() {
        assertEquals(
                "Not held against an envelope of peers: still learning: 11 of 24 conforming peers.",
                ShapeWords.sentence(Answer.missing(Reason.TOO_FEW, "still learning: 11 of 24 conforming peers")));
    }

    @Test
    void streams_that_are_still_being_learned_are_named() {
        var streams = List.of(
                new ShapeStream(new Stream("S40", "1"), "3", 11, 0, 0),
                new ShapeStream(new Stream("S40", "2"), "", 30, 6, 0));
        assertEquals(
                "No curve could be held against an envelope. Still learning, with fewer than 24 conforming curves:"
                        + " S40/1 bolt 3 (11).",
                ShapeWords.summary(new ShapeReview(List.of(), streams, Map.of(), 0)));
    }
}
