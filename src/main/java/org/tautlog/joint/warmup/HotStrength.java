package org.tautlog.joint.warmup;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.tautlog.joint.Require;

/**
 * What heat leaves of a bolt steel's strength and stiffness.
 *
 * @param yieldShare yield strength hot over cold; above 0, at most 1
 * @param modulusShare Young's modulus hot over cold; above 0, at most 1
 */
public record HotStrength(double yieldShare, double modulusShare) {
    /** The coldest that the tabled values are read for, deg C. */
    public static final double COLDEST_C = -100;

    /** The hottest that they reach, deg C. */
    public static final double HOTTEST_C = 300;

    /**
     * Yield strength of class 10.9 in MPa over deg C; 8.8 and 12.9 fall alike within 1 %. Source: ISO 898-1:1999 annex A
     * (not in later editions), from memory.
     */
    private static final NavigableMap<Double, Double> YIELD_MPA =
            new TreeMap<>(Map.of(20.0, 940.0, 100.0, 875.0, 200.0, 790.0, 250.0, 745.0, 300.0, 705.0));

    /** Young's modulus of bolt steel in GPa over deg C. Source: VDI 2230-1 table A9, from memory. */
    private static final NavigableMap<Double, Double> MODULUS_GPA =
            new TreeMap<>(Map.of(20.0, 205.0, 100.0, 201.0, 200.0, 196.0, 300.0, 189.0));

    /** Checks both shares. */
    public HotStrength {
        Require.above("yieldShare", yieldShare, 0, "");
        Require.within("yieldShare", yieldShare, 0, 1, "");
        Require.above("modulusShare", modulusShare, 0, "");
        Require.within("modulusShare", modulusShare, 0, 1, "");
    }

    /**
     * A bolt that is as strong and stiff hot as cold.
     *
     * @return both shares 1
     */
    public static HotStrength unchanged() {
        return new HotStrength(1, 1);
    }

    /**
     * Quenched and tempered bolt steel at a temperature, read along straight lines between tabled values.
     *
     * @param temperatureC deg C; at most 300. Below 20 it counts as 20
     * @return its shares
     */
    public static HotStrength ofBoltSteel(double temperatureC) {
        Require.within("temperatureC", temperatureC, COLDEST_C, HOTTEST_C, "deg C");
        return new HotStrength(share(YIELD_MPA, temperatureC), share(MODULUS_GPA, temperatureC));
    }

    private static double share(NavigableMap<Double, Double> table, double temperatureC) {
        var coldest = table.firstEntry();
        var at = Math.max(coldest.getKey(), temperatureC);
        var below = table.floorEntry(at);
        var above = table.ceilingEntry(at);
        var span = above.getKey() - below.getKey();
        var part = span > 0 ? (at - below.getKey()) / span : 0;
        return (below.getValue() + part * (above.getValue() - below.getValue())) / coldest.getValue();
    }
}
