package org.tautlog.cli.logs;

import java.nio.file.Path;
import java.util.List;
import org.tautlog.intake.ReadOptions;
import org.tautlog.joint.window.JointSpecification;

/**
 * Which logs to judge, by what, and how to read them.
 *
 * @param logs files and folders
 * @param specificationFile where the specification was read
 * @param specification the joint specification
 * @param options how the logs are read
 */
public record JudgingRequest(
        List<Path> logs, Path specificationFile, JointSpecification specification, ReadOptions options) {
    public JudgingRequest {
        logs = List.copyOf(logs);
    }
}
