package org.tautlog.report.study;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;
import org.tautlog.spc.Covariance;
import org.tautlog.spc.multivariate.HotellingLimits;
import org.tautlog.spc.study.FrozenLimits;
import org.tautlog.spc.study.StudyKind;

/** Control limits from phase 1, kept in a small JSON file by group, so that later values are held against the same. */
public final class LimitsFile {
    private static final long LARGEST_BYTES = 10_000_000;
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
            .build();

    private LimitsFile() {}

    /**
     * Writes limits.
     *
     * @param limits the limits of each group by its name
     * @return the file's text
     */
    public static String text(Map<String, FrozenLimits> limits) {
        var root = Nodes.object();
        var groups = root.putArray("groups");
        limits.forEach((name, frozen) -> {
            var node = groups.addObject()
                    .put("group", name)
                    .put("kind", frozen.kind().word());
            var streams = node.putArray("streams");
            frozen.streams().forEach(streams::add);
            node.set("limits", tree(frozen.limits()));
        });
        return root.toPrettyString() + "\n";
    }

    /**
     * Reads limits.
     *
     * @param file the file
     * @return the limits of each group by its name, or why they cannot be used
     * @throws IOException where the file cannot be read on
     */
    public static Outcome<Map<String, FrozenLimits>> read(Path file) throws IOException {
        var where = Where.file(file.toString());
        if (!Files.isRegularFile(file)) {
            return failed(where, ProblemCode.NOT_READABLE, "there is no such file");
        }
        if (Files.size(file) > LARGEST_BYTES) {
            return failed(where, ProblemCode.TOO_LARGE, "the file is too large to hold limits");
        }
        try {
            var limits = new LinkedHashMap<String, FrozenLimits>();
            for (var node : MAPPER.readTree(Files.readAllBytes(file)).path("groups")) {
                limits.put(node.path("group").asText(), frozen(node));
            }
            return limits.isEmpty()
                    ? failed(where, ProblemCode.MISSING_KEY, "the file holds no groups")
                    : Outcome.of(limits, List.of());
        } catch (JsonProcessingException e) {
            return failed(where, ProblemCode.BAD_SYNTAX, "no limits: " + e.getOriginalMessage());
        } catch (IllegalArgumentException e) {
            return failed(where, ProblemCode.BAD_VALUE, String.valueOf(e.getMessage()));
        }
    }

    private static <T> Outcome<T> failed(Where where, ProblemCode code, String what) {
        return Outcome.failed(List.of(new Problem(code, where, what, "", "write it with --freeze FILE")));
    }

    private static FrozenLimits frozen(JsonNode node) throws JsonProcessingException {
        var word = node.path("kind").asText();
        var kind = StudyKind.of(word)
                .orElseThrow(() -> new IllegalArgumentException("kind is '" + word + "'; no chart is called so"));
        var streams = StreamSupport.stream(node.path("streams").spliterator(), false)
                .map(JsonNode::asText)
                .toList();
        var limits = node.path("limits");
        var record = kind == StudyKind.T_SQUARED ? hotelling(limits) : MAPPER.treeToValue(limits, kind.limitsType());
        if (record == null) {
            throw new IllegalArgumentException("limits are missing for kind " + word);
        }
        return new FrozenLimits(kind, record, streams);
    }

    private static JsonNode tree(Record limits) {
        return limits instanceof HotellingLimits several ? tree(several) : MAPPER.valueToTree(limits);
    }

    private static ObjectNode tree(HotellingLimits limits) {
        var node = Nodes.object();
        var covariance = limits.covariance();
        var mean = node.putArray("mean");
        var rows = node.putArray("covariance");
        for (int i = 0; i < covariance.features(); i++) {
            mean.add(covariance.mean(i));
            var row = rows.addArray();
            for (int j = 0; j < covariance.features(); j++) {
                row.add(covariance.at(i, j));
            }
        }
        return node.put("subgroupSize", limits.subgroupSize())
                .put("points", limits.points())
                .put("falseAlarm", limits.falseAlarm())
                .put("phaseOneLimit", limits.phaseOneLimit())
                .put("phaseTwoLimit", limits.phaseTwoLimit());
    }

    private static Record hotelling(JsonNode node) throws JsonProcessingException {
        var mean = MAPPER.treeToValue(node.path("mean"), double[].class);
        var rows = MAPPER.treeToValue(node.path("covariance"), double[][].class);
        if (mean == null || rows == null) {
            throw new IllegalArgumentException("mean or covariance is missing");
        }
        var covariance = Covariance.of(mean, rows);
        return new HotellingLimits(
                covariance
                        .found()
                        .orElseThrow(() -> new IllegalArgumentException(
                                covariance.whyMissing().orElse("no covariance"))),
                node.path("subgroupSize").asInt(),
                node.path("points").asInt(),
                node.path("falseAlarm").asDouble(),
                node.path("phaseOneLimit").asDouble(),
                node.path("phaseTwoLimit").asDouble());
    }
}
