package org.tautlog.intake.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.tautlog.intake.layout.JsonForm;

/** Follows the paths of {@link JsonForm}: JSON Pointers in which {@code *} stands for every element of an array. */
public final class JsonPointers {
    private JsonPointers() {}

    /**
     * The texts at a path: those of an array one by one, an empty one for null in it.
     *
     * @param from where the path starts
     * @param path the path
     * @return the texts in their order; none where nothing lies there
     */
    public static List<String> values(JsonNode from, String path) {
        var values = new ArrayList<String>();
        for (var node : nodes(from, path)) {
            if (node.isArray()) {
                node.forEach(element -> values.add(element.isNull() ? "" : element.asText()));
            } else if (node.isValueNode() && !node.isNull()) {
                values.add(node.asText().strip());
            }
        }
        return values;
    }

    /**
     * What lies at a path.
     *
     * @param from where the path starts
     * @param path the path
     * @return the nodes in their order
     */
    public static List<JsonNode> nodes(JsonNode from, String path) {
        List<JsonNode> nodes = List.of(from);
        for (var segment : JsonForm.segments(path)) {
            var next = new ArrayList<JsonNode>();
            for (var node : nodes) {
                if (segment.equals("*")) {
                    node.forEach(next::add);
                } else {
                    var child = node.isArray() ? node.get(index(segment)) : node.get(segment);
                    if (child != null) {
                        next.add(child);
                    }
                }
            }
            nodes = next;
        }
        return nodes;
    }

    private static int index(String segment) {
        return segment.matches("0|[1-9][0-9]{0,8}") ? Integer.parseInt(segment) : -1;
    }
}
