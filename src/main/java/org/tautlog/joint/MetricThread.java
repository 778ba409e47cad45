package org.tautlog.joint;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * An ISO metric thread: the basic profile's diameters and the areas that follow from them.
 *
 * <pre>
 * H  = sqrt(3)/2 P              height of the fundamental triangle, mm
 * d2 = d - 3/4 H                pitch diameter, mm
 * d1 = d - 5/4 H                minor diameter of the internal thread, mm
 * d3 = d1 - 1/6 H               root diameter of the external thread, mm
 * ds = (d2 + d3) / 2            stress diameter, mm
 * As = pi/4 ds^2                nominal stress area, mm2
 * A3 = pi/4 d3^2                root area, mm2
 * </pre>
 *
 * Source: ISO 68-1 (profile), ISO 724 (diameters), ISO 898-1 clause 9 (stress area).
 *
 * @param nominalMm the nominal (major) diameter d, mm; above 0
 * @param pitchMm the pitch P, mm; above 0 and below a third of the nominal diameter. A pitch that is not in the table
 *     is allowed here, so that a pitch error can be studied; {@link #of} takes standard sizes only
 */
public record MetricThread(double nominalMm, double pitchMm) {
    /** Standard pitches, coarse first. Source: ISO 261, M5 to M20, third choice M9 and M11 included. */
    private static final Map<Double, List<Double>> PITCHES_MM = new TreeMap<>(Map.ofEntries(
            Map.entry(5.0, List.of(0.8, 0.5)),
            Map.entry(6.0, List.of(1.0, 0.75)),
            Map.entry(7.0, List.of(1.0, 0.75)),
            Map.entry(8.0, List.of(1.25, 1.0, 0.75)),
            Map.entry(9.0, List.of(1.25, 1.0, 0.75)),
            Map.entry(10.0, List.of(1.5, 1.25, 1.0, 0.75)),
            Map.entry(11.0, List.of(1.5, 1.0, 0.75)),
            Map.entry(12.0, List.of(1.75, 1.5, 1.25, 1.0)),
            Map.entry(14.0, List.of(2.0, 1.5, 1.25, 1.0)),
            Map.entry(16.0, List.of(2.0, 1.5, 1.0)),
            Map.entry(18.0, List.of(2.5, 2.0, 1.5, 1.0)),
            Map.entry(20.0, List.of(2.5, 2.0, 1.5, 1.0))));

    private static final Pattern DESIGNATION =
            Pattern.compile("M(\\d+(?:\\.\\d+)?)(?:\\s*[xX×]\\s*(\\d+(?:\\.\\d+)?))?");

    /** Checks both lengths. */
    public MetricThread {
        Require.above("nominalMm", nominalMm, 0, "mm");
        Require.above("pitchMm", pitchMm, 0, "mm");
        if (pitchMm >= nominalMm / 3)
            throw new IllegalArgumentException("pitchMm is " + pitchMm
                    + "; it must be below a third of the nominal diameter of " + nominalMm + " mm");
    }

    /**
     * Reads a standard designation; the pitch may be left out for the coarse thread.
     *
     * @param designation such as {@code M10}, {@code M10x1.5} or {@code M10x1.25}, M5 to M20
     * @return the thread
     * @throws IllegalArgumentException when the size or the pitch is not a standard one; the message offers those that are
     */
    public static MetricThread of(String designation) {
        var match = DESIGNATION.matcher(designation.strip());
        if (!match.matches())
            throw new IllegalArgumentException(
                    "thread '" + designation + "' is not understood; write it like M10 or M10x1.25");
        var nominalMm = Double.parseDouble(match.group(1));
        var pitches = PITCHES_MM.get(nominalMm);
        if (pitches == null)
            throw new IllegalArgumentException("thread '" + designation + "' is unknown; known sizes: "
                    + PITCHES_MM.keySet().stream()
                            .map(size -> "M" + shortest(size))
                            .collect(Collectors.joining(", ")));
        var stated = match.group(2);
        if (stated == null) return new MetricThread(nominalMm, pitches.get(0));
        var pitchMm = Double.parseDouble(stated);
        if (!pitches.contains(pitchMm))
            throw new IllegalArgumentException("thread '" + designation + "' is unknown; for M" + shortest(nominalMm)
                    + " there are "
                    + pitches.stream()
                            .map(pitch -> new MetricThread(nominalMm, pitch).designation())
                            .collect(Collectors.joining(", ")));
        return new MetricThread(nominalMm, pitchMm);
    }

    /**
     * The thread's name with its pitch written out.
     *
     * @return such as {@code M10x1.5}
     */
    public String designation() {
        return "M" + shortest(nominalMm) + "x" + shortest(pitchMm);
    }

    /**
     * The pitch diameter d2.
     *
     * @return mm
     */
    public double pitchDiameterMm() {
        return nominalMm - 0.75 * triangleHeightMm();
    }

    /**
     * The minor diameter d1 of the internal thread.
     *
     * @return mm
     */
    public double minorDiameterMm() {
        return nominalMm - 1.25 * triangleHeightMm();
    }

    /**
     * The root diameter d3 of the external thread.
     *
     * @return mm
     */
    public double rootDiameterMm() {
        return minorDiameterMm() - triangleHeightMm() / 6;
    }

    /**
     * The stress diameter ds, the mean of pitch and root diameter.
     *
     * @return mm
     */
    public double stressDiameterMm() {
        return (pitchDiameterMm() + rootDiameterMm()) / 2;
    }

    /**
     * The nominal stress area As, which rules strength.
     *
     * @return mm2
     */
    public double stressAreaMm2() {
        return circleMm2(stressDiameterMm());
    }

    /**
     * The root area A3, which rules stiffness.
     *
     * @return mm2
     */
    public double rootAreaMm2() {
        return circleMm2(rootDiameterMm());
    }

    /**
     * The area of the full nominal diameter.
     *
     * @return mm2
     */
    public double nominalAreaMm2() {
        return circleMm2(nominalMm);
    }

    static double circleMm2(double diameterMm) {
        return Math.PI / 4 * diameterMm * diameterMm;
    }

    private double triangleHeightMm() {
        return Math.sqrt(3) / 2 * pitchMm;
    }

    private static String shortest(double number) {
        return number == Math.rint(number) ? String.format(Locale.ROOT, "%.0f", number) : Double.toString(number);
    }
}
