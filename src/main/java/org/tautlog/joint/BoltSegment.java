package org.tautlog.joint;

/**
 * A length of the bolt, between head and first engaged thread, of one section.
 *
 * @param lengthMm its length, mm; above 0
 * @param diameterMm the diameter whose circle carries the stretch, mm: the shank's own, or the thread's root diameter
 * @param form whether it is plain or threaded
 */
public record BoltSegment(double lengthMm, double diameterMm, Form form) {
    /** What a segment's surface is. */
    public enum Form {
        /** A plain or waisted shank: stretches and yields over its own circle. */
        SHANK,
        /** A thread outside the mating part: stretches over the root area, yields over the stress area. */
        THREAD
    }

    /** Checks both lengths. */
    public BoltSegment {
        Require.above("lengthMm", lengthMm, 0, "mm");
        Require.above("diameterMm", diameterMm, 0, "mm");
        Require.present("form", form);
    }

    /**
     * A plain or waisted length.
     *
     * @param lengthMm mm; above 0
     * @param diameterMm mm; above 0
     * @return the segment
     */
    public static BoltSegment shank(double lengthMm, double diameterMm) {
        return new BoltSegment(lengthMm, diameterMm, Form.SHANK);
    }

    /**
     * A free threaded length.
     *
     * @param lengthMm mm; above 0
     * @param thread the bolt's thread
     * @return the segment
     */
    public static BoltSegment thread(double lengthMm, MetricThread thread) {
        return new BoltSegment(lengthMm, thread.rootDiameterMm(), Form.THREAD);
    }

    /**
     * The area that carries the stretch.
     *
     * @return mm2
     */
    public double areaMm2() {
        return MetricThread.circleMm2(diameterMm);
    }
}
