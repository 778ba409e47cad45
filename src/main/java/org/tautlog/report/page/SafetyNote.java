package org.tautlog.report.page;

/** What every report and every judging command states, in the same words. */
public final class SafetyNote {
    /** The note, one sentence after the other. */
    public static final String TEXT = "Torque-angle analysis does not measure clamp load. "
            + "It supports and never replaces the plant's released specification, calibrated references and the judgement"
            + " of qualified staff. "
            + "Local codes and procedures come first. "
            + "Bolts taken into yield are reused only where the specification allows.";

    private SafetyNote() {}
}
