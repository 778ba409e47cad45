package org.tautlog.archive;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** The specifications that judged, as their files were when they judged: each text is held against its hash. */
final class KeptSpecifications {
    private static final String ENDING = ".toml";

    private KeptSpecifications() {}

    static Outcome<List<SpecificationUsed>> of(Snapshot snapshot) throws IOException {
        var problems = new ArrayList<>(snapshot.problems());
        var texts = texts(snapshot, problems);
        var used = new LinkedHashMap<String, SpecificationUsed>();
        for (var batch : snapshot.batches()) {
            for (var judged : batch.manifest().judged()) {
                var text = texts.getOrDefault(judged.specificationSha256(), "");
                used.put(
                        judged.specificationSha256() + ' ' + judged.specification() + ' ' + judged.version(),
                        new SpecificationUsed(judged.specification(), judged.version(), text));
            }
        }
        return Outcome.of(List.copyOf(used.values()), problems);
    }

    private static Map<String, String> texts(Snapshot snapshot, List<Problem> problems) throws IOException {
        var texts = new LinkedHashMap<String, String>();
        for (var batch : snapshot.batches()) {
            for (var file : batch.manifest().files()) {
                if (file.name().endsWith(ENDING) && !texts.containsKey(file.sha256())) {
                    read(batch.folder().resolve(file.name()), file.sha256(), texts, problems);
                }
            }
        }
        return texts;
    }

    private static void read(Path path, String sha256, Map<String, String> texts, List<Problem> problems)
            throws IOException {
        var bytes = Files.readAllBytes(path);
        if (Disk.sha256(bytes).equals(sha256)) {
            texts.put(sha256, new String(bytes, StandardCharsets.UTF_8));
        } else {
            problems.add(new Problem(
                    ProblemCode.ALTERED,
                    Where.file(path.getFileName().toString()),
                    "the specification's bytes were altered; it is left out",
                    "",
                    "copy it again from where it is whole"));
        }
    }
}
