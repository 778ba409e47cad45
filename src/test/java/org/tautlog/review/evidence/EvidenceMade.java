package org.tautlog.review.evidence;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import org.tautlog.joint.window.Consequence;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.judge.Finding;
import org.tautlog.judge.Judgement;
import org.tautlog.judge.Verdict;
import org.tautlog.review.MadeShift;
import org.tautlog.signature.EndState;
import org.tautlog.signature.Signature;
import org.tautlog.signature.YieldOnset;
import org.tautlog.trace.TraceIdentity;

/** Judgements made by hand, one engine a minute. */
final class EvidenceMade {
    private EvidenceMade() {}

    static Judgement judgement(int engine, String spindle, int attempt, Verdict verdict, EndState state) {
        var like = MadeShift.named("FW", 360).judgement();
        var signature = like.signature();
        var onset = signature.onset();
        return new Judgement(
                new TraceIdentity(
                        String.format(Locale.ROOT, "FW-%02d", engine),
                        "S40",
                        spindle,
                        spindle,
                        attempt,
                        OffsetDateTime.parse("2026-03-17T06:00:00+01:00").plusMinutes(engine),
                        "A17"),
                like.source(),
                like.specificationName(),
                like.specificationVersion(),
                new Signature(
                        signature.samples(),
                        signature.prevailingTorqueNm(),
                        signature.snug(),
                        signature.elastic(),
                        new YieldOnset(
                                onset.angleDeg(),
                                onset.torqueNm(),
                                onset.minGradientRatio(),
                                onset.finalGradientRatio(),
                                onset.pastOnsetDeg(),
                                state),
                        signature.end(),
                        signature.marks()),
                verdict,
                List.of());
    }

    /** The same at another place, with a bolt of another lot. */
    static Judgement conforming(Judgement like, String station, String lot) {
        return moved(like, station, like.identity().spindle(), lot, Verdict.CONFORMING, List.of());
    }

    /** The same at another place, with a bolt of another lot and a finding that does not conform. */
    static Judgement showing(Judgement like, String station, String spindle, String lot, FindingCode code) {
        var finding = new Finding(code, Consequence.NONCONFORMING, null, null, "", code.title());
        return moved(like, station, spindle, lot, Verdict.NONCONFORMING, List.of(finding));
    }

    private static Judgement moved(
            Judgement like, String station, String spindle, String lot, Verdict verdict, List<Finding> findings) {
        var identity = like.identity();
        return new Judgement(
                new TraceIdentity(
                        identity.serial(), station, spindle, identity.bolt(), identity.attempt(), identity.time(), lot),
                like.source(),
                like.specificationName(),
                like.specificationVersion(),
                like.signature(),
                verdict,
                findings);
    }
}
