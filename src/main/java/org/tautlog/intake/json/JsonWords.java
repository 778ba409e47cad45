package org.tautlog.intake.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.tautlog.intake.layout.ColumnName;
import org.tautlog.intake.layout.SampleQuantity;

/** What the names of fields say: as headings of columns do, but often of several values or with the unit put behind. */
final class JsonWords {
    /** {@code torqueNm}: the unit is the last part, which begins with a capital. */
    private static final Pattern LAST_PART = Pattern.compile("(?<=[\\p{Ll}0-9])(?=\\p{Lu}[\\p{L}·]*$)");

    private static final List<String> PLURALS = List.of("s", "e", "n");
    private static final List<String> UNITS = List.of("unit", "units", "einheit", "einheiten");
    private static final List<String> LABELS =
            List.of("quantity", "name", "label", "channel", "signal", "type", "kanal", "größe", "groesse");
    private static final List<String> VALUES = List.of("values", "value", "data", "samples", "werte", "daten", "y");

    private JsonWords() {}

    /** The quantity that a name stands for. */
    static Optional<SampleQuantity> quantity(String name) {
        for (var heading : List.of(name, parted(name))) {
            var named = SampleQuantity.named(heading);
            if (named.isPresent()) {
                return named;
            }
        }
        return PLURALS.stream()
                .filter(name::endsWith)
                .flatMap(plural -> SampleQuantity.named(name.substring(0, name.length() - plural.length())).stream())
                .findFirst();
    }

    /** The unit that a name ends in; empty where it ends in none. */
    static String unit(String name) {
        var unit = ColumnName.of(name).unit();
        return unit.isEmpty() ? ColumnName.of(parted(name)).unit() : unit;
    }

    private static String parted(String name) {
        return LAST_PART.matcher(name).replaceFirst("_");
    }

    static boolean isValues(String name) {
        return VALUES.contains(ColumnName.plain(name));
    }

    static boolean isUnit(String name) {
        return UNITS.contains(ColumnName.plain(name));
    }

    /** The name of a quantity that an object states of itself, {@code {"name": "Torque", ...}}; empty where it does not. */
    static String label(JsonNode object) {
        for (var field : object.properties()) {
            if (LABELS.contains(ColumnName.plain(field.getKey()))
                    && field.getValue().isTextual()
                    && quantity(field.getValue().asText()).isPresent()) {
                return field.getValue().asText();
            }
        }
        return "";
    }

    /** The unit that an object states beside its values; empty where it states none. */
    static String statedUnit(JsonNode object) {
        return object.properties().stream()
                .filter(field -> isUnit(field.getKey()) && field.getValue().isTextual())
                .map(field -> field.getValue().asText().strip())
                .findFirst()
                .orElse("");
    }

    /** The unit that an object states of one of its fields: {@code "torqueUnit"} or {@code "units": {"torque": ...}}. */
    static String statedUnit(JsonNode object, String name) {
        var plain = ColumnName.plain(name);
        for (var field : object.properties()) {
            var key = ColumnName.plain(field.getKey());
            var value = field.getValue();
            if (value.isTextual() && (key.equals(plain + "unit") || key.equals(plain + "einheit"))) {
                return value.asText().strip();
            }
            if (value.isObject() && isUnit(field.getKey()) && value.path(name).isTextual()) {
                return value.get(name).asText().strip();
            }
        }
        return "";
    }

    /** A segment of a JSON Pointer. Source: RFC 6901, section 3. */
    static String segment(String name) {
        return '/' + name.replace("~", "~0").replace("/", "~1");
    }
}
