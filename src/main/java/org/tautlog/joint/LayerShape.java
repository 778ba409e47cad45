package org.tautlog.joint;

/** How much of a clamped layer carries the load. */
public sealed interface LayerShape {
    /**
     * A wide layer: the load spreads as a cone from under the head, until it meets the layer's edge.
     *
     * @param holeDiameterMm the bolt hole, mm; above 0
     * @param outerDiameterMm the diameter of the biggest circle around the bolt that lies in the layer, mm; above the hole
     */
    record Cone(double holeDiameterMm, double outerDiameterMm) implements LayerShape {
        /** Checks both diameters. */
        public Cone {
            Require.above("holeDiameterMm", holeDiameterMm, 0, "mm");
            Require.above("outerDiameterMm", outerDiameterMm, holeDiameterMm, "mm (holeDiameterMm)");
        }
    }

    /**
     * A sleeve or boss: the whole ring carries the load.
     *
     * @param holeDiameterMm inner diameter, mm; above 0
     * @param outerDiameterMm outer diameter, mm; above the inner one
     */
    record Sleeve(double holeDiameterMm, double outerDiameterMm) implements LayerShape {
        /** Checks both diameters. */
        public Sleeve {
            Require.above("holeDiameterMm", holeDiameterMm, 0, "mm");
            Require.above("outerDiameterMm", outerDiameterMm, holeDiameterMm, "mm (holeDiameterMm)");
        }

        /**
         * The ring's area.
         *
         * @return mm2
         */
        public double areaMm2() {
            return MetricThread.circleMm2(outerDiameterMm) - MetricThread.circleMm2(holeDiameterMm);
        }
    }

    /**
     * A layer whose bearing area somebody has measured or computed elsewhere.
     *
     * @param areaMm2 the area, mm2; above 0
     */
    record StatedArea(double areaMm2) implements LayerShape {
        /** Checks the area. */
        public StatedArea {
            Require.above("areaMm2", areaMm2, 0, "mm2");
        }
    }
}
