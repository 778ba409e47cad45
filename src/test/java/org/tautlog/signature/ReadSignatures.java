package org.tautlog.signature;

/** Signatures as if read from a curve, with the few features that a clamp load rests on. */
final class ReadSignatures {
    private ReadSignatures() {}

    /** Elastic origin at 1000 deg on the recording's axis, no prevailing torque. */
    static Signature of(double rateNmPerDeg, double pastOriginDeg, double torqueNm, EndState state) {
        var none = Feature.missing("not looked at");
        return new Signature(
                500,
                exact(0),
                new SnugPoint(none, none),
                new ElasticLine(exact(rateNmPerDeg), exact(1000), exact(0)),
                new YieldOnset(none, none, none, none, none, state),
                new FinalPoint(exact(1000 + pastOriginDeg), exact(torqueNm), exact(torqueNm), none),
                CurveMarks.none("not looked at"));
    }

    private static Feature exact(double value) {
        return Feature.of(value, 0);
    }
}
