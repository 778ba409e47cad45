package org.tautlog.intake;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
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
    private final Map<String, Seen> byCurve;
    private final Map<String, Integer> attempts;
    private final MessageDigest digest = Sha256.digest();

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
    String fingerprint(Curve curve) {
        var bytes = ByteBuffer.allocate(16 * curve.size());
        for (int i = 0; i < curve.size(); i++) {
            bytes.putDouble(curve.angleDeg(i)).putDouble(curve.torqueNm(i));
        }
        return Sha256.hex(digest.digest(bytes.array())).substring(0, 32);
    }
}
