package org.tautlog.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProblemTest {
    @Test
    void a_problem_reads_as_place_fault_expectation_and_action() {
        var problem = new Problem(
                ProblemCode.MISSING_COLUMN,
                Where.line("shift.csv", 3).at("torque"),
                "no column 'Torq'",
                "one of Time, Angle, Torque",
                "name the column in the layout file");
        assertEquals(
                "shift.csv:3 (torque): no column 'Torq'; expected one of Time, Angle, Torque; "
                        + "name the column in the layout file",
                problem.sentence());
        assertEquals("missing-column", problem.code().word());
    }

    @Test
    void an_absent_value_needs_a_problem_that_explains_it() {
        assertThrows(IllegalArgumentException.class, () -> Outcome.failed(List.of()));
    }

    @Test
    void places_count_from_one() {
        assertThrows(IllegalArgumentException.class, () -> Where.line("a.csv", -1));
    }
}
