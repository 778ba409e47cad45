package org.tautlog.judge;

import java.util.ArrayList;
import java.util.List;
import org.tautlog.trace.Curve;

/** The same recording as a coarser logger would have kept it. */
final class Thinned {
    private Thinned() {}

    /** Every so-manieth sample, evenly by count, first and last included. */
    static Curve byCount(Curve curve, int samples) {
        var kept = new ArrayList<Integer>();
        for (int i = 0; i < samples; i++) {
            kept.add((int) Math.round(i * (curve.size() - 1.0) / (samples - 1)));
        }
        return of(curve, kept.stream().distinct().toList());
    }

    /** One sample each so many degrees of progress, so that as many are left as asked for; the last is kept. */
    static Curve byAngle(Curve curve, int samples) {
        double first = curve.angleDeg(0);
        double greatest = first;
        for (int i = 0; i < curve.size(); i++) {
            greatest = Math.max(greatest, curve.angleDeg(i));
        }
        double step = (greatest - first) / (samples - 2);
        double next = first;
        var kept = new ArrayList<Integer>();
        for (int i = 0; i < curve.size(); i++) {
            if (curve.angleDeg(i) >= next || i == curve.size() - 1) {
                kept.add(i);
                while (next <= curve.angleDeg(i)) {
                    next += step;
                }
            }
        }
        return of(curve, kept);
    }

    /** Only what was recorded past an angle before the greatest one. */
    static Curve last(Curve curve, double deg) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < curve.size(); i++) {
            greatest = Math.max(greatest, curve.angleDeg(i));
        }
        var kept = new ArrayList<Integer>();
        for (int i = 0; i < curve.size(); i++) {
            if (curve.angleDeg(i) >= greatest - deg || !kept.isEmpty()) {
                kept.add(i);
            }
        }
        return of(curve, kept);
    }

    /** As many samples as asked for, those between two recorded ones on the straight line between them. */
    static Curve filledUp(Curve curve, int samples) {
        var angle = new double[samples];
        var torque = new double[samples];
        var time = new double[samples];
        var stage = new int[samples];
        for (int k = 0; k < samples; k++) {
            double place = k * (curve.size() - 1.0) / (samples - 1);
            int i = Math.min(curve.size() - 2, (int) place);
            double share = place - i;
            angle[k] = curve.angleDeg(i) + share * (curve.angleDeg(i + 1) - curve.angleDeg(i));
            torque[k] = curve.torqueNm(i) + share * (curve.torqueNm(i + 1) - curve.torqueNm(i));
            time[k] = curve.hasTime() ? curve.timeS(i) + share * (curve.timeS(i + 1) - curve.timeS(i)) : 0;
            stage[k] = curve.hasStages() ? curve.stage(share < 0.5 ? i : i + 1) : 0;
        }
        return with(curve, angle, torque, time, stage);
    }

    private static Curve of(Curve curve, List<Integer> kept) {
        int n = kept.size();
        var angle = new double[n];
        var torque = new double[n];
        var time = new double[n];
        var stage = new int[n];
        for (int k = 0; k < n; k++) {
            int i = kept.get(k);
            angle[k] = curve.angleDeg(i);
            torque[k] = curve.torqueNm(i);
            time[k] = curve.hasTime() ? curve.timeS(i) : 0;
            stage[k] = curve.hasStages() ? curve.stage(i) : 0;
        }
        return with(curve, angle, torque, time, stage);
    }

    private static Curve with(Curve like, double[] angle, double[] torque, double[] time, int[] stage) {
        var made = Curve.of(angle, torque);
        made = like.hasTime() ? made.withTimeS(time) : made;
        return like.hasStages() ? made.withStages(stage) : made;
    }
}
