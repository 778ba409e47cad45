package org.tautlog.spc.capability;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.csv.CSVRecord;
import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.apache.commons.statistics.distribution.GumbelDistribution;
import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.apache.commons.statistics.distribution.WeibullDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tautlog.spc.Interval;
import org.tautlog.spc.Published;

class CapabilityPublishedTest {
    /** Source: NIST/SEMATECH e-Handbook 6.1.6, printed to 4 decimals; about the target 14 recomputed. */
    @Test
    void the_handbooks_example_has_its_indices() {
        var indices = new NormalIndices(16, 2, 50, 49, SpecLimits.between(8, 20));
        assertEquals(1.0, indices.spread(0.95).orThrow().value(), 1e-12);
        assertEquals(0.6667, indices.upperSide(0.95).orThrow().value(), 5e-5);
        assertEquals(1.3333, indices.lowerSide(0.95).orThrow().value(), 5e-5);
        assertEquals(0.6667, indices.nearest(0.95).value(), 5e-5);
        assertEquals(0.7071068, indices.aboutTarget(14).orThrow(), 5e-8);
        bounds(0.505551, 0.827782, indices.nearest(0.95).bounds(), 5e-7);
        bounds(0.802482, 1.197126, indices.spread(0.95).orThrow().bounds(), 5e-7);
        var hundred = new NormalIndices(16, 2, 100, 99, SpecLimits.between(8, 20));
        bounds(0.553128, 0.780206, hundred.nearest(0.95).bounds(), 5e-7);
    }

    /** Source: Montgomery, Introduction to Statistical Quality Control, example 8.4: 2.29, 1.57 to 3.01; from memory. */
    @Test
    void bounds_on_cp_are_those_of_the_textbook() {
        var cp = new NormalIndices(50, 1.75, 20, 19, SpecLimits.between(38, 62))
                .spread(0.95)
                .orThrow();
        assertEquals(2.29, cp.value(), 0.005);
        bounds(1.57, 3.01, cp.bounds(), 0.0051);
        bounds(1.564945, 3.005579, cp.bounds(), 5e-7);
    }

    /** Source: Montgomery, example 8.5: n 20, Cpk 1.33, 0.88 to 1.78; from memory. */
    @Test
    void bounds_on_cpk_are_those_of_the_textbook() {
        var cpk = new NormalIndices(0, 1, 20, 19, SpecLimits.atMost(3.99)).nearest(0.95);
        assertEquals(1.33, cpk.value(), 1e-12);
        bounds(0.88, 1.78, cpk.bounds(), 0.005);
        bounds(0.882606, 1.777394, cpk.bounds(), 5e-7);
    }

    /** Source: AIAG and VDA, Statistical Process Control manual (2026), p. 48: both printed as 1.71. */
    @ParameterizedTest
    @CsvSource({"0.166, 0.0457", "0.250, 0.0292"})
    void one_sided_indices_are_those_of_the_manual(double mean, double sd) {
        var indices = new NormalIndices(mean, sd, 50, 49, SpecLimits.atMost(0.40));
        assertEquals(1.71, indices.nearest(0.95).value(), 0.005);
        assertTrue(indices.spread(0.95).found().isEmpty());
        assertTrue(indices.lowerSide(0.95).found().isEmpty());
    }

    /** Source: Montgomery, table 6.1 and its capability example: Cp 1.192; the rest recomputed in R from mean range / d2. */
    @Test
    void flow_width_has_the_indices_of_the_textbook() {
        var indices = new NormalIndices(1.5056104, 0.1398142734, 125, 124, SpecLimits.between(1, 2));
        assertEquals(1.192057596, indices.spread(0.95).orThrow().value(), 5e-10);
        assertEquals(1.205433436, indices.lowerSide(0.95).orThrow().value(), 5e-10);
        assertEquals(1.178681756, indices.nearest(0.95).value(), 5e-10);
        assertEquals(1.191099017, indices.aboutTarget(1.5).orThrow(), 1e-9);
    }

    /** Source: the same data; pooled sigma 0.1394250184 and overall 0.1332335367 from R, Cp and Pp by their definition. */
    @Test
    void flow_width_is_studied_by_its_subgroups() {
        var study = CapabilityStudy.process(
                        Published.subgroups("montgomery_t6_1_flow_width"),
                        SpecLimits.between(1, 2),
                        CapabilityOptions.withDefaults())
                .orThrow();
        assertEquals(1 / (6 * 0.1394250184), study.cp().orThrow().value(), 5e-9);
        assertEquals(1 / (6 * 0.1332335367), study.pp().orThrow().value(), 5e-9);
        assertEquals(Stability.Word.IN_CONTROL, study.stability().word());
    }

    static java.util.List<CSVRecord> percentileRows() {
        return Published.rows("percentile_capability");
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("percentileRows")
    void percentile_indices_are_those_of_known_distributions(CSVRecord row) {
        var law = law(row.get("distribution"), number(row, "a"), number(row, "b"));
        var percentiles = Percentiles.of(law::inverseCumulativeProbability);
        assertEquals(number(row, "low"), percentiles.low(), 1e-8);
        assertEquals(number(row, "middle"), percentiles.middle(), 1e-8);
        assertEquals(number(row, "high"), percentiles.high(), 1e-8);
        var spec = row.get("L").isEmpty()
                ? SpecLimits.atMost(number(row, "U"))
                : SpecLimits.between(number(row, "L"), number(row, "U"));
        assertEquals(number(row, "upper"), percentiles.upperSide(spec).orElseThrow(), 1e-7);
        assertEquals(row.get("L").isEmpty(), percentiles.spread(spec).isEmpty());
        if (spec.twoSided()) {
            assertEquals(number(row, "spread"), percentiles.spread(spec).orElseThrow(), 1e-7);
            assertEquals(number(row, "lower"), percentiles.lowerSide(spec).orElseThrow(), 1e-7);
        }
    }

    static java.util.List<CSVRecord> normalityRows() {
        return Published.rows("anderson_darling");
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("normalityRows")
    void tests_of_normality_agree_with_r(CSVRecord row) {
        var test = AndersonDarling.of(Published.column(row.get("set"), "x")).orThrow();
        Published.assertRelative(number(row, "statistic"), test.statistic(), 1e-6, "statistic");
        Published.assertRelative(number(row, "p"), test.pValue(), 1e-5, "p");
    }

    /** Source: NIST/SEMATECH e-Handbook 1.4.2.8.3 prints 0.129, from memory, by its own adjustment. */
    @Test
    void the_handbooks_own_adjustment_explains_its_printed_value() {
        var test = AndersonDarling.of(Published.column("nist_zarr13_195", "x")).orThrow();
        double n = test.n();
        assertEquals(0.129, test.statistic() * (1 + 4 / n - 25 / (n * n)), 0.0005);
        assertEquals(0.12697272, test.adjusted(), 5e-8);
    }

    /** Source: ISO 16269-6 and NIST/SEMATECH e-Handbook 7.2.6.3 print 2.355, 2.396, 2.065; more digits from SciPy. */
    @ParameterizedTest
    @CsvSource({"10, 0.90, 2.35464013", "20, 0.95, 2.39600168", "50, 0.95, 2.06499342"})
    void tolerance_factors_are_those_of_the_tables(int n, double coverage, double expected) {
        assertEquals(expected, ToleranceFactor.oneSided(n, coverage, 0.95), 1e-7);
    }

    private static ContinuousDistribution law(String name, double a, double b) {
        return switch (name) {
            case "lognormal" -> LogNormalDistribution.of(a, b);
            case "weibull" -> WeibullDistribution.of(a, b);
            case "gamma" -> GammaDistribution.of(a, b);
            case "gumbel" -> GumbelDistribution.of(a, b);
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static double number(CSVRecord row, String column) {
        return Double.parseDouble(row.get(column));
    }

    private static void bounds(double lower, double upper, Interval actual, double tolerance) {
        assertEquals(lower, actual.lower(), tolerance);
        assertEquals(upper, actual.upper(), tolerance);
    }
}
