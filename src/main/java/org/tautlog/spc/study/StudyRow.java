package org.tautlog.spc.study;

import java.util.List;

/**
 * One row of values to be charted.
 *
 * @param place where it stands in its source, as a reader may look it up, for example {@code line 12}
 * @param values its values, at least 1: one, several features, the members of a subgroup, or a count and its amount
 * @param subgroup name of its subgroup or time; empty for none
 * @param stream name of its stream; empty for none
 */
public record StudyRow(String place, List<Double> values, String subgroup, String stream) {
    /** Checks that there is a value and copies the list. */
    public StudyRow {
        values = List.copyOf(values);
        if (values.isEmpty()) throw new IllegalArgumentException(place + " holds no value; at least 1 is needed");
    }
}
