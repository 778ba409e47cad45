package org.tautlog.signature;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.window.ReadingRule;

/**
 * Reads the onset by offset and by knee; the knee is fitted once, by whatever rule it is then read.
 *
 * <p>Source: the angle offset after the proof stress of the tensile test (ISO 6892-1:2019, clause 13), with a turn in place of
 * a strain, common practice; the knee by segmented least squares.
 */
final class OnsetCriteriaReader {
    private final Cells cells;
    private final ElasticFit fit;
    private final double noiseNm;
    private final KneeFit.@Nullable Knee knee;

    OnsetCriteriaReader(Cells cells, ElasticFit fit, double noiseNm) {
        this.cells = cells;
        this.fit = fit;
        this.noiseNm = noiseNm;
        knee = fit.line == null ? null : KneeFit.of(cells, fit, fit.line, noiseNm);
    }

    OnsetCriteria read(ReadingRule rule) {
        var line = fit.line;
        if (line == null || knee == null) {
            return OnsetCriteria.none("no elastic line: " + fit.why);
        }
        double deg = knee.angleDeg(rule.onsetRatio());
        boolean bends = knee.gain() > OnsetCriteria.LEAST_GAIN;
        boolean within = bends && !Double.isNaN(deg) && deg <= cells.angleDeg(cells.size() - 1);
        var kneeDeg = within
                ? Feature.of(deg, kneeUncertainty(cells, line, knee, noiseNm))
                : Feature.missing(
                        bends
                                ? String.format(
                                        Locale.ROOT,
                                        "past the bend %.2f of the slope is left, not less than %.2f",
                                        knee.ratio(),
                                        rule.onsetRatio())
                                : String.format(
                                        Locale.ROOT,
                                        "a straight line does as well: the bent one gains %.1f, above %.0f is a knee",
                                        knee.gain(),
                                        OnsetCriteria.LEAST_GAIN));
        return new OnsetCriteria(
                offset(cells, fit, line, rule, noiseNm),
                kneeDeg,
                Feature.of(knee.gain(), 0),
                Feature.of(knee.ratio(), fit.gradientNoise / line.slope()));
    }

    private static double kneeUncertainty(Cells cells, RobustLine line, KneeFit.Knee knee, double noiseNm) {
        double falls = Math.max(0.1, 1 - knee.ratio());
        double width = Math.max(10, knee.toDeg() - knee.fromDeg());
        double cellsInKnee = Math.max(4, width / Math.max(0.25, cells.stepDeg(cells.firstFrom(knee.fromDeg()))));
        return Math.sqrt(12) * noiseNm / (line.slope() * falls * Math.sqrt(cellsInKnee));
    }

    /** The last place from which on the torque stays below the shifted line. */
    private static Feature offset(Cells cells, ElasticFit fit, RobustLine line, ReadingRule rule, double noiseNm) {
        double lostNm = rule.onsetOffsetDeg() * line.slope();
        int i = cells.size() - 1;
        while (i > fit.from && behind(cells, fit, line, i) >= lostNm) {
            i--;
        }
        if (i == cells.size() - 1) {
            return Feature.missing(String.format(
                    Locale.ROOT,
                    "the torque ends %.1f deg behind the elastic line, not %.1f",
                    behind(cells, fit, line, i) / line.slope(),
                    rule.onsetOffsetDeg()));
        }
        double before = behind(cells, fit, line, i);
        double past = behind(cells, fit, line, i + 1);
        double share = past > before ? Math.min(1, Math.max(0, (lostNm - before) / (past - before))) : 1;
        double deg = cells.angleDeg(i) + share * (cells.angleDeg(i + 1) - cells.angleDeg(i));
        double ratio = fit.gradient.slope(i + 1) / line.slope();
        double smoothed =
                noiseNm / Math.sqrt(Math.max(1, fit.gradient.spanDeg() / Math.max(0.25, cells.stepDeg(fit.from))));
        double behindDeg = Math.hypot(smoothed / line.slope(), line.angleUncertainty(deg));
        return Feature.of(deg, behindDeg / Math.max(0.1, 1 - ratio));
    }

    private static double behind(Cells cells, ElasticFit fit, RobustLine line, int i) {
        return line.torqueAt(cells.angleDeg(i)) - fit.gradient.value(i);
    }
}
