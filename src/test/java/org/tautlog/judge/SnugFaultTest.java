package org.tautlog.judge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.line.Fault;
import org.tautlog.line.FenwaterEngine;
import org.tautlog.line.SimulatedLine;
import org.tautlog.line.SimulatedTightening;

/** What goes wrong before or at the snug point, on simulated tightenings whose truth is known. */
class SnugFaultTest {
    @Test
    void a_burr_that_the_tool_took_for_the_seated_joint_is_not_seated() {
        everyOneOf(Fault.NOT_SEATED, FindingCode.NOT_SEATED);
    }

    @Test
    void a_drive_that_winds_up_at_once_met_a_tight_bolt() {
        everyOneOf(Fault.ALREADY_TIGHT, FindingCode.ALREADY_TIGHT);
    }

    @Test
    void the_turn_of_a_good_tightening_is_read_to_within_three_degrees() {
        SimulatedLine.of(64, 2)
                .tightenings()
                .filter(done -> done.truth().fault() == Fault.NONE)
                .forEach(done -> {
                    double turnDeg = Judge.judge(done.trace(), FenwaterEngine.specification())
                            .signature()
                            .end()
                            .turnDeg()
                            .number();
                    assertEquals(360.3, turnDeg, 3.0, done.trace().identity().words());
                });
    }

    private static void everyOneOf(Fault fault, FindingCode code) {
        var faulty = SimulatedLine.of(192, 3)
                .tightenings()
                .filter(done -> done.truth().fault() == fault)
                .toList();
        assertTrue(faulty.size() >= 3, "saw " + faulty.size());
        faulty.forEach(
                done -> assertTrue(found(done, code), done.trace().identity().words()));
    }

    private static boolean found(SimulatedTightening done, FindingCode code) {
        return Judge.judge(done.trace(), FenwaterEngine.specification()).findings().stream()
                .anyMatch(finding -> finding.code() == code);
    }
}
