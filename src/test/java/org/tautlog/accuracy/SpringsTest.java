package org.tautlog.accuracy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.tautlog.line.FenwaterEngine;

/** The study's own springs describe the same drawing as the joint model, and are not its copy. */
class SpringsTest {
    @Test
    void bolt_and_layers_agree_as_two_handbooks_do() {
        var joint = FenwaterEngine.joint();
        assertEquals(1, Springs.boltMmPerN() / joint.boltResilienceMmPerN(), 0.03);
        assertEquals(1, Springs.layersMmPerN(1) / joint.clampedResilienceMmPerN(), 0.15);
    }
}
