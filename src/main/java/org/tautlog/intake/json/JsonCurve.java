package org.tautlog.intake.json;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.layout.ColumnGuess;
import org.tautlog.intake.layout.IdentityField;
import org.tautlog.intake.layout.LayoutLines;
import org.tautlog.intake.layout.SampleQuantity;
import org.tautlog.intake.text.NumberForm;

/**
 * Which series of a trace are its angle, torque, time and stage.
 *
 * @param angle the angle
 * @param torque the torque
 * @param time the time; null where no series is named as it
 * @param stage the stage of each sample; null where no series is named as it
 * @param guesses reasons for what no name tells, by key of the layout file
 * @param others further series with the name of a quantity
 */
record JsonCurve(
        JsonSeries angle,
        JsonSeries torque,
        @Nullable JsonSeries time,
        @Nullable JsonSeries stage,
        Map<String, String> guesses,
        List<JsonSeries> others) {
    private static final NumberForm NUMBERS = new NumberForm('.', false);

    JsonCurve {
        guesses = Map.copyOf(guesses);
        others = List.copyOf(others);
    }

    static Optional<JsonCurve> of(JsonNode trace, List<JsonSeries> series) {
        for (var angle : named(series, SampleQuantity.ANGLE)) {
            for (var torque : named(series, SampleQuantity.TORQUE)) {
                if (size(trace, torque) == size(trace, angle)) {
                    return Optional.of(with(trace, series, angle, torque, Map.of()));
                }
            }
        }
        var numbers = new LinkedHashMap<String, double[]>();
        for (var one : series) {
            numbers(trace, one).ifPresent(values -> numbers.put(one.path(), values));
        }
        int longest = numbers.values().stream()
                .mapToInt(values -> values.length)
                .max()
                .orElse(0);
        numbers.values().removeIf(values -> values.length < longest);
        return ColumnGuess.among(numbers)
                .map(guess -> with(
                        trace,
                        series,
                        at(series, guess, SampleQuantity.ANGLE),
                        at(series, guess, SampleQuantity.TORQUE),
                        guess.reasons()));
    }

    private static JsonCurve with(
            JsonNode trace, List<JsonSeries> series, JsonSeries angle, JsonSeries torque, Map<String, String> guesses) {
        int size = size(trace, angle);
        var others = series.stream()
                .filter(one -> !one.equals(angle) && !one.equals(torque))
                .filter(one -> JsonWords.quantity(one.name())
                        .filter(quantity -> quantity == SampleQuantity.ANGLE || quantity == SampleQuantity.TORQUE)
                        .isPresent())
                .toList();
        return new JsonCurve(
                angle,
                torque,
                sized(trace, series, SampleQuantity.TIME, size),
                sized(trace, series, SampleQuantity.STAGE, size),
                guesses,
                others);
    }

    private static @Nullable JsonSeries sized(
            JsonNode trace, List<JsonSeries> series, SampleQuantity quantity, int size) {
        return named(series, quantity).stream()
                .filter(one -> size(trace, one) == size)
                .findFirst()
                .orElse(null);
    }

    private static List<JsonSeries> named(List<JsonSeries> series, SampleQuantity quantity) {
        return series.stream()
                .filter(one ->
                        JsonWords.quantity(one.name()).filter(quantity::equals).isPresent())
                .toList();
    }

    private static JsonSeries at(List<JsonSeries> series, ColumnGuess guess, SampleQuantity quantity) {
        var path =
                Objects.requireNonNull(guess.layout().samples().get(quantity)).column();
        return series.stream()
                .filter(one -> one.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private static int size(JsonNode trace, JsonSeries series) {
        return JsonPointers.values(trace, series.path()).size();
    }

    private static Optional<double[]> numbers(JsonNode trace, JsonSeries series) {
        var parsed = JsonPointers.values(trace, series.path()).stream()
                .map(NUMBERS::parse)
                .toList();
        return parsed.stream().anyMatch(number -> number.isEmpty())
                ? Optional.empty()
                : Optional.of(parsed.stream()
                        .mapToDouble(number -> number.getAsDouble())
                        .toArray());
    }

    /** A field of the identity that changes from sample to sample: then the samples are of several traces. */
    Optional<IdentityField> tellsApart(JsonNode trace, List<JsonSeries> series) {
        return beside(series).entrySet().stream()
                .filter(entry -> entry.getKey() != IdentityField.TIME)
                .filter(entry -> JsonPointers.values(trace, entry.getValue().path()).stream()
                                .distinct()
                                .count()
                        > 1)
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** The fields of the identity that every sample repeats. */
    Map<IdentityField, JsonIdentity.Place> sameForAll(JsonNode trace, List<JsonSeries> series) {
        var same = new EnumMap<IdentityField, JsonIdentity.Place>(IdentityField.class);
        beside(series).forEach((field, one) -> {
            var values = JsonPointers.values(trace, one.path());
            if (values.stream().distinct().count() == 1) {
                same.put(field, new JsonIdentity.Place(one.path().replaceFirst("[*]", "0"), values.get(0)));
            }
        });
        return same;
    }

    /** Series of the samples' own objects that are named as a field of the identity. */
    private Map<IdentityField, JsonSeries> beside(List<JsonSeries> series) {
        var beside = new EnumMap<IdentityField, JsonSeries>(IdentityField.class);
        var samples = parent(angle);
        series.stream()
                .filter(one -> samples.endsWith("/*") && parent(one).equals(samples))
                .forEach(one -> IdentityField.named(one.name()).ifPresent(field -> beside.putIfAbsent(field, one)));
        return beside;
    }

    private static String parent(JsonSeries series) {
        return series.path().substring(0, series.path().lastIndexOf('/'));
    }

    /** What is wrong with a unit that is no unit of its quantity. */
    Optional<String> unknownUnit() {
        var series = new LinkedHashMap<SampleQuantity, JsonSeries>();
        series.put(SampleQuantity.ANGLE, angle);
        series.put(SampleQuantity.TORQUE, torque);
        if (time != null) {
            series.put(SampleQuantity.TIME, time);
        }
        for (var entry : series.entrySet()) {
            var unit = entry.getValue().unit();
            var quantity = entry.getKey().quantity().orElseThrow();
            if (!unit.isEmpty() && quantity.factor(unit).isEmpty()) {
                return Optional.of("the values at " + entry.getValue().path() + " are in '" + unit
                        + "', which is no unit of " + quantity.words());
            }
        }
        return Optional.empty();
    }

    void write(LayoutLines text, JsonNode trace) {
        write(text, SampleQuantity.ANGLE, angle, trace);
        write(text, SampleQuantity.TORQUE, torque, trace);
        if (time != null) {
            write(text, SampleQuantity.TIME, time, trace);
        }
        if (stage != null) {
            text.line(
                    SampleQuantity.STAGE.key(),
                    stage(stage.path(), JsonPointers.values(trace, stage.path())),
                    "a usual name of it");
        } else if (!angle.list().isEmpty()) {
            writeStages(text, trace);
        }
        for (var other : others) {
            text.comment("also there: " + other.path());
        }
    }

    /** Of a list of stages each has its samples: a field that names it, else its place in the list. */
    private void writeStages(LayoutLines text, JsonNode trace) {
        var stages = JsonPointers.nodes(trace, angle.list() + "/*");
        for (var field : stages.get(0).properties()) {
            boolean named = JsonWords.quantity(field.getKey())
                            .filter(SampleQuantity.STAGE::equals)
                            .isPresent()
                    || (field.getKey().equalsIgnoreCase("name")
                            && field.getValue().isTextual());
            var path = angle.list() + "/*" + JsonWords.segment(field.getKey());
            var values = JsonPointers.values(trace, path);
            if (named && field.getValue().isValueNode() && values.size() == stages.size()) {
                text.line(SampleQuantity.STAGE.key(), stage(path, values), "one for each part of the list");
                return;
            }
        }
        text.line(
                SampleQuantity.STAGE.key(), stage(angle.list() + "/*", List.of()), "the place of the part in its list");
    }

    private static String stage(String path, List<String> values) {
        var marks = LayoutLines.marks(values.stream()
                .filter(value -> !value.isEmpty() && NUMBERS.parse(value).isEmpty())
                .toList());
        return "{ column = " + LayoutLines.quoted(path) + (marks.isEmpty() ? "" : ", marks = { " + marks + " }") + " }";
    }

    private void write(LayoutLines text, SampleQuantity quantity, JsonSeries series, JsonNode trace) {
        var unit = series.unit().isEmpty() ? quantity.usualUnit() : series.unit();
        var guess = guesses.get(quantity.key());
        var values = JsonPointers.values(trace, series.path());
        text.line(
                quantity.key(),
                "{ column = " + LayoutLines.quoted(series.path()) + ", unit = " + LayoutLines.quoted(unit) + " }",
                guess != null
                        ? guess + "; CHECK THIS"
                        : "named '" + series.name() + "'"
                                + (series.unit().isEmpty() ? "; the file states NO UNIT" : "") + ", such as "
                                + values.get(0));
    }
}
