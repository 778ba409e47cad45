package org.tautlog.accuracy;

import java.util.SplittableRandom;

/**
 * The through-bolt and what it clamps as springs in a row, with torque, stiffness and twist worked out here from the drawing's
 * numbers: nothing of the program's joint model, which the clamp load estimate reads.
 *
 * <pre>
 * bolt    sum of l / (E A), from the middle of the head to the middle of the nut; the thread by its core
 * layers  sum over slices dz / (E A(z)), A(z) the ring between the hole and a cone of 30 deg from washer or nut face, at most the
 *         column's 900 mm2
 * torque  T = F (d2/2 (tan l + m sec a) / (1 - m tan l sec a) + m_h (D^3 - h^3) / (3 (D^2 - h^2)))
 * angle   theta = F 360 / P (bolt + layers) + F thread lever sum l / (G J)
 * </pre>
 *
 * <p>Source: power screw with inclined flanks, even pressure on a ring, 30 deg pressure cone, Shigley (10th ed., sections 8-2,
 * 16-5 and 8-5); middle of head to middle of nut as the length that stretches, Bickford; all from memory. Core diameter of the
 * M10 thread 8.160 mm, pitch diameter 9.026 mm: ISO 724 and DIN 13, from memory.
 *
 * @param degPerN turn for each newton, drive left out
 * @param leverNmPerN torque for each newton
 */
record Springs(double degPerN, double leverNmPerN) {
    private static final double PITCH_MM = 1.5;
    private static final double PITCH_DIAMETER_MM = 9.026;
    private static final double CORE_MM = 8.160;
    private static final double SHANK_MM = 8.2;
    private static final double SHANK_LENGTH_MM = 378;
    private static final double FREE_THREAD_MM = 24.5;
    private static final double HALF_HEAD_MM = 3.2;
    private static final double HALF_NUT_MM = 4.2;
    private static final double HEAD_FACE_MM = 15.6;
    private static final double HOLE_MM = 10.5;
    private static final double WASHER_MM = 20;
    private static final double WASHER_THICK_MM = 2.5;
    private static final double COLUMN_LENGTH_MM = 400;
    private static final double COLUMN_MM2 = 900;
    private static final double STEEL_MPA = 205_000;
    private static final double STEEL_SHEAR_MPA = 79_000;
    private static final double ALUMINIUM_MPA = 72_000;
    private static final double SLICE_MM = 0.05;

    /** With the scatter of parts: 0.004 of friction either way, 1.5 % of column, 1 % of the bolt's stiffness. */
    static Springs drawn(SplittableRandom random) {
        return of(
                0.11 + 0.004 * random.nextGaussian(),
                0.11 + 0.004 * random.nextGaussian(),
                1 + 0.015 * random.nextGaussian(),
                1 + 0.01 * random.nextGaussian());
    }

    static Springs of(double threadMu, double headMu, double columnShare, double boltShare) {
        double threadMm = threadLeverMm(threadMu);
        double headMm = headMu * ring(HEAD_FACE_MM, HOLE_MM);
        double mmPerN = boltMmPerN() / boltShare + layersMmPerN(columnShare);
        double twistDegPerNmm =
                Math.toDegrees((SHANK_LENGTH_MM / polar(SHANK_MM) + FREE_THREAD_MM / polar(CORE_MM)) / STEEL_SHEAR_MPA);
        return new Springs(360 / PITCH_MM * mmPerN + threadMm * twistDegPerNmm / boltShare, (threadMm + headMm) / 1000);
    }

    double rateNmPerDeg(double driveNmPerDeg) {
        return 1 / (degPerN / leverNmPerN + 1 / driveNmPerDeg);
    }

    double loadKN(double torqueNm) {
        return torqueNm / leverNmPerN / 1000;
    }

    static double boltMmPerN() {
        return ((SHANK_LENGTH_MM + HALF_HEAD_MM) / area(SHANK_MM) + (FREE_THREAD_MM + HALF_NUT_MM) / area(CORE_MM))
                / STEEL_MPA;
    }

    static double layersMmPerN(double columnShare) {
        double sum = WASHER_THICK_MM / (area(WASHER_MM) - area(HOLE_MM)) / STEEL_MPA;
        for (double z = SLICE_MM / 2; z < COLUMN_LENGTH_MM; z += SLICE_MM) {
            double fromTop = WASHER_MM + 2 * z * Math.tan(Math.PI / 6);
            double fromNut = HEAD_FACE_MM + 2 * (COLUMN_LENGTH_MM - z) * Math.tan(Math.PI / 6);
            double cone = area(Math.min(fromTop, fromNut)) - area(HOLE_MM);
            sum += SLICE_MM / Math.min(COLUMN_MM2 * columnShare, cone) / ALUMINIUM_MPA;
        }
        return sum;
    }

    private static double threadLeverMm(double mu) {
        double rise = PITCH_MM / (Math.PI * PITCH_DIAMETER_MM);
        double grip = mu / Math.cos(Math.toRadians(30));
        return PITCH_DIAMETER_MM / 2 * (rise + grip) / (1 - rise * grip);
    }

    private static double ring(double outer, double inner) {
        return (Math.pow(outer, 3) - Math.pow(inner, 3)) / (outer * outer - inner * inner) / 3;
    }

    private static double area(double diameter) {
        return Math.PI / 4 * diameter * diameter;
    }

    private static double polar(double diameter) {
        return Math.PI / 32 * Math.pow(diameter, 4);
    }
}
