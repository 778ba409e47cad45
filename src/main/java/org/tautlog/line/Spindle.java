package org.tautlog.line;

/**
 * One tool with what is its own: a transducer, a drive that twists, a way to record.
 *
 * @param station the station it hangs at
 * @param name its name there
 * @param gain torque shown over true torque
 * @param offsetNm torque shown where there is none, N·m
 * @param noiseNm standard deviation of the torque shown, N·m
 * @param driveNmPerDeg stiffness of spindle, extension and socket, N·m/deg
 * @param sampling when a sample is taken
 */
record Spindle(
        String station,
        String name,
        double gain,
        double offsetNm,
        double noiseNm,
        double driveNmPerDeg,
        Sampling sampling) {
    Spindle withGain(double other) {
        return new Spindle(station, name, other, offsetNm, noiseNm, driveNmPerDeg, sampling);
    }

    /** The torque shown for a true one, before noise. */
    double shownNm(double trueNm) {
        return trueNm * gain + offsetNm;
    }
}
