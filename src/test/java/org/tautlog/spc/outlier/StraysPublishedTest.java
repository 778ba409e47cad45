package org.tautlog.spc.outlier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tautlog.spc.Published;

class StraysPublishedTest {
    /** Source: NIST/SEMATECH e-Handbook 1.3.5.17.1: G 2.4687 (cut, not rounded), critical 2.032; more digits from SciPy. */
    @Test
    void grubbs_finds_the_uranium_stray_of_the_handbook() {
        var values = Published.column("nist_uranium_8", "x");
        var test = Grubbs.of(values, 0.05, Grubbs.Side.LARGEST).orThrow();
        assertEquals(2.4687, test.statistic(), 1e-4);
        assertEquals(2.468764611, test.statistic(), 5e-10);
        assertEquals(2.032, test.critical(), 5e-4);
        assertEquals(2.031652002, test.critical(), 5e-10);
        assertEquals(245.57, test.value());
        assertEquals(1.501319e-7, test.pValue(), 5e-13);
        assertTrue(test.rejected());
        assertEquals(
                2.126645087,
                Grubbs.of(values, 0.05, Grubbs.Side.EITHER).orThrow().critical(),
                5e-10);
    }

    static List<CSVRecord> critical() {
        return Published.rows("grubbs_critical");
    }

    @ParameterizedTest(name = "row {index}")
    @MethodSource("critical")
    void critical_values_of_grubbs_are_those_of_the_tables(CSVRecord row) {
        int n = Integer.parseInt(row.get("n"));
        assertEquals(number(row, "one_sided_5"), Grubbs.critical(n, 0.05, Grubbs.Side.LARGEST), 5.01e-5);
        assertEquals(number(row, "two_sided_5"), Grubbs.critical(n, 0.05, Grubbs.Side.EITHER), 5.01e-5);
        assertEquals(number(row, "one_sided_1"), Grubbs.critical(n, 0.01, Grubbs.Side.SMALLEST), 5.01e-5);
    }

    @Test
    void generalized_esd_finds_rosners_three_strays_step_by_step() {
        var test = GeneralizedEsd.of(Published.column("rosner_1983_54", "x"), 10, 0.05)
                .orThrow();
        var rows = Published.rows("rosner_esd");
        assertEquals(10, test.steps().size());
        for (int i = 0; i < 10; i++) {
            assertEquals(number(rows.get(i), "removed"), test.steps().get(i).value(), "step " + (i + 1));
            assertEquals(number(rows.get(i), "statistic"), test.steps().get(i).statistic(), 5.01e-7, "R " + (i + 1));
            assertEquals(number(rows.get(i), "critical"), test.steps().get(i).critical(), 5.01e-7, "lambda " + (i + 1));
        }
        assertEquals(3, test.strays(), "the largest step that exceeds, though the first two do not");
        assertEquals(List.of(53, 52, 51), test.flagged());
    }

    /** Source: the definition, by hand: median 5, MAD 2, 1.4826 * 2 * 3 = 8.8956. */
    @Test
    void a_window_flags_the_one_value_that_leaves_its_neighbourhood() {
        var found =
                HampelWindow.of(new double[] {1, 2, 3, 100, 5, 6, 7}, 2, 3, 0).orThrow();
        assertEquals(1, found.flagged().size());
        assertEquals(3, found.flagged().get(0).index());
        assertEquals(5, found.flagged().get(0).median());
        assertEquals(8.8956, found.flagged().get(0).reach(), 1e-12);
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
