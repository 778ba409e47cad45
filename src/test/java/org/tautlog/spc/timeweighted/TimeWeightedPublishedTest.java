package org.tautlog.spc.timeweighted;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.tautlog.spc.Published;

class TimeWeightedPublishedTest {
    private static final double[] MONTGOMERY = Published.column("montgomery_t9_1_cusum_ewma", "x");

    /** Source: NIST/SEMATECH e-Handbook 6.3.2.3, target 325, k 0.3175, h 4.1959 in the units of the data. */
    @Test
    void cusum_of_the_handbook_is_reproduced_row_by_row() {
        var rows = Published.rows("nist_6_3_2_3_cusum");
        var cusum = Cusum.of(new CusumLimits(325, 0.3175, 4.1959, 0), Published.column("nist_6_3_2_3_cusum", "x"))
                .orThrow();
        assertEquals(20, rows.size());
        for (int i = 0; i < rows.size(); i++) {
            assertEquals(
                    Double.parseDouble(rows.get(i).get("shi_printed")),
                    cusum.points().get(i).upperSum(),
                    0.0051);
            assertEquals(
                    Double.parseDouble(rows.get(i).get("slo_printed")),
                    cusum.points().get(i).lowerSum(),
                    0.0051);
        }
        assertEquals(
                List.of(14L, 15L, 16L, 17L, 18L, 19L, 20L),
                cusum.signals().stream().map(point -> point.index() + 1).toList());
        assertEquals(12L, cusum.signals().get(0).roseAt(), "the run that signals began at the 13th group");
    }

    /** Source: Montgomery, tables 9.1 and 9.2, mean 10, sigma 1, k 0.5, h 5: sums 5.28 and 5.30 at 29 and 30, N+ 7. */
    @Test
    void cusum_of_the_textbook_is_reproduced() {
        var cusum = Cusum.of(new CusumLimits(10, 0.5, 5, 0), MONTGOMERY).orThrow();
        double[] printed = {0, 1.79, 2.79, 2.89, 3.47, 3.35, 4.47, 5.28, 5.30};
        for (int i = 0; i < printed.length; i++)
            assertEquals(printed[i], cusum.points().get(21 + i).upperSum(), 0.0051, "row " + (22 + i));
        assertEquals(
                List.of(29L, 30L),
                cusum.signals().stream().map(p -> p.index() + 1).toList());
        assertEquals(7, cusum.points().get(28).upperRun());
        assertEquals(22L, cusum.points().get(28).roseAt(), "the shift began at the 23rd value");
        assertEquals(11.25, cusum.points().get(28).risenLevel(cusum.limits()), 0.005, "Montgomery 9.1.2, from memory");
        assertEquals(
                1.77,
                cusum.points().stream()
                        .mapToDouble(CusumPoint::lowerSum)
                        .limit(3)
                        .max()
                        .orElseThrow(),
                0.0051);
    }

    /** Source: NIST/SEMATECH e-Handbook 6.3.2.4; it rounds the root of 0.3 / 1.7 to 0.4201. */
    @Test
    void ewma_of_the_handbook_is_reproduced_row_by_row() {
        var rows = Published.rows("nist_6_3_2_4_ewma");
        var limits = new EwmaLimits(50, 2.0539, 0.3, 3, 1, EwmaOptions.Form.STEADY);
        var chart = EwmaChart.chart(limits, Published.column("nist_6_3_2_4_ewma", "x"))
                .orThrow();
        assertEquals(20, rows.size());
        for (int i = 0; i < rows.size(); i++)
            assertEquals(
                    Double.parseDouble(rows.get(i).get("ewma_printed")),
                    chart.points().get(i).value(),
                    0.0051);
        assertEquals(52.5884, chart.points().get(0).upper(), 1e-4);
        assertEquals(47.4115, chart.points().get(0).lower(), 1e-4);
        assertTrue(chart.signals().isEmpty());
    }

    /** Source: Montgomery, table 9.11, lambda 0.10, L 2.7, exact limits; first and last rows. */
    @Test
    void ewma_of_the_textbook_is_reproduced() {
        var limits = new EwmaLimits(10, 1, 0.10, 2.7, 1, EwmaOptions.Form.EXACT);
        var points = EwmaChart.chart(limits, MONTGOMERY).orThrow().points();
        assertEquals(9.945, points.get(0).value(), 1e-9);
        assertEquals(9.73, points.get(0).lower(), 1e-9);
        assertEquals(9.7495, points.get(1).value(), 1e-9);
        assertEquals(10.36325, points.get(1).upper(), 5e-6);
        assertEquals(10.57313717, points.get(27).value(), 5e-9);
        assertEquals(10.63414111, points.get(29).value(), 5e-9);
        assertEquals(
                List.of(29, 30),
                points.stream().filter(p -> p.signals()).map(p -> p.index() + 1).toList());
        assertEquals(10.6189, 10 + limits.reach(30), 5e-5);
    }

    @ParameterizedTest(name = "CUSUM k 0.5, h {0}, shift {1}")
    @CsvFileSource(resources = "/published/run_length_cusum.csv", numLinesToSkip = 4)
    void run_lengths_of_the_cusum_are_those_of_the_tables(double h, double shift, double headStart, double printed) {
        assertEquals(printed, RunLength.ofCusum(0.5, h, shift, headStart), printed * 0.005 + 0.005);
    }

    @ParameterizedTest(name = "EWMA lambda {0}, L {1}, shift {2}")
    @CsvFileSource(resources = "/published/run_length_ewma.csv", numLinesToSkip = 4)
    void run_lengths_of_the_ewma_are_those_of_the_tables(double lambda, double width, double shift, double printed) {
        assertEquals(printed, RunLength.ofEwma(lambda, width, shift), printed * 0.01 + 0.05);
    }

    /** Source: Montgomery 6.2.6: 370 in control, 44 (43.9) at one sigma, 6.3 at two, from memory. */
    @ParameterizedTest
    @CsvSource({"0, 370.4", "1, 43.9", "2, 6.3", "3, 2.0"})
    void run_lengths_of_three_sigma_limits_are_those_of_the_textbook(double shift, double printed) {
        assertEquals(printed, RunLength.ofLimits(3, shift), 0.051);
    }
}
