package org.tautlog.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tautlog.archive.ArchiveQuery;
import org.tautlog.archive.SpecificationUsed;
import org.tautlog.intake.specification.SpecificationFile;
import org.tautlog.joint.window.JointSpecification;

/** The specifications of an archive in the order of their first use, those that can be read by the hash of their text. */
record ArchivedSpecifications(List<SpecificationUsed> used, Map<String, JointSpecification> readable) {
    static ArchivedSpecifications in(ArchiveQuery query, PrintWriter err) throws IOException {
        var found = query.specifications();
        var used = found.value().orElse(List.of());
        var readable = new LinkedHashMap<String, JointSpecification>();
        for (var one : used) {
            SpecificationFile.read(one.text(), one.name() + " version " + one.version())
                    .value()
                    .ifPresent(specification -> readable.put(one.sha256(), specification));
        }
        found.problems().forEach(problem -> err.println(Terminal.harmless(problem.sentence())));
        return new ArchivedSpecifications(used, readable);
    }
}
