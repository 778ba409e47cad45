package org.tautlog.intake.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.tautlog.intake.layout.ColumnName;
import org.tautlog.intake.layout.IdentityField;
import org.tautlog.intake.layout.JsonForm;

/** Which fields of an object say what a trace is of, by their names; those that lie less deep first. */
final class JsonIdentity {
    /** Names that say what they are only behind the name of the object that they lie in. */
    private static final Set<String> BARE = Set.of("id", "no", "nr", "number", "nummer", "name", "value", "wert");

    /** What a tool or a station has one of as well. */
    private static final Set<IdentityField> OF_EACH_THING =
            Set.of(IdentityField.SERIAL, IdentityField.TIME, IdentityField.ATTEMPT);

    private final Map<IdentityField, Place> found = new EnumMap<>(IdentityField.class);

    private JsonIdentity() {}

    /**
     * Where a field lies.
     *
     * @param path its path
     * @param value its text
     */
    record Place(String path, String value) {
        private int depth() {
            return JsonForm.segments(path).size();
        }
    }

    /** The fields of one trace. */
    static Map<IdentityField, Place> of(JsonNode trace) {
        var search = new JsonIdentity();
        search.look(trace, "", "");
        return search.found;
    }

    /** The fields that stand before the traces, in the objects that the way to them leads through. */
    static Map<IdentityField, Place> above(JsonNode root, List<String> way) {
        var search = new JsonIdentity();
        search.lookAbove(root, "", "", way);
        return search.found;
    }

    private void lookAbove(JsonNode object, String path, String name, List<String> way) {
        for (var field : object.properties()) {
            if (way.isEmpty()) {
                return;
            }
            if (field.getKey().equals(way.get(0))) {
                lookAbove(
                        field.getValue(),
                        path + JsonWords.segment(field.getKey()),
                        field.getKey(),
                        way.subList(1, way.size()));
                return;
            }
            take(field, path, name);
        }
    }

    private void look(JsonNode object, String path, String name) {
        object.properties().forEach(field -> take(field, path, name));
    }

    private void take(Map.Entry<String, JsonNode> field, String path, String parent) {
        var at = path + JsonWords.segment(field.getKey());
        var value = field.getValue();
        if (value.isObject()) {
            look(value, at, field.getKey());
        } else if (value.isValueNode() && !value.asText().isBlank() && !value.isNull()) {
            named(field.getKey(), parent, new Place(at, value.asText()));
        }
    }

    private void named(String key, String parent, Place place) {
        var owner = IdentityField.named(parent);
        var named = BARE.contains(ColumnName.plain(key))
                ? IdentityField.named(parent + key).or(() -> owner)
                : IdentityField.named(parent + key)
                        .or(() -> IdentityField.named(key)
                                .filter(field ->
                                        owner.isEmpty() || owner.get() == field || !OF_EACH_THING.contains(field)));
        named.ifPresent(field -> found.merge(field, place, (old, other) -> other.depth() < old.depth() ? other : old));
    }
}
