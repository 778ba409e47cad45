package org.tautlog.cli.logs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

final class LayoutFindingsTest {
    @Test
    void a_width_that_cannot_be_is_not_believed() {
        assertEquals(120, LayoutFindings.width("120", false));
        assertEquals(80, LayoutFindings.width(null, false));
        assertEquals(80, LayoutFindings.width("wide", false));
        assertEquals(32, LayoutFindings.width("1", false));
        assertEquals(160, LayoutFindings.width("9999", false));
    }
}
