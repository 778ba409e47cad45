package org.tautlog.joint.window;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.tautlog.joint.study.ToleranceStudy;
import org.tautlog.joint.tightening.Tightened;
import org.tautlog.joint.tightening.TighteningCurve;
import org.tautlog.joint.warmup.HotStrength;
import org.tautlog.joint.warmup.StretchClaim;
import org.tautlog.joint.warmup.Temperatures;
import org.tautlog.joint.warmup.WarmUp;

/**
 * Whether the numbers that a specification gives fit each other, each at its mean: the turn ends short of yield, the stated
 * temperatures bring the bolt into yield, and the further stretch that the plant reckons with is what they give.
 *
 * @param turnDeg the stated turn past the snug point, as the tool counts it, deg
 * @param yieldTurnDeg the turn at which the bolt begins to yield, as the tool counts it, deg
 * @param riseShareOrNull share of the stated temperature rise at which the bolt begins to yield when first warm; 0 where it
 *     yielded while it was turned, null where it stays elastic up to the hottest that bolt steel is known for
 * @param outgrowthMm by how much the layers outgrow the bolt at the stated temperatures, mm
 * @param riseForOneMmOrNull the even rise that one millimetre would need, K; null where the layers do not outgrow the bolt
 * @param claimOrNull the further stretch stated; null where none is
 */
public record GivenNumbers(
        double turnDeg,
        double yieldTurnDeg,
        @Nullable Double riseShareOrNull,
        double outgrowthMm,
        @Nullable Double riseForOneMmOrNull,
        @Nullable StretchClaim claimOrNull) {
    private static final int HALVINGS = 40;

    /** A number that a specification gives. */
    public enum Given {
        /** The turn past the snug point. */
        TURN("turn"),
        /** The temperatures of bolt and layers when first warm. */
        TEMPERATURES("warm-up temperatures"),
        /** The further stretch that the plant reckons the first warm-up to add. */
        FURTHER_STRETCH("further stretch");

        private final String words;

        Given(String words) {
            this.words = words;
        }

        /** {@return its name in plain words} */
        public String words() {
            return words;
        }
    }

    /**
     * Holds the numbers of a specification against each other.
     *
     * @param specification the specification; it states joint and warm-up
     * @param study its study, for the tightening with nothing astray
     * @return what fits and what does not
     * @throws IllegalArgumentException where a further stretch is stated and the layers do not outgrow the bolt
     */
    public static GivenNumbers of(JointSpecification specification, ToleranceStudy study) {
        var nominal = study.nominal();
        var joint = nominal.joint();
        var curve = TighteningCurve.of(nominal);
        double windUpDegPerNm = specification
                .statedJoint()
                .map(stated -> stated.driveNmPerDeg().isPresent()
                        ? 1 / stated.driveNmPerDeg().getAsDouble()
                        : 0)
                .orElse(0.0);
        double limitDeg = curve.elasticLimitAngleDeg();
        double yieldTurnDeg =
                limitDeg - curve.snugAngleDeg() + (curve.torqueNm(limitDeg) - nominal.snugTorqueNm()) * windUpDegPerNm;
        double mmPerK = Temperatures.even(joint, 0, 1).outgrowthMm(joint);
        var claimMm = specification
                .statedJoint()
                .flatMap(StatedJoint::warmUp)
                .map(StatedWarmUp::furtherStretchMm)
                .orElse(OptionalDouble.empty());
        return new GivenNumbers(
                specification.method().turnDeg(),
                yieldTurnDeg,
                riseShare(study, curve.atEnd()),
                study.temperatures().outgrowthMm(joint),
                mmPerK > 0 ? 1 / mmPerK : null,
                claimMm.isPresent() ? StretchClaim.check(joint, claimMm.getAsDouble(), study.temperatures()) : null);
    }

    private static @Nullable Double riseShare(ToleranceStudy study, Tightened end) {
        if (end.yielded()) {
            return 0.0;
        }
        var stated = study.temperatures();
        double rise = stated.boltC() - stated.assemblyC();
        double high = rise > 0 ? (HotStrength.HOTTEST_C - stated.assemblyC()) / rise : 1;
        if (!yieldsAt(study, end, high)) {
            return null;
        }
        double low = 0;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (yieldsAt(study, end, middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private static boolean yieldsAt(ToleranceStudy study, Tightened end, double share) {
        var stated = study.temperatures();
        double coldC = stated.assemblyC();
        var hot = new Temperatures(
                coldC,
                coldC + share * (stated.boltC() - coldC),
                stated.layersC().stream()
                        .map(layerC -> coldC + share * (layerC - coldC))
                        .toList());
        return new WarmUp(
                        study.nominal().joint(),
                        hot,
                        HotStrength.ofBoltSteel(hot.boltC()),
                        study.torsionLeftShare(),
                        study.embeddingMm(),
                        study.nominal().torsionRule(),
                        study.nominal().knee())
                .run(end)
                .yieldsAtWarmUp();
    }

    /** {@return share of the stated rise at which the bolt begins to yield; empty where it stays elastic} */
    public OptionalDouble riseShare() {
        return riseShareOrNull == null ? OptionalDouble.empty() : OptionalDouble.of(riseShareOrNull);
    }

    /** {@return the further stretch stated, beside what it would need; empty where none is} */
    public Optional<StretchClaim> claim() {
        return Optional.ofNullable(claimOrNull);
    }

    /** {@return the given numbers that do not fit, empty where all do} */
    public List<Given> misfits() {
        var misfits = new ArrayList<Given>();
        if (yieldTurnDeg <= turnDeg) {
            misfits.add(Given.TURN);
        }
        if (riseShareOrNull == null || riseShareOrNull > 1) {
            misfits.add(Given.TEMPERATURES);
        }
        if (claimOrNull != null && !claimOrNull.fits()) {
            misfits.add(Given.FURTHER_STRETCH);
        }
        return List.copyOf(misfits);
    }

    /** {@return how the turn lies to yield, in a sentence with its numbers} */
    public String turnSentence() {
        return String.format(
                Locale.ROOT,
                "The bolt begins to yield %.0f deg past the snug point; the stated turn of %.0f deg ends %.0f deg %s.",
                yieldTurnDeg,
                turnDeg,
                Math.abs(yieldTurnDeg - turnDeg),
                yieldTurnDeg > turnDeg ? "short of that" : "beyond that, so it does not fit an end short of yield");
    }

    /** {@return how the stated temperatures lie to yield, in a sentence with its numbers} */
    public String temperaturesSentence() {
        if (riseShareOrNull == null) {
            return String.format(
                    Locale.ROOT,
                    "When first warm the bolt stays elastic, even with the bolt at %.0f deg C: the stated temperatures do not"
                            + " fit a bolt that is to yield.",
                    HotStrength.HOTTEST_C);
        }
        if (riseShareOrNull == 0) {
            return "It yields when turned already; the warm-up only takes it further.";
        }
        return riseShareOrNull <= 1
                ? String.format(
                        Locale.ROOT,
                        "When first warm it begins to yield at %.0f %% of the stated temperature rise.",
                        100 * riseShareOrNull)
                : String.format(
                        Locale.ROOT,
                        "When first warm it stays elastic: the stated temperatures do not fit, %.1f times their rise would"
                                + " be needed.",
                        riseShareOrNull);
    }

    /** {@return what the warm-up stretches further, and what was stated of it, in a sentence with its numbers} */
    public String stretchSentence() {
        if (claimOrNull != null) {
            return claimOrNull.sentence();
        }
        return riseForOneMmOrNull == null
                ? String.format(
                        Locale.ROOT,
                        "At the stated temperatures the parts outgrow the bolt by %.2f mm; evenly warmed they do not.",
                        outgrowthMm)
                : String.format(
                        Locale.ROOT,
                        "At the stated temperatures the parts outgrow the bolt by %.2f mm; a whole millimetre would need an"
                                + " even rise of %.0f K.",
                        outgrowthMm,
                        riseForOneMmOrNull);
    }
}
