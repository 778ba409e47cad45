package org.tautlog.spc.gauge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.tautlog.spc.Published.assertRelative;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tautlog.spc.Published;
import org.tautlog.spc.Reason;

/** Source: AIAG, Measurement Systems Analysis, 4th edition, figures III-B 15, 16, 18 and table A 2 to 4. */
class GaugeStudyPublishedTest {
    /** As printed; the manual rounds its factors and the appraisers' difference to 4 digits, ours are not: EV .20188 AV .22963 GRR .30575 PV 1.10456 TV 1.14610. */
    @Test
    void average_and_range_give_the_components_of_the_manual() {
        var study = GaugeStudy.byRanges(manual()).orThrow();
        assertEquals(0.20188, study.repeatability(), 5e-5);
        assertEquals(0.22963, study.reproducibility(), 1e-4);
        assertEquals(0.30575, study.gauge(), 5e-5);
        assertEquals(1.10456, study.part(), 1.5e-4);
        assertEquals(1.14610, study.total(), 1.5e-4);
        assertEquals(26.68, 100 * study.shareOfTotal(), 0.01);
        assertEquals(5, (int) study.categories());
        assertEquals(5.09369, study.categories(), 1.5e-3);
        assertEquals(0.201857, study.repeatability(), 1e-5);
        assertEquals(0.229667, study.reproducibility(), 2e-5);
    }

    /** As printed: EV .199933 AV .226838 GRR .302373 PV 1.042327, 27.86 % of the total, 7.8 % of its variance, 4 categories. */
    @Test
    void analysis_of_variance_gives_the_components_of_the_manual() {
        var study = GaugeStudy.byAnova(manual(), GaugeOptions.withDefaults()).orThrow();
        assertTrue(study.interaction().pooled());
        assertEquals(0.9741064, study.interaction().pValue(), 5e-8);
        assertEquals(0.199933, study.repeatability(), 1e-6);
        assertEquals(0.226838, study.reproducibility(), 1e-6);
        assertEquals(0.302373, study.gauge(), 2e-6);
        assertEquals(1.042327, study.part(), 1e-6);
        assertEquals(1.085300, study.total(), 1e-6);
        assertEquals(27.86, 100 * study.shareOfTotal(), 0.005);
        assertEquals(7.8, 100 * study.contribution(), 0.05);
        assertEquals(22.68, 100 * study.shareOfTolerance(8), 0.005);
        assertEquals(4, (int) study.categories());
        assertEquals(4.861, study.categories(), 5e-4);
    }

    /** Source: the same data, interaction kept, recomputed in R. */
    @Test
    void an_interaction_that_is_kept_changes_the_components_as_r_says() {
        var study = GaugeStudy.byAnova(manual(), new GaugeOptions(1)).orThrow();
        assertEquals(Math.sqrt(0.0459822), study.repeatability(), 5e-7);
        assertEquals(Math.sqrt(0.0521229), study.reproducibility(), 5e-7);
        assertEquals(Math.sqrt(1.0886721), study.part(), 5e-7);
        assertEquals(0.313217, study.gauge(), 5e-7);
        assertEquals(4.697, study.categories(), 5e-4);
    }

    /** Source: NIST Statistical Reference Datasets, Norris; a line of bias has the line's slope less 1. */
    @Test
    void linearity_is_the_certified_regression() {
        var x = Published.column("strd_norris", "x");
        var y = Published.column("strd_norris", "y");
        var line = Linearity.of(x, y, 0.95).orThrow();
        assertEquals(36, line.n());
        assertRelative(0.00211681802045, line.slope(), 1e-9, "slope");
        assertRelative(4.29796848199937e-4, line.slopeError(), 1e-10, "error of the slope");
        assertRelative(-.262323073774029, line.intercept(), 1e-9, "intercept");
        assertRelative(.232818234301152, line.interceptError(), 1e-10, "error of the intercept");
        assertRelative(.884796396144373, line.residual(), 1e-10, "residual");
        assertTrue(!line.slopeBounds().contains(0), "the slope of the bias is 4.9 of its errors away from 0");
    }

    /** Theory: t(0.975; 4) = 2.776445 (tables of Student's t). */
    @Test
    void a_bias_has_the_bounds_of_students_t() {
        var bias =
                Bias.of(new double[] {10.1, 10.2, 10.3, 10.4, 10.5}, 10, 0.95).orThrow();
        assertEquals(0.3, bias.value(), 1e-12);
        assertEquals(0.3 - 2.776445 * Math.sqrt(0.025 / 5), bias.bounds().lower(), 1e-6);
        assertTrue(!bias.bounds().contains(0));
    }

    @Test
    void studies_that_cannot_be_made_get_a_reason() {
        assertEquals(
                Optional.of(Reason.EMPTY),
                GaugeStudy.byRanges(new double[0][][]).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW),
                GaugeStudy.byRanges(new double[][][] {{{1, 2}}}).missingFor());
        var holed = manual();
        holed[3][1] = new double[] {1, 2};
        assertEquals(
                Optional.of(Reason.UNEQUAL),
                GaugeStudy.byAnova(holed, GaugeOptions.withDefaults()).missingFor());
        var coarse = manual();
        for (var part : coarse) for (var trials : part) Arrays.fill(trials, Math.rint(trials[0]));
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                GaugeStudy.byAnova(coarse, GaugeOptions.withDefaults()).missingFor());
        assertEquals(Optional.of(Reason.NO_SPREAD), GaugeStudy.byRanges(coarse).missingFor());
        assertEquals(
                Optional.of(Reason.TOO_FEW), Bias.of(new double[] {1}, 1, 0.95).missingFor());
        assertEquals(
                Optional.of(Reason.NOT_FINITE),
                Bias.of(new double[] {1, 2}, Double.NaN, 0.95).missingFor());
        assertEquals(
                Optional.of(Reason.NO_SPREAD),
                Linearity.of(new double[] {1, 1, 1}, new double[] {1, 2, 3}, 0.95)
                        .missingFor());
        assertEquals(
                Optional.of(Reason.UNEQUAL),
                Linearity.of(new double[] {1, 2}, new double[] {1}, 0.95).missingFor());
    }

    private static double[][][] manual() {
        var measured = new double[10][3][3];
        for (var row : Published.rows("aiag_msa4_grr_10x3x3"))
            measured[Integer.parseInt(row.get("part")) - 1]["ABC".indexOf(row.get("appraiser"))][
                            Integer.parseInt(row.get("trial")) - 1] =
                    Double.parseDouble(row.get("value"));
        return measured;
    }
}
