package org.tautlog.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Threads and their strength against ISO 724, ISO 898-1 and Shigley's table 8-1; sources in the files. */
class MetricThreadPublishedTest {
    private static final double HALF_OF_LAST_DIGIT_MM = 0.0005;
    private static final double TABLE_ROUNDING = 0.005;

    @ParameterizedTest(name = "{0}: ISO 724 diameters, ISO 898-1 stress area {3} mm2")
    @CsvFileSource(resources = "/published/iso_metric_threads.csv", numLinesToSkip = 4)
    void diameters_and_areas_are_those_of_the_standard(
            String designation,
            Double pitchDiameterMm,
            Double rootDiameterMm,
            double stressAreaMm2,
            double stressAreaTolerance,
            Double rootAreaMm2,
            Double rootAreaTolerance) {
        var thread = MetricThread.of(designation);
        if (pitchDiameterMm != null) assertEquals(pitchDiameterMm, thread.pitchDiameterMm(), HALF_OF_LAST_DIGIT_MM);
        if (rootDiameterMm != null) assertEquals(rootDiameterMm, thread.rootDiameterMm(), HALF_OF_LAST_DIGIT_MM);
        assertEquals(stressAreaMm2, thread.stressAreaMm2(), stressAreaTolerance);
        if (rootAreaMm2 != null) assertEquals(rootAreaMm2, thread.rootAreaMm2(), rootAreaTolerance);
    }

    @ParameterizedTest(name = "{0} class {1}: ISO 898-1 loads {2} N and {3} N")
    @CsvFileSource(resources = "/published/iso898_1_bolt_loads.csv", numLinesToSkip = 3)
    void loads_are_stress_area_times_strength(
            String designation, String propertyClass, double ultimateLoadN, double proofLoadN) {
        var thread = MetricThread.of(designation);
        var strength = PropertyClass.of(propertyClass);
        var areaMm2 = threeDigits(thread.stressAreaMm2());
        assertEquals(ultimateLoadN, areaMm2 * strength.ultimateStrengthMPa(thread), TABLE_ROUNDING * ultimateLoadN);
        assertEquals(proofLoadN, areaMm2 * strength.proofStressMPa(thread), TABLE_ROUNDING * proofLoadN);
    }

    /** The standard's load tables start from its own stress areas, printed to three digits. */
    private static double threeDigits(double areaMm2) {
        return new BigDecimal(areaMm2).round(new MathContext(3)).doubleValue();
    }
}
