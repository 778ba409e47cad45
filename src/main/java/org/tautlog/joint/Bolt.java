package org.tautlog.joint;

import java.util.ArrayList;
import java.util.List;

/**
 * A bolt, from under its head to the thread that holds it.
 *
 * @param thread its thread
 * @param segments its free length in order from the head to the first engaged thread; at least one
 * @param material what it is made of
 * @param headForm its head
 * @param bearingOuterMm outer diameter of the bearing face under the head, mm; above the inner one
 * @param bearingInnerMm inner diameter of the face that really bears (hole, chamfer or head underside, whichever is
 *     biggest), mm; above 0
 * @param engagement what its thread is screwed into
 */
public record Bolt(
        MetricThread thread,
        List<BoltSegment> segments,
        BoltMaterial material,
        HeadForm headForm,
        double bearingOuterMm,
        double bearingInnerMm,
        Engagement engagement) {
    /** Checks the parts and copies the list. */
    public Bolt {
        Require.present("thread", thread);
        segments = List.copyOf(Require.present("segments", segments));
        if (segments.isEmpty()) throw new IllegalArgumentException("segments is empty; a bolt has at least one");
        Require.present("material", material);
        Require.present("headForm", headForm);
        Require.above("bearingInnerMm", bearingInnerMm, 0, "mm");
        Require.above("bearingOuterMm", bearingOuterMm, bearingInnerMm, "mm (bearingInnerMm)");
        Require.present("engagement", engagement);
    }

    /**
     * The free length: all segments together.
     *
     * @return mm
     */
    public double freeLengthMm() {
        return segments.stream().mapToDouble(BoltSegment::lengthMm).sum();
    }

    /**
     * The sections that may yield: each segment with the diameter that rules its strength, and the first engaged thread,
     * half a nominal diameter long.
     *
     * @return the free segments in order, then the engaged thread
     */
    public List<BoltSegment> strengthSections() {
        var sections = new ArrayList<BoltSegment>();
        for (var segment : segments)
            sections.add(
                    segment.form() == BoltSegment.Form.SHANK
                            ? segment
                            : new BoltSegment(segment.lengthMm(), thread.stressDiameterMm(), BoltSegment.Form.THREAD));
        sections.add(new BoltSegment(
                Resilience.engagedLengthMm(thread), thread.stressDiameterMm(), BoltSegment.Form.THREAD));
        return sections;
    }

    /**
     * The mean diameter at which the head's friction acts, D_Km.
     *
     * @return mm
     */
    public double meanBearingDiameterMm() {
        return (bearingOuterMm + bearingInnerMm) / 2;
    }

    /**
     * The same bolt of another material.
     *
     * @param other the material
     * @return the changed bolt
     */
    public Bolt withMaterial(BoltMaterial other) {
        return new Bolt(thread, segments, other, headForm, bearingOuterMm, bearingInnerMm, engagement);
    }
}
