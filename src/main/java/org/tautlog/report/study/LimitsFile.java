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
import java.util.stream.StreamSupport;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;
import org.tautlog.spc.Covariance;
import org.tautlog.spc.multivariate.HotellingLimits;
import org.tautlog.spc.study.FrozenLimits;
import org.tautlog.spc.study.StudyKind;

/** Control limits from phase 1, kept in a small JSON file that names their columns, so that later values are held against the same. */
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
     * @param kept the limits and what they are limits of
     * @return the file's text
     */
    public static String text(KeptLimits kept) {
        var columns = kept.columns();
        var root = MAPPER.createObjectNode().put("kind", kept.kind().word());
        columns.values().forEach(root.putArray("columns")::add);
        if (!columns.amount().isEmpty()) {
            root.put("amount", columns.amount());
        }
        columns.by().forEach(root.putArray("by")::add);
        if (!columns.subgroupColumn().isEmpty()) {
            root.put("subgroupColumn", columns.subgroupColumn());
        }
        if (columns.subgroupSize() > 0) {
            root.put("subgroupSize", columns.subgroupSize());
        }
        root.put("unit", columns.unit());
        root.putObject("source").put("file", kept.source()).put("sha256", kept.sha256());
        var groups = root.putArray("groups");
        kept.groups().forEach((name, frozen) -> {
            var node = groups.addObject().put("group", name);
            frozen.streams().forEach(node.putArray("streams")::add);
            node.set("limits", tree(frozen.limits()));
        });
        return root.toPrettyString() + "\n";
    }

    /**
     * Reads limits.
     *
     * @param file the file
     * @return the limits and what they are limits of, or why they cannot be used
     * @throws IOException where the file cannot be read on
     */
    public static Outcome<KeptLimits> read(Path file) throws IOException {
        var where = Where.file(file.toString());
        if (!Files.isRegularFile(file)) {
            return failed(where, ProblemCode.NOT_READABLE, "there is no such file");
        }
        if (Files.size(file) > LARGEST_BYTES) {
            return failed(where, ProblemCode.TOO_LARGE, "the file is too large to hold limits");
        }
        try {
            var root = MAPPER.readTree(Files.readAllBytes(file));
            if (root.path("groups").isEmpty()) {
                return failed(where.at("groups"), ProblemCode.MISSING_KEY, "the file holds no limits");
            }
            return root.has("columns")
                    ? Outcome.of(kept(root), List.of())
                    : failed(
                            where.at("columns"),
                            ProblemCode.MISSING_KEY,
                            "the file does not name the columns that its limits belong to, so nothing can be held"
                                    + " against them");
        } catch (JsonProcessingException e) {
            return failed(where, ProblemCode.BAD_SYNTAX, "no limits: " + place(e) + " cannot be read");
        } catch (IllegalArgumentException e) {
            return failed(where, ProblemCode.BAD_VALUE, String.valueOf(e.getMessage()));
        }
    }

    private static String place(JsonProcessingException e) {
        var place = e.getLocation();
        return place == null ? "something in it" : "line " + place.getLineNr() + ", column " + place.getColumnNr();
    }

    private static <T> Outcome<T> failed(Where where, ProblemCode code, String what) {
        return Outcome.failed(List.of(
                new Problem(code, where, what, "a file that --freeze wrote", "keep limits anew with --freeze FILE")));
    }

    private static KeptLimits kept(JsonNode root) throws JsonProcessingException {
        var word = text(root, "kind");
        var kind = StudyKind.of(word)
                .orElseThrow(() -> new IllegalArgumentException("kind is '" + word + "'; no chart is called so"));
        var columns = new ChartedColumns(
                texts(root, "columns"),
                root.path("amount").asText(),
                texts(root, "by"),
                root.path("subgroupColumn").asText(),
                root.path("subgroupSize").asInt(),
                text(root, "unit"));
        var groups = new LinkedHashMap<String, FrozenLimits>();
        for (var node : root.path("groups")) {
            var frozen = frozen(node, kind);
            if (frozen.limits() instanceof HotellingLimits several
                    && several.covariance().features() != columns.values().size()) {
                throw new IllegalArgumentException("the limits are of "
                        + several.covariance().features() + " columns, and columns names "
                        + columns.values().size());
            }
            if (groups.put(text(node, "group"), frozen) != null) {
                throw new IllegalArgumentException("group '" + text(node, "group") + "' is there twice");
            }
        }
        var source = root.path("source");
        return new KeptLimits(kind, columns, text(source, "file"), text(source, "sha256"), groups);
    }

    private static String text(JsonNode node, String key) {
        var text = node.path(key);
        if (!text.isTextual()) {
            throw new IllegalArgumentException(key + " is missing or no text");
        }
        return text.textValue();
    }

    private static List<String> texts(JsonNode node, String key) {
        var list = node.path(key);
        if (!list.isArray()) {
            throw new IllegalArgumentException(key + " is missing or no list");
        }
        return StreamSupport.stream(list.spliterator(), false)
                .map(JsonNode::asText)
                .toList();
    }

    private static FrozenLimits frozen(JsonNode node, StudyKind kind) throws JsonProcessingException {
        var limits = node.path("limits");
        var record = kind == StudyKind.T_SQUARED ? hotelling(limits) : MAPPER.treeToValue(limits, kind.limitsType());
        if (record == null) {
            throw new IllegalArgumentException("limits are missing for kind " + kind.word());
        }
        return new FrozenLimits(kind, record, texts(node, "streams"));
    }

    private static JsonNode tree(Record limits) {
        return limits instanceof HotellingLimits several ? tree(several) : MAPPER.valueToTree(limits);
    }

    private static ObjectNode tree(HotellingLimits limits) {
        var node = MAPPER.createObjectNode();
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
