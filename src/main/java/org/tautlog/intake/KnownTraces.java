package org.tautlog.intake;

import java.nio.ByteBuffer;
import java.util.Map;
import java.util.Optional;
import org.tautlog.intake.file.Sha256;
import org.tautlog.intake.text.Words;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;
import org.tautlog.trace.Curve;
import org.tautlog.trace.TraceIdentity;

/** Recognises a recording that was read before, and counts the attempts at a bolt where the logs do not. */
final class KnownTraces {
    private static final int BYTES_A_SAMPLE = 2 * Double.BYTES;
    private static final int BLOCK = 256;

    private final Map<String, Seen> byCurve;
    private final Map<String, Integer> attempts;

    KnownTraces(int most) {
        byCurve = Bounded.map(most);
        attempts = Bounded.map(most);
    }

    private record Seen(TraceIdentity identity, Where where) {}

    /** The attempt that a tightening without a stated one is: one more than the last of the same bolt. */
    int nextAttempt(TraceIdentity identity) {
        return attempts.getOrDefault(bolt(identity), 0) + 1;
    }

    /**
     * The problem where the same samples were read before.
     *
     * @param sameTightening whether they were read as the same tightening, so that the second reading does not count
     * @param problem where the two lie
     */
    record Repeat(boolean sameTightening, Problem problem) {}

    Optional<Repeat> repeat(TraceIdentity identity, boolean attemptStated, String fingerprint, Where where) {
        var seen = byCurve.get(fingerprint);
        if (seen == null) {
            return Optional.empty();
        }
        boolean same = attemptStated
                ? seen.identity().equals(identity)
                : withoutAttempt(seen.identity()).equals(withoutAttempt(identity));
        return Optional.of(new Repeat(
                same,
                new Problem(
                        ProblemCode.DUPLICATE_TRACE,
                        where,
                        "the samples of " + Words.quoted(identity.words()) + " were read before at " + seen.where()
                                + (same
                                        ? ""
                                        : " as " + Words.quoted(seen.identity().words())),
                        "",
                        same ? "the second reading is left out" : "both are kept; find out which name is right")));
    }

    void remember(TraceIdentity identity, String fingerprint, Where where) {
        byCurve.putIfAbsent(fingerprint, new Seen(identity, where));
        attempts.merge(bolt(identity), identity.attempt(), Math::max);
    }

    private static TraceIdentity withoutAttempt(TraceIdentity identity) {
        return new TraceIdentity(
                identity.serial(),
                identity.station(),
                identity.spindle(),
                identity.bolt(),
                1,
                identity.time(),
                identity.boltLot());
    }

    /** Where the log names no bolt position, each spindle is taken to have its own. */
    private static String bolt(TraceIdentity identity) {
        return identity.bolt().isEmpty()
                ? identity.serial() + '\n' + identity.station() + '\n' + identity.spindle()
                : identity.serial() + '\n' + identity.bolt();
    }

    /** Stands for the samples of a curve. */
    static String fingerprint(Curve curve) {
        var digest = Sha256.digest();
        var bytes = new byte[BLOCK * BYTES_A_SAMPLE];
        var samples = ByteBuffer.wrap(bytes).asDoubleBuffer();
        for (int i = 0; i < curve.size(); i++) {
            samples.put(curve.angleDeg(i)).put(curve.torqueNm(i));
            if (!samples.hasRemaining() || i == curve.size() - 1) {
                digest.update(bytes, 0, samples.position() * Double.BYTES);
                samples.clear();
            }
        }
        return Sha256.hex(digest.digest()).substring(0, 32);
    }
}
