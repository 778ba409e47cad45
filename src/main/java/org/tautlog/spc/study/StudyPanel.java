package org.tautlog.spc.study;

import java.util.List;

/**
 * One drawing of a study: lines that share a scale.
 *
 * @param title what it shows
 * @param inUnitOfValues whether its scale is that of the values; otherwise a fraction or a number without unit
 * @param lines its lines, at least 1, with at least 1 point each
 */
public record StudyPanel(String title, boolean inUnitOfValues, List<PanelLine> lines) {
    /** Copies the list. */
    public StudyPanel {
        lines = List.copyOf(lines);
    }
}
