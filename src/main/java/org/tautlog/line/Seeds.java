package org.tautlog.line;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/** One stream of chance for each thing on the line, so that none depends on who was asked first, or by which thread. */
final class Seeds {
    private Seeds() {}

    /** What a stream of chance is for. */
    enum Use {
        SPINDLE,
        LOT,
        DRIFT,
        PLAN,
        ENGINE,
        BOLT,
        FAULT,
        TIGHTENING,
        LOAD_CELL
    }

    static UniformRandomProvider stream(long seed, Use use, long... place) {
        long mixed = mix(seed, use.name().hashCode());
        for (long part : place) {
            mixed = mix(mixed, part);
        }
        return RandomSource.XO_SHI_RO_256_PP.create(mixed);
    }

    private static long mix(long state, long part) {
        return RandomSource.SPLIT_MIX_64.create(state + part).nextLong();
    }
}
