package org.tautlog.intake.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tautlog.intake.layout.SampleQuantity;

/**
 * The values of a trace, in as many parts as it has stages, where its stages are a list of objects with samples of their
 * own. Elsewhere there is one part.
 */
public final class JsonParts {
    private static final String EACH = "/*";

    private JsonParts() {}

    /**
     * Finds the values. Where the path of the stage leads to one value for each object of a list through which the path of
     * the angle leads too, that value stands for all samples of the object; where it leads to the objects themselves, their
     * place in the list from 1 does.
     *
     * @param trace the trace
     * @param points path to an array of samples from which the other paths start; empty where they start from the trace
     * @param paths path of each quantity
     * @return the values of each part
     */
    public static List<Map<SampleQuantity, List<String>>> of(
            JsonNode trace, String points, Map<SampleQuantity, String> paths) {
        var list = points.isEmpty() ? stages(trace, paths) : Optional.<String>empty();
        if (list.isEmpty()) {
            var from = points.isEmpty() ? List.of(trace) : JsonPointers.nodes(trace, points + EACH);
            return List.of(values(from, paths));
        }
        int behind = list.get().length();
        var below = new EnumMap<SampleQuantity, String>(SampleQuantity.class);
        paths.forEach((quantity, path) -> below.put(quantity, path.substring(behind)));
        var parts = new ArrayList<Map<SampleQuantity, List<String>>>();
        for (var stage : JsonPointers.nodes(trace, list.get())) {
            var part = values(List.of(stage), below);
            var name = below.getOrDefault(SampleQuantity.STAGE, "").isEmpty()
                    ? List.of(String.valueOf(parts.size() + 1))
                    : part.getOrDefault(SampleQuantity.STAGE, List.of());
            int samples = part.getOrDefault(SampleQuantity.ANGLE, List.of()).size();
            part.put(SampleQuantity.STAGE, Collections.nCopies(samples, name.isEmpty() ? "" : name.get(0)));
            parts.add(part);
        }
        return parts;
    }

    private static Map<SampleQuantity, List<String>> values(List<JsonNode> from, Map<SampleQuantity, String> paths) {
        var values = new EnumMap<SampleQuantity, List<String>>(SampleQuantity.class);
        paths.forEach((quantity, path) -> {
            var found = new ArrayList<String>();
            from.forEach(node -> found.addAll(JsonPointers.values(node, path)));
            values.put(quantity, found);
        });
        return values;
    }

    /** The path to the stages, with {@code *} at its end; empty where each sample has a stage of its own or none has. */
    private static Optional<String> stages(JsonNode trace, Map<SampleQuantity, String> paths) {
        var stage = paths.getOrDefault(SampleQuantity.STAGE, "");
        var angle = paths.getOrDefault(SampleQuantity.ANGLE, "");
        int at = (stage + '/').lastIndexOf(EACH + '/');
        if (at < 0) {
            return Optional.empty();
        }
        var list = stage.substring(0, at) + EACH;
        boolean shared = paths.values().stream().allMatch(path -> (path + '/').startsWith(list + '/'));
        boolean ownStages = !stage.equals(list)
                && JsonPointers.values(trace, stage).size()
                        == JsonPointers.values(trace, angle).size();
        return shared && !ownStages ? Optional.of(list) : Optional.empty();
    }
}
