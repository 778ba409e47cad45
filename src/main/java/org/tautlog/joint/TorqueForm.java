package org.tautlog.joint;

/** How the thread's share of the torque is written: the same physics, rounded more or less. */
public enum TorqueForm {
    /**
     * Pitch and friction added up, which keeps torque in proportion to preload and friction apart from pitch.
     *
     * <pre>
     * M_G / F = P/(2 pi) + mu_G d2/(2 cos 30 deg)      mm
     * </pre>
     *
     * Source: N. Motosh, J. Eng. Ind. 98 (1976), from memory; ISO 16047 uses the same terms.
     */
    ADDED_TERMS {
        @Override
        double threadLeverMm(double pitchMm, double pitchDiameterMm, double mu) {
            return pitchMm / (2 * Math.PI) + mu * pitchDiameterMm / (2 * COS_FLANK);
        }
    },
    /**
     * The same with its factors rounded, as the standard's tables were computed.
     *
     * <pre>
     * M_G / F = 0.16 P + 0.58 mu_G d2      mm
     * </pre>
     *
     * Source: VDI 2230-1:2015, equation R13.
     */
    ROUNDED_FACTORS {
        @Override
        double threadLeverMm(double pitchMm, double pitchDiameterMm, double mu) {
            return 0.16 * pitchMm + 0.58 * mu * pitchDiameterMm;
        }
    },
    /**
     * The wedge on the helix, nothing left out.
     *
     * <pre>
     * M_G / F = d2/2 tan(alpha + rho)      mm
     * tan(alpha) = P/(pi d2)      tan(rho) = mu_G / cos 30 deg
     * </pre>
     *
     * Source: Shigley's Mechanical Engineering Design, 10th ed., equations 8-1 and 8-26 (the same written out).
     */
    EXACT_HELIX {
        @Override
        double threadLeverMm(double pitchMm, double pitchDiameterMm, double mu) {
            var lead = Math.atan(pitchMm / (Math.PI * pitchDiameterMm));
            var friction = Math.atan(mu / COS_FLANK);
            return pitchDiameterMm / 2 * Math.tan(lead + friction);
        }
    };

    /** Half the angle between ISO thread flanks is 30 degrees. Source: ISO 68-1. */
    private static final double COS_FLANK = Math.cos(Math.PI / 6);

    /** Thread torque over preload, mm. */
    abstract double threadLeverMm(double pitchMm, double pitchDiameterMm, double mu);
}
