package org.tautlog.joint.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class JointSpecificationTest {
    private static final JointSpecification SPECIFICATION = new JointSpecification(
            "through-bolt",
            "1",
            new TighteningMethod(20, 360),
            new Window(
                    new Band(18, 24),
                    new Band(357, 364),
                    Band.open(),
                    Band.open(),
                    Band.open(),
                    new OnsetLimits(Band.open(), Band.open(), 0)),
            ReadingRule.withDefaults(),
            Map.of());

    @Test
    void limits_upside_down_are_refused() {
        assertThrows(IllegalArgumentException.class, () -> new Band(5, 4));
        assertThrows(IllegalArgumentException.class, () -> new Band(Double.NaN, 4));
    }

    @Test
    void a_value_on_a_limit_is_inside_and_no_number_is_outside() {
        var band = new Band(357, 364);
        assertTrue(band.contains(357) && band.contains(364));
        assertFalse(band.contains(Double.NaN) || Band.open().contains(Double.NaN));
    }

    @ParameterizedTest
    @EnumSource(FindingCode.class)
    void every_finding_code_is_found_by_its_word(FindingCode code) {
        assertEquals(code, FindingCode.parse(code.word()).orElseThrow());
    }

    @Test
    void a_specification_may_change_what_a_finding_means() {
        var strict = SPECIFICATION.withConsequences(Map.of(FindingCode.STICK_SLIP, Consequence.NONCONFORMING));
        assertEquals(Consequence.REVIEW, SPECIFICATION.consequenceOf(FindingCode.STICK_SLIP));
        assertEquals(Consequence.NONCONFORMING, strict.consequenceOf(FindingCode.STICK_SLIP));
    }

    @Test
    void a_bolt_position_is_stated_once_and_has_a_name() {
        assertEquals(List.of(), SPECIFICATION.boltPositions());
        assertThrows(IllegalArgumentException.class, () -> SPECIFICATION.withBoltPositions(List.of("1", "1")));
        assertThrows(IllegalArgumentException.class, () -> SPECIFICATION.withBoltPositions(List.of("1", " ")));
        assertThrows(IllegalArgumentException.class, () -> SPECIFICATION.withBoltPositions(List.of("1 ")));
        assertEquals(
                List.of("1", "2"),
                SPECIFICATION
                        .withBoltPositions(List.of("1", "2"))
                        .withFaults(SPECIFICATION.faults())
                        .boltPositions());
    }

    @Test
    void each_bolt_position_has_one_place_or_none_has() {
        var two = SPECIFICATION.withBoltPositions(List.of("1", "2"));
        var first = new BoltPlace("1", 0, 0);
        var second = new BoltPlace("2", 30, 40);
        assertEquals(50, first.distanceMm(second));
        assertEquals(
                List.of(second, first),
                two.withBoltPlaces(List.of(second, first))
                        .withFaults(two.faults())
                        .boltPlaces());
        assertThrows(IllegalArgumentException.class, () -> two.withBoltPlaces(List.of(first)));
        assertThrows(IllegalArgumentException.class, () -> two.withBoltPlaces(List.of(first, first)));
        assertThrows(
                IllegalArgumentException.class, () -> two.withBoltPlaces(List.of(first, new BoltPlace("3", 1, 1))));
        assertThrows(IllegalArgumentException.class, () -> new BoltPlace("1", Double.NaN, 0));
    }

    @Test
    void the_three_gradient_ratios_keep_their_order() {
        assertThrows(IllegalArgumentException.class, () -> new ReadingRule(15, 0.5, 0.4, 0.33, 2, 10));
        assertThrows(IllegalArgumentException.class, () -> new ReadingRule(15, 0.5, 0.67, 0.6, 2, 10));
        assertThrows(IllegalArgumentException.class, () -> new TighteningMethod(0, 360));
    }
}
