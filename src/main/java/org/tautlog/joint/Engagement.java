package org.tautlog.joint;

/**
 * What the bolt's thread is screwed into.
 *
 * @param mate nut or tapped hole
 * @param youngsModulusMPa Young's modulus of the nut or of the tapped part, MPa; above 0
 */
public record Engagement(Mate mate, double youngsModulusMPa) {
    /**
     * The two ways to hold a thread.
     *
     * <p>Source: VDI 2230-1:2015 clause 5.1.1, from memory.
     */
    public enum Mate {
        /** A nut: gives like 0.4 d of nominal section; the clamped parts spread the load from both ends. */
        NUT(0.4),
        /** A tapped hole: gives like 0.33 d of nominal section; the load spreads from the head to the thread. */
        TAPPED_HOLE(0.33);

        private final double substituteLengthShare;

        Mate(double substituteLengthShare) {
            this.substituteLengthShare = substituteLengthShare;
        }

        /**
         * The length of nominal section that gives as much as the mating thread does.
         *
         * @return as a share of the nominal diameter
         */
        public double substituteLengthShare() {
            return substituteLengthShare;
        }
    }

    /** Checks both. */
    public Engagement {
        Require.present("mate", mate);
        Require.above("youngsModulusMPa", youngsModulusMPa, 0, "MPa");
    }
}
