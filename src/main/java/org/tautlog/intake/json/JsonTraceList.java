package org.tautlog.intake.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.tautlog.intake.layout.IdentityField;
import org.tautlog.intake.layout.SampleQuantity;

/**
 * Where the traces lie in a file.
 *
 * @param path from the root; empty where the root is a trace or the list of them
 * @param first the first trace
 * @param size how many traces were seen in the list; 1 where there is no list
 */
record JsonTraceList(String path, JsonNode first, int size) {
    /** The outermost list of objects that each hold a curve and are no stages; the root itself where there is none. */
    static JsonTraceList of(JsonNode root) {
        return root.isArray()
                ? new JsonTraceList("", root.path(0), root.size())
                : below(root, "").orElseGet(() -> new JsonTraceList("", root, 1));
    }

    private static Optional<JsonTraceList> below(JsonNode object, String path) {
        for (var field : object.properties()) {
            var at = path + JsonWords.segment(field.getKey());
            var value = field.getValue();
            if (holdsCurves(value) && !areStages(value, field.getKey())) {
                return Optional.of(new JsonTraceList(at, value.get(0), value.size()));
            }
            var below = value.isObject() ? below(value, at) : Optional.<JsonTraceList>empty();
            if (below.isPresent()) {
                return below;
            }
        }
        return Optional.empty();
    }

    private static boolean holdsCurves(JsonNode list) {
        return list.isArray()
                && list.path(0).isObject()
                && JsonWords.label(list.get(0)).isEmpty()
                && JsonSeries.of(list.get(0)).size() > 1;
    }

    /** Whether a list within the first trace holds tightenings of their own and not its stages. */
    boolean holdsTightenings(String list) {
        var elements = JsonPointers.nodes(first, list).get(0);
        return !isStage(list.substring(list.lastIndexOf('/') + 1))
                && JsonIdentity.of(elements.get(0)).keySet().stream()
                        .anyMatch(field -> field != IdentityField.TIME && field != IdentityField.BOLT_LOT);
    }

    /** Stages say so by the name of their list, or each has a stage's number or name and nothing that tells tightenings apart. */
    private static boolean areStages(JsonNode list, String name) {
        return isStage(name)
                || (list.get(0).properties().stream().anyMatch(field -> isStage(field.getKey()))
                        && list.get(0).properties().stream()
                                .noneMatch(field ->
                                        IdentityField.named(field.getKey()).isPresent()));
    }

    private static boolean isStage(String name) {
        return JsonWords.quantity(name).filter(SampleQuantity.STAGE::equals).isPresent()
                || JsonWords.quantity(name.replaceFirst("(?i)_?traces?$", ""))
                        .filter(SampleQuantity.STAGE::equals)
                        .isPresent();
    }
}
