package org.tautlog.cli;

import java.nio.file.Path;
import java.util.List;
import org.tautlog.intake.ReadOptions;
import org.tautlog.joint.window.JointSpecification;

/** Which logs to judge, by what, and how to read them. */
record JudgingRequest(List<Path> logs, Path specificationFile, JointSpecification specification, ReadOptions options) {
    JudgingRequest {
        logs = List.copyOf(logs);
    }
}
