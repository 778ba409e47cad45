package org.tautlog.intake.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A row of values within a trace.
 *
 * @param path where it lies
 * @param name what the field, or a label beside it, calls it; empty where nothing does
 * @param unit the unit that stands beside it or ends its name; empty where none does
 * @param list path to the list of objects that it runs through, each with values of its own; empty where there is none
 */
record JsonSeries(String path, String name, String unit, String list) {
    /** So many rows at least, or as many as there are columns, are rows; fewer and longer ones are columns. */
    private static final int FEWEST_ROWS = 8;

    /** All series of a trace, in the order of the text. */
    static List<JsonSeries> of(JsonNode trace) {
        return of(trace, trace);
    }

    /** The same; units may stand in an object that the traces lie in too. */
    static List<JsonSeries> of(JsonNode trace, JsonNode root) {
        var search = new Search(List.of(trace, root));
        search.look(trace, new Place("", "", "", ""));
        return search.found;
    }

    private record Place(String path, String name, String unit, String list) {
        Place at(String segment, String called, String inUnit) {
            return new Place(path + JsonWords.segment(segment), called, inUnit, list);
        }
    }

    /** Whether each element is an object with a value of each quantity, and no more. */
    static boolean arePoints(JsonNode array) {
        return array.isArray()
                && array.size() > 1
                && IntStream.range(0, array.size()).allMatch(i -> array.get(i).isObject())
                && array.get(0).properties().stream()
                                .filter(field -> isNumber(field.getValue()))
                                .count()
                        > 1
                && array.get(0).properties().stream()
                        .noneMatch(field -> field.getValue().isContainerNode());
    }

    private static boolean isNumber(JsonNode value) {
        return value.isNumber() || (value.isTextual() && value.asText().matches("[-+]?[0-9]+([.][0-9]+)?"));
    }

    private static boolean isRow(JsonNode array) {
        return array.isArray()
                && array.size() > 1
                && IntStream.range(0, array.size())
                        .allMatch(
                                i -> array.get(i).isValueNode() && !array.get(i).isBoolean());
    }

    private static final class Search {
        private final List<JsonSeries> found = new ArrayList<>();
        private final List<JsonNode> around;

        Search(List<JsonNode> around) {
            this.around = around;
        }

        /** The unit in a field's name, else the one that the trace or the file states for all fields of that name. */
        private String unit(String name) {
            return Stream.concat(
                            Stream.of(JsonWords.unit(name)),
                            around.stream().map(object -> JsonWords.statedUnit(object, name)))
                    .filter(unit -> !unit.isEmpty())
                    .findFirst()
                    .orElse("");
        }

        void look(JsonNode node, Place at) {
            if (node.isObject()) {
                lookIntoObject(node, at);
            } else if (isRow(node)) {
                add(at);
            } else if (arePoints(node)) {
                node.get(0).properties().forEach(field -> {
                    if (field.getValue().isValueNode()) {
                        add(at.at("*", "", "").at(field.getKey(), field.getKey(), unit(field.getKey())));
                    }
                });
            } else if (node.isArray() && !node.isEmpty()) {
                lookIntoArray(node, at);
            }
        }

        private void add(Place at) {
            found.add(new JsonSeries(at.path(), at.name(), at.unit(), at.list()));
        }

        private void lookIntoObject(JsonNode object, Place at) {
            var label = JsonWords.label(object);
            object.properties().forEach(field -> {
                var key = field.getKey();
                boolean values = JsonWords.isValues(key);
                var name = values ? (label.isEmpty() ? at.name() : label) : key;
                var beside = values ? JsonWords.statedUnit(object) : JsonWords.statedUnit(object, key);
                var unit = !beside.isEmpty() ? beside : values ? at.unit() : unit(key);
                if (isTable(field.getValue())) {
                    lookIntoTable(object, field.getValue(), at.at(key, name, unit));
                } else {
                    look(field.getValue(), at.at(key, name, unit));
                }
            });
        }

        private static boolean isTable(JsonNode node) {
            return node.isArray()
                    && node.size() > 1
                    && IntStream.range(0, node.size())
                            .allMatch(i -> isRow(node.get(i))
                                    && node.get(i).size() == node.get(0).size());
        }

        /** An array of rows, or of a few columns; another array beside it may name them. */
        private void lookIntoTable(JsonNode object, JsonNode table, Place at) {
            int width = table.get(0).size();
            boolean rows = table.size() >= Math.min(FEWEST_ROWS, width);
            int columns = rows ? width : table.size();
            for (int i = 0; i < columns; i++) {
                var name = beside(object, columns, i, false);
                var unit = beside(object, columns, i, true);
                add((rows ? at.at("*", "", "") : at).at(String.valueOf(i), name, unit.isEmpty() ? unit(name) : unit));
            }
        }

        /** What an array of words beside a table says of one of its columns. */
        private static String beside(JsonNode object, int columns, int column, boolean units) {
            return object.properties().stream()
                    .filter(field -> field.getValue().isArray()
                            && field.getValue().size() == columns
                            && JsonWords.isUnit(field.getKey()) == units)
                    .map(field -> field.getValue().get(column))
                    .filter(JsonNode::isTextual)
                    .map(JsonNode::asText)
                    .findFirst()
                    .orElse("");
        }

        private void lookIntoArray(JsonNode array, Place at) {
            boolean labelled = IntStream.range(0, array.size())
                    .allMatch(i -> !JsonWords.label(array.get(i)).isEmpty());
            if (labelled) {
                for (int i = 0; i < array.size(); i++) {
                    look(array.get(i), at.at(String.valueOf(i), at.name(), at.unit()));
                }
            } else if (array.get(0).isObject()) {
                var inside = at.at("*", "", "");
                look(array.get(0), new Place(inside.path(), "", "", at.list().isEmpty() ? at.path() : at.list()));
            }
        }
    }
}
