package org.tautlog.judge;

import java.util.Map;
import org.tautlog.joint.window.Band;
import org.tautlog.joint.window.FaultRule;
import org.tautlog.joint.window.FindingCode;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.joint.window.OnsetLimits;
import org.tautlog.joint.window.ReadingRule;
import org.tautlog.joint.window.TighteningMethod;
import org.tautlog.joint.window.Window;
import org.tautlog.signature.MadeCurve;
import org.tautlog.trace.Curve;
import org.tautlog.trace.Source;
import org.tautlog.trace.Trace;
import org.tautlog.trace.TraceIdentity;

/** A specification for the made curves, and short ways to judge one. */
final class Cases {
    static final JointSpecification SPECIFICATION = new JointSpecification(
                    "made joint",
                    "1",
                    new TighteningMethod(20, 360),
                    new Window(
                            new Band(19, 23),
                            new Band(357, 364),
                            new Band(62, 84),
                            new Band(0.14, 0.18),
                            new Band(Double.NEGATIVE_INFINITY, 4),
                            new OnsetLimits(new Band(300, 420), new Band(400, 540), 0.05)),
                    ReadingRule.withDefaults(),
                    Map.of())
            .withFaults(FaultRule.withDefaults().withRundownDeg(new Band(600, 1200)));

    private Cases() {}

    static MadeCurve good() {
        var made = new MadeCurve();
        made.noiseShare = 0.003;
        made.noiseNm = 0.03;
        return made;
    }

    static Judgement judge(MadeCurve made) {
        return judge(made.make());
    }

    static Judgement judge(Curve curve) {
        return judge(curve, 1);
    }

    static Judgement judge(Curve curve, int attempt) {
        var identity = new TraceIdentity("FW-000001", "S40", "1", "3", attempt, null, "A17");
        return Judge.judge(new Trace(identity, new Source("made.csv", 1, ""), curve), SPECIFICATION);
    }

    static boolean has(Judgement judgement, FindingCode code) {
        return judgement.findings().stream().anyMatch(finding -> finding.code() == code);
    }
}
