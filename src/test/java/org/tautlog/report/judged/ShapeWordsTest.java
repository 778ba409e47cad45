package org.tautlog.report.judged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Finding;
import org.tautlog.review.shape.Departure;
import org.tautlog.review.shape.ShapeReview;
import org.tautlog.review.shape.ShapeStream;
import org.tautlog.review.shape.Zone;
import org.tautlog.review.stream.Stream;

class ShapeWordsTest {
    @Test
    void a_departure_says_where_on_which_side_by_how_much_and_against_how_many() {
        assertEquals(
                "its curve leaves the envelope of 48 peers from 258 to 283 deg past the elastic origin (elastic zone):"
                        + " 1.3 N·m too little at 270 deg, 7.9 standard deviations, the limit is 5.0",
                ShapeWords.words(new Departure(48, 7.91, 5.02, 1e-6, 270, 257.5, 282.5, -1.28, Zone.ELASTIC), true));
    }

    @Test
    void far_beyond_the_limit_has_no_number() {
        var far = ShapeWords.words(new Departure(48, 289.6, 5.02, 0, 270, 257.5, 282.5, -9, Zone.ELASTIC), true);
        assertTrue(far.endsWith(", far beyond the limit of 5.0 standard deviations"), far);
    }

    @Test
    void a_curve_within_says_how_near_it_came() {
        assertEquals(
                "its curve stays within the envelope of 24 peers; furthest from their middle at −45 deg past the elastic"
                        + " origin, by 2.1 standard deviations, the limit is 5.3",
                ShapeWords.words(new Departure(24, 2.13, 5.31, 0.4, -45, -47.5, -42.5, 0.1, Zone.RUN_DOWN), true));
    }

    @ParameterizedTest
    @CsvSource({"ANGLE_SLIP, false", "ANGLE_JUMP, false", "WEAK_BOLT, true", "TORQUE_DROP, true"})
    void a_place_means_something_unless_degrees_turned_no_bolt(FindingCode code, boolean hasPlace) {
        var finding = new Finding(code, code.usual(), null, null, "", code.title());
        assertEquals(hasPlace, Departure.hasPlace(List.of(finding)));
    }

    @Test
    void of_an_angle_slip_it_says_that_the_curve_leaves_its_peers_and_not_where() {
        assertEquals(
                "its curve leaves the envelope of 48 peers; where it does is not known, as degrees that turned no bolt"
                        + " tilt the line that it is measured by",
                ShapeWords.words(new Departure(48, 7.91, 5.02, 1e-6, 270, 257.5, 282.5, -1.28, Zone.ELASTIC), false));
        assertEquals(
                "its curve stays within the envelope of 24 peers",
                ShapeWords.words(new Departure(24, 2.13, 5.31, 0.4, -45, -47.5, -42.5, 0.1, Zone.RUN_DOWN), false));
    }

    @Test
    void streams_that_are_still_being_learned_are_named() {
        var streams = List.of(
                new ShapeStream(new Stream("S40", "1"), "3", 11, 0, 0, 0),
                new ShapeStream(new Stream("S40", "2"), "", 30, 0, 6, 0));
        assertEquals(
                "No curve could be held against an envelope. Still learning, with fewer than 24 conforming curves:"
                        + " S40/1 bolt 3 (11).",
                ShapeWords.summary(new ShapeReview(List.of(), streams, Map.of(), 0)));
    }
}
