package org.tautlog.cli.evidence;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tautlog.archive.ArchiveQuery;
import org.tautlog.archive.SpecificationUsed;
import org.tautlog.cli.terminal.Terminal;
import org.tautlog.intake.specification.SpecificationFile;
import org.tautlog.joint.window.JointSpecification;
import org.tautlog.problem.Problem;

/**
 * The specifications of an archive.
 *
 * @param used all of them, in the order of their first use
 * @param readable those that can be read, by the hash of their text
 * @param problems what of the archive is missing or was altered
 */
public record ArchivedSpecifications(
        List<SpecificationUsed> used, Map<String, JointSpecification> readable, List<Problem> problems) {
    /**
     * Reads them; what cannot be read is told on the error output.
     *
     * @param query the archive
     * @param err the error output
     * @return the specifications
     * @throws IOException if the archive cannot be read
     */
    public static ArchivedSpecifications in(ArchiveQuery query, PrintWriter err) throws IOException {
        var specifications = in(query);
        specifications.problems().forEach(problem -> err.println(Terminal.harmless(problem.sentence())));
        return specifications;
    }

    /** For an answer that tells the problems itself. */
    static ArchivedSpecifications in(ArchiveQuery query) throws IOException {
        var found = query.specifications();
        var used = found.value().orElse(List.of());
        var readable = new LinkedHashMap<String, JointSpecification>();
        for (var one : used) {
            SpecificationFile.read(one.text(), one.name() + " version " + one.version())
                    .value()
                    .ifPresent(specification -> readable.put(one.sha256(), specification));
        }
        return new ArchivedSpecifications(used, readable, found.problems());
    }
}
