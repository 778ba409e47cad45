package org.tautlog.report.study;

import java.util.List;

/**
 * What of a table was charted: limits belong to these columns and to no others.
 *
 * @param values names of the columns charted, in order; at least 1
 * @param amount name of the column of amounts behind counts; empty for none
 * @param by names of the columns whose values make groups, in order
 * @param subgroupColumn name of the column that names the subgroup, or the time of parallel streams; empty for none
 * @param subgroupSize how many values running make a subgroup; 0 where a column names it or there is none
 * @param unit unit of the values; empty where nobody stated it
 */
public record ChartedColumns(
        List<String> values, String amount, List<String> by, String subgroupColumn, int subgroupSize, String unit) {
    public ChartedColumns {
        values = List.copyOf(values);
        by = List.copyOf(by);
        if (values.isEmpty()) {
            throw new IllegalArgumentException("values is empty; at least 1 column is charted");
        }
        if (subgroupSize < 0 || (subgroupSize > 0 && !subgroupColumn.isEmpty())) {
            throw new IllegalArgumentException("subgroupSize is " + subgroupSize
                    + "; it must be at least 0, and 0 where a column names the subgroup");
        }
    }
}
