package org.tautlog.report.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.tautlog.joint.window.BoltPlace;
import org.tautlog.line.FenwaterEngine;

class HeadPlanTest {
    private static final List<BoltPlace> FENWATER =
            FenwaterEngine.specification().boltPlaces();

    @Test
    void lengths_on_the_plan_are_as_lengths_on_the_head() {
        var plan = HeadPlan.of(FENWATER).orElseThrow();
        for (var one : FENWATER) {
            for (var other : FENWATER) {
                double drawn = Math.hypot(x(plan, one) - x(plan, other), y(plan, one) - y(plan, other));
                assertEquals(scale(plan) * one.distanceMm(other), drawn, 0.2);
            }
        }
        assertTrue(y(plan, FENWATER.get(0)) < y(plan, FENWATER.get(1)), "bolt 1 lies above bolt 2");
    }

    @Test
    void no_label_lies_on_another_and_all_lie_on_the_drawing() {
        var uneven = List.of(
                new BoltPlace("1", -40, 0),
                new BoltPlace("2", 20, 15),
                new BoltPlace("3", 80, -30),
                new BoltPlace("4", 25, 90));
        for (var places : List.of(FENWATER, uneven)) {
            var plan = HeadPlan.of(places).orElseThrow();
            for (var one : places) {
                assertTrue(x(plan, one) >= 46 + 62
                        && x(plan, one) + 62 <= number(plan.frame().get("width")));
                assertTrue(y(plan, one) + 78 <= number(plan.frame().get("ruler")));
                places.stream()
                        .filter(other -> !other.equals(one))
                        .forEach(other -> assertTrue(
                                Math.abs(x(plan, one) - x(plan, other)) > 124
                                        || Math.abs(y(plan, one) - y(plan, other)) > 98,
                                () -> one + " on " + other));
            }
        }
    }

    @Test
    void the_rulers_name_the_lengths_of_the_places() {
        var frame = HeadPlan.of(FENWATER).orElseThrow().frame();
        assertEquals(List.of("24", "108", "192", "276"), millimetres(frame.get("xTicks")));
        assertEquals(List.of("22", "118"), millimetres(frame.get("yTicks")));
    }

    @Test
    void one_bolt_and_a_single_row_have_a_plan_too() {
        assertTrue(HeadPlan.of(FENWATER.subList(0, 1)).isPresent());
        assertTrue(HeadPlan.of(row(5, 0, 40)).isPresent());
        assertTrue(HeadPlan.of(row(5, 40, 0)).isPresent());
    }

    @Test
    void without_places_or_with_places_that_no_page_can_hold_there_is_none() {
        assertTrue(HeadPlan.of(List.of()).isEmpty());
        assertTrue(HeadPlan.of(row(40, 12, 0)).isEmpty(), "forty in a row");
        assertTrue(
                HeadPlan.of(List.of(FENWATER.get(0), new BoltPlace("2", 25, 118), new BoltPlace("3", 900, 0)))
                        .isEmpty(),
                "two bolts 1 mm apart on a head of 900 mm");
    }

    private static List<BoltPlace> row(int bolts, double xMm, double yMm) {
        return IntStream.range(0, bolts)
                .mapToObj(i -> new BoltPlace("" + i, i * xMm, i * yMm))
                .toList();
    }

    private static double scale(HeadPlan plan) {
        return (x(plan, FENWATER.get(3)) - x(plan, FENWATER.get(0))) / 252;
    }

    private static List<Object> millimetres(Object ticks) {
        return ((List<?>) ticks)
                .stream().map(tick -> (Object) ((Map<?, ?>) tick).get("mm")).toList();
    }

    private static double x(HeadPlan plan, BoltPlace place) {
        return number(plan.place(place).get("x"));
    }

    private static double y(HeadPlan plan, BoltPlace place) {
        return number(plan.place(place).get("y"));
    }

    private static double number(Object text) {
        return Double.parseDouble(String.valueOf(text));
    }
}
