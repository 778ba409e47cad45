package org.tautlog.spc.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tautlog.spc.Published;

class ChartConstantsPublishedTest {
    static List<CSVRecord> table() {
        return Published.rows("spc_constants_n2_25");
    }

    @Test
    void the_table_runs_from_2_to_25() {
        assertEquals(24, table().size());
    }

    @ParameterizedTest(name = "row {index}")
    @MethodSource("table")
    void factors_agree_with_the_table(CSVRecord row) {
        int n = Integer.parseInt(row.get("n"));
        var c = ChartConstants.of(n);
        near(row, "d2", c.d2());
        near(row, "d3", c.d3());
        near(row, "c4", c.c4());
        near(row, "A2", 3 / (c.d2() * Math.sqrt(n)));
        near(row, "A3", 3 / (c.c4() * Math.sqrt(n)));
        near(row, "D3", Math.max(0, 1 - 3 * c.d3() / c.d2()));
        near(row, "D4", 1 + 3 * c.d3() / c.d2());
        near(row, "B3", Math.max(0, 1 - 3 * c.c5() / c.c4()));
        near(row, "B4", 1 + 3 * c.c5() / c.c4());
    }

    /** Source: ISO 7870-2 / ASTM E2587, as printed. */
    @ParameterizedTest(name = "n = {0}")
    @CsvSource({
        "2, 1.128, 0.7979, 1.880, 2.659",
        "3, 1.693, 0.8862, 1.023, 1.954",
        "5, 2.326, 0.9400, 0.577, 1.427",
        "10, 3.078, 0.9727, 0.308, 0.975",
        "15, 3.472, 0.9823, 0.223, 0.789",
        "25, 3.931, 0.9896, 0.153, 0.606"
    })
    void factors_round_to_the_printed_digits(int n, double d2, double c4, double a2, double a3) {
        var c = ChartConstants.of(n);
        assertEquals(d2, c.d2(), 0.000501);
        assertEquals(c4, c.c4(), 0.0000501);
        assertEquals(a2, 3 / (c.d2() * Math.sqrt(n)), 0.000501);
        assertEquals(a3, 3 / (c.c4() * Math.sqrt(n)), 0.000501);
    }

    private static void near(CSVRecord row, String name, double actual) {
        assertEquals(Double.parseDouble(row.get(name)), actual, 2e-8, name + " of n = " + row.get("n"));
    }
}
