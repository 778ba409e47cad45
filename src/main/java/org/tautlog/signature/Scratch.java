package org.tautlog.signature;

import java.util.ArrayList;
import java.util.List;

/**
 * Arrays to work in, kept from one curve to the next: what is thrown away instead goes over the one way to the memory that
 * all processors share. Nothing that is read hangs on what lies in them. Not for two threads at once.
 */
public final class Scratch {
    /** Longer arrays are not kept: a curve of so many samples is rare, and another would not be made faster. */
    private static final int LONGEST_KEPT = 1 << 15;

    private final List<double[]> kept = new ArrayList<>();
    private int taken;

    /** Nothing kept yet. */
    public Scratch() {
        taken = 0;
    }

    /** An array of so many values or more, whatever they are. */
    double[] doubles(int least) {
        if (least > LONGEST_KEPT) {
            return new double[least];
        }
        if (taken == kept.size()) {
            kept.add(new double[least]);
        } else if (kept.get(taken).length < least) {
            kept.set(taken, new double[Math.min(LONGEST_KEPT, least + least / 4)]);
        }
        return kept.get(taken++);
    }

    /** How much is in use. */
    int mark() {
        return taken;
    }

    /** Takes back all that was given since a mark. */
    void backTo(int mark) {
        taken = mark;
    }
}
