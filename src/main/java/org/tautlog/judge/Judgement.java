package org.tautlog.judge;

import java.util.List;
import java.util.Objects;
import org.tautlog.signature.Signature;
import org.tautlog.trace.Source;
import org.tautlog.trace.TraceIdentity;

/**
 * The verdict on one tightening with everything it rests on; the samples stay with the trace.
 *
 * @param identity what was judged
 * @param source where it was read
 * @param specificationName name of the specification that judged
 * @param specificationVersion its version
 * @param signature what the curve says
 * @param verdict the word
 * @param findings what was found, gravest first
 */
public record Judgement(
        TraceIdentity identity,
        Source source,
        String specificationName,
        String specificationVersion,
        Signature signature,
        Verdict verdict,
        List<Finding> findings) {
    public Judgement {
        Objects.requireNonNull(identity, "identity");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(specificationName, "specificationName");
        Objects.requireNonNull(specificationVersion, "specificationVersion");
        Objects.requireNonNull(signature, "signature");
        Objects.requireNonNull(verdict, "verdict");
        findings = List.copyOf(findings);
    }
}
