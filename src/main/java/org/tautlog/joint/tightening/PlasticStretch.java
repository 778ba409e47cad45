package org.tautlog.joint.tightening;

import java.util.ArrayList;
import java.util.List;
import org.tautlog.joint.Bolt;
import org.tautlog.joint.BoltSegment;
import org.tautlog.joint.FirstYield;
import org.tautlog.joint.Require;
import org.tautlog.joint.TorqueForm;
import org.tautlog.joint.TorquePreload;
import org.tautlog.joint.TorsionRule;

/**
 * How far a bolt has stretched for good at a preload: each section by its own stress, stretched and twisted together.
 *
 * <pre>
 * sigma_v = sqrt(sigma^2 + 3 tau^2)      sigma = F/A, tau = M_G/W      MPa
 * u_p     = sum of l eps_p(sigma_v) sigma/sigma_v                      mm
 * phi_p   = sum of (3/d) (3 tau/sigma) u_p                             rad, while turning
 *
 * eps_p as the knee says; l, d, A length, diameter and area of a section
 * </pre>
 *
 * Source: flow rule of the distortion-energy criterion; the twist so that torque times twist is the work done in a section
 * that shears plastically.
 */
public final class PlasticStretch {
    /** Plastic strain from which on a bolt counts as yielding where the knee is round. Source: the technical elastic limit Rp0.01 of the trade. */
    public static final double ELASTIC_LIMIT_STRAIN = 1e-4;

    private static final double PROOF_STRAIN = 0.002;
    private static final double SHARPEST_EXPONENT = 200;
    private static final double NMM_PER_NM = 1000;

    /** A length that yields as one; tau = shearMPa + shearMPaPerN F. */
    private record Section(
            double lengthMm,
            double areaMm2,
            double strengthMPa,
            double doneStrain,
            double shearMPa,
            double shearMPaPerN,
            double twistDegPerMm) {
        double equivalentMPa(double preloadN) {
            var sigma = preloadN / areaMm2;
            var tau = shearMPa + shearMPaPerN * preloadN;
            return Math.sqrt(sigma * sigma + 3 * tau * tau);
        }

        double preloadN(double equivalentMPa) {
            var squared = Math.max(0, equivalentMPa * equivalentMPa - 3 * shearMPa * shearMPa);
            var shear = areaMm2 * shearMPaPerN;
            return areaMm2 * Math.sqrt(squared / (1 + 3 * shear * shear));
        }

        double slopeMPaPerN(double preloadN) {
            var sigma = preloadN / areaMm2;
            var tau = shearMPa + shearMPaPerN * preloadN;
            return (sigma / areaMm2 + 3 * tau * shearMPaPerN) / equivalentMPa(preloadN);
        }
    }

    private final Knee knee;
    private final double exponent;
    private final double plasticModulusMPa;
    private final List<Section> sections;

    private PlasticStretch(Bolt bolt, Knee knee, List<Section> sections) {
        this.knee = knee;
        this.sections = sections;
        plasticModulusMPa = bolt.material().plasticModulusMPa();
        exponent = exponent(bolt);
    }

    /**
     * A bolt that is being turned: torsion grows with the preload.
     *
     * @param bolt the bolt
     * @param threadMu friction in the thread; at least 0
     * @param rule how the section modulus in torsion is taken
     * @param knee how stress goes on past the elastic line
     * @return its plastic stretch over preload
     */
    public static PlasticStretch turning(Bolt bolt, double threadMu, TorsionRule rule, Knee knee) {
        var leverMm = TorquePreload.threadLeverMm(bolt.thread(), threadMu, TorqueForm.ADDED_TERMS);
        var strengthMPa = bolt.material().yieldStrengthMPa();
        var sections = new ArrayList<Section>();
        for (var part : bolt.strengthSections())
            sections.add(section(part, strengthMPa, 0, 0, leverMm / rule.sectionModulusMm3(part.diameterMm())));
        return new PlasticStretch(bolt, knee, sections);
    }

    /**
     * A bolt whose turning is over: hardened by what it took, a torque left in the shank, its strength changed by
     * temperature. The stretch counted is what comes on top.
     *
     * @param bolt the bolt
     * @param threadMu friction in the thread while it was turned; at least 0
     * @param rule how the section modulus in torsion is taken
     * @param knee how stress goes on past the elastic line
     * @param reachedN the highest preload while it was turned, N; at least 0
     * @param shankTorqueNm the torque left in the shank, N·m; at least 0
     * @param yieldShare yield strength now over yield strength while it was turned; above 0
     * @return its further plastic stretch over preload
     */
    public static PlasticStretch standing(
            Bolt bolt,
            double threadMu,
            TorsionRule rule,
            Knee knee,
            double reachedN,
            double shankTorqueNm,
            double yieldShare) {
        Require.above("yieldShare", yieldShare, 0, "");
        var material = bolt.material();
        var sections = new ArrayList<Section>();
        for (var part : bolt.strengthSections()) {
            var proofN = FirstYield.turningPreloadN(
                    material.yieldStrengthMPa(), part.diameterMm(), bolt.thread(), threadMu, rule);
            var reached = reachedN / proofN;
            var hardened = knee == Knee.SHARP ? Math.max(1, reached) : 1;
            var doneStrain = knee == Knee.ROUND ? PROOF_STRAIN * Math.pow(reached, exponent(bolt)) : 0;
            var shearMPa = shankTorqueNm * NMM_PER_NM / rule.sectionModulusMm3(part.diameterMm());
            sections.add(section(part, material.yieldStrengthMPa() * hardened * yieldShare, doneStrain, shearMPa, 0));
        }
        return new PlasticStretch(bolt, knee, sections);
    }

    /**
     * The preload at which the weakest section reaches its yield strength.
     *
     * @return N
     */
    public double proofN() {
        return sections.stream()
                .mapToDouble(section -> section.preloadN(section.strengthMPa()))
                .min()
                .orElseThrow();
    }

    /**
     * The preload from which on the bolt counts as yielding: the yield strength of a sharp knee, 0.01 % further plastic
     * strain in the weakest section of a round one.
     *
     * @return N
     */
    public double elasticLimitN() {
        if (knee == Knee.SHARP) return proofN();
        return sections.stream()
                .mapToDouble(section -> section.preloadN(section.strengthMPa()
                        * Math.pow((section.doneStrain() + ELASTIC_LIMIT_STRAIN) / PROOF_STRAIN, 1 / exponent)))
                .min()
                .orElseThrow();
    }

    /**
     * The preload that cannot be passed because a perfectly plastic section holds it.
     *
     * @return N; infinite where the bolt hardens
     */
    public double heldN() {
        return knee == Knee.SHARP && plasticModulusMPa == 0 ? proofN() : Double.POSITIVE_INFINITY;
    }

    /**
     * Plastic stretch at a preload.
     *
     * @param preloadN N; up to {@link #heldN}
     * @return mm; at the held preload the least stretch it takes to get there
     */
    public double stretchMm(double preloadN) {
        var sum = 0.0;
        for (var section : sections) sum += stretchMm(section, preloadN);
        return sum;
    }

    /** The head's angle that plastic stretch and plastic twist take up, deg. */
    double angleDeg(double preloadN, double degPerMm) {
        var sum = 0.0;
        for (var section : sections) sum += stretchMm(section, preloadN) * (degPerMm + section.twistDegPerMm());
        return sum;
    }

    /** How fast that angle grows, deg/N. */
    double slopeDegPerN(double preloadN, double degPerMm) {
        var sum = 0.0;
        for (var section : sections) sum += slopeMmPerN(section, preloadN) * (degPerMm + section.twistDegPerMm());
        return sum;
    }

    /** The angle that each further mm takes up in the section that holds the preload, deg/mm. */
    double heldDegPerMm(double degPerMm) {
        return degPerMm + weakest().twistDegPerMm();
    }

    /**
     * The preload while turning at which this angle grows as fast as stated. All sections of a round knee share one exponent,
     * so the growth is a power of the preload.
     */
    double preloadNAtSlope(double slopeDegPerN, double degPerMm) {
        var proofN = proofN();
        if (knee == Knee.SHARP) return proofN;
        return proofN * Math.pow(slopeDegPerN / slopeDegPerN(proofN, degPerMm), 1 / (exponent - 1));
    }

    /**
     * The preload when bolt and joint together are drawn together by a given length.
     *
     * <pre>
     * F resilience + u_p(F) = u
     * </pre>
     *
     * @param resilienceMmPerN how much bolt and layers give elastically, mm/N; above 0
     * @param drawnMm the length u, mm
     * @return N; 0 where nothing is drawn together, at most {@link #heldN}
     */
    public double preloadN(double resilienceMmPerN, double drawnMm) {
        Require.above("resilienceMmPerN", resilienceMmPerN, 0, "mm/N");
        if (drawnMm <= 0) return 0;
        var elasticN = Math.min(drawnMm / resilienceMmPerN, heldN());
        if (stretchMm(elasticN) == 0) return elasticN;
        return RisingRoot.find(
                preloadN -> preloadN * resilienceMmPerN + stretchMm(preloadN) - drawnMm,
                preloadN -> {
                    var slope = resilienceMmPerN;
                    for (var section : sections) slope += slopeMmPerN(section, preloadN);
                    return slope;
                },
                elasticN,
                nearN(drawnMm));
    }

    /**
     * The largest plastic strain of any section when the whole bolt has stretched plastically by a given length.
     *
     * @param preloadN the preload, N
     * @param stretchMm the whole bolt's plastic stretch, mm; at the held preload the weakest section takes it all
     * @return a share (0.01 is 1 %)
     */
    public double largestStrain(double preloadN, double stretchMm) {
        if (preloadN >= heldN()) return stretchMm / weakest().lengthMm();
        var largest = 0.0;
        for (var section : sections) largest = Math.max(largest, stretchMm(section, preloadN) / section.lengthMm());
        return largest;
    }

    /** A preload near or above the one at which plastic stretch alone makes up a drawn length: where to start looking. */
    double nearN(double drawnMm) {
        if (knee == Knee.SHARP) return Double.POSITIVE_INFINITY;
        var weakest = weakest();
        var strain = drawnMm / weakest.lengthMm() + weakest.doneStrain();
        return weakest.preloadN(weakest.strengthMPa() * Math.pow(strain / PROOF_STRAIN, 1 / exponent));
    }

    private double stretchMm(Section section, double preloadN) {
        var equivalentMPa = section.equivalentMPa(preloadN);
        if (equivalentMPa <= 0) return 0;
        var ratio = equivalentMPa / section.strengthMPa();
        double strain;
        if (knee == Knee.ROUND) strain = PROOF_STRAIN * Math.pow(ratio, exponent) - section.doneStrain();
        else strain = plasticModulusMPa > 0 ? (equivalentMPa - section.strengthMPa()) / plasticModulusMPa : 0;
        return strain <= 0 ? 0 : section.lengthMm() * strain * preloadN / section.areaMm2() / equivalentMPa;
    }

    /** Near enough for a Newton step: that torsion's share of the stress shifts with the preload is left out. */
    private double slopeMmPerN(Section section, double preloadN) {
        var equivalentMPa = section.equivalentMPa(preloadN);
        if (equivalentMPa <= 0) return 0;
        var ratio = equivalentMPa / section.strengthMPa();
        var strain = PROOF_STRAIN * Math.pow(ratio, exponent);
        double perMPa;
        if (knee == Knee.ROUND) perMPa = strain > section.doneStrain() ? exponent * strain / equivalentMPa : 0;
        else perMPa = ratio > 1 && plasticModulusMPa > 0 ? 1 / plasticModulusMPa : 0;
        return section.lengthMm()
                * perMPa
                * section.slopeMPaPerN(preloadN)
                * preloadN
                / section.areaMm2()
                / equivalentMPa;
    }

    private Section weakest() {
        var weakest = sections.get(0);
        for (var section : sections)
            if (section.preloadN(section.strengthMPa()) < weakest.preloadN(weakest.strengthMPa())) weakest = section;
        return weakest;
    }

    private static Section section(
            BoltSegment part, double strengthMPa, double doneStrain, double shearMPa, double shearMPaPerN) {
        return new Section(
                part.lengthMm(),
                part.areaMm2(),
                strengthMPa,
                doneStrain,
                shearMPa,
                shearMPaPerN,
                Math.toDegrees(9 * part.areaMm2() * shearMPaPerN / part.diameterMm()));
    }

    private static double exponent(Bolt bolt) {
        var material = bolt.material();
        var strains = Math.log(Math.max(2, material.uniformElongation() / PROOF_STRAIN));
        var strengths = Math.log(material.ultimateStrengthMPa() / material.yieldStrengthMPa());
        return Math.min(SHARPEST_EXPONENT, strains / strengths);
    }
}
