package org.tautlog.joint;

/** How steeply the clamped cone opens from the bearing face. */
public enum ConeAngle {
    /**
     * By the grip and by how wide the layers are, with nut or tapped hole.
     *
     * <pre>
     * nut:     tan(phi) = 0.362 + 0.032 ln(bL/2) + 0.153 ln(y)
     * tapped:  tan(phi) = 0.348 + 0.013 ln(bL)   + 0.193 ln(y)
     * bL = grip / dW      y = outer diameter of the layers / dW
     * </pre>
     *
     * Source: VDI 2230-1:2015 clause 5.1.2, from memory.
     */
    VDI_2230 {
        @Override
        double tangent(double gripMm, double bearingMm, double outerMm, Engagement.Mate mate) {
            var slenderness = gripMm / bearingMm;
            var width = Math.max(1, outerMm / bearingMm);
            return mate == Engagement.Mate.NUT
                    ? 0.362 + 0.032 * Math.log(slenderness / 2) + 0.153 * Math.log(width)
                    : 0.348 + 0.013 * Math.log(slenderness) + 0.193 * Math.log(width);
        }
    },
    /** Always 30 degrees. Source: Shigley's Mechanical Engineering Design, 10th ed., section 8-5. */
    FIXED_30_DEG {
        @Override
        double tangent(double gripMm, double bearingMm, double outerMm, Engagement.Mate mate) {
            return Math.tan(Math.PI / 6);
        }
    };

    abstract double tangent(double gripMm, double bearingMm, double outerMm, Engagement.Mate mate);
}
