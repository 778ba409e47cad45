package org.tautlog.archive.table;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tautlog.signature.Feature;

/** One row as read: its cells by the names of their columns. Cells that hold nothing are not there. */
public final class Row {
    private static final String BEFORE_ITS_TIME = "kept before this feature was known";

    private final Map<String, Object> cells;

    Row(Map<String, Object> cells) {
        this.cells = cells;
    }

    @Nullable Object cell(String name) {
        return cells.get(name);
    }

    /**
     * A text.
     *
     * @param name the column
     * @return its text, empty where it holds nothing
     */
    public String text(String name) {
        return cells.get(name) instanceof String text ? text : "";
    }

    int whole(String name) {
        return (Integer) needed(name);
    }

    double @Nullable [] samples(String name) {
        return (double[]) cells.get(name);
    }

    int @Nullable [] stages(String name) {
        return (int[]) cells.get(name);
    }

    List<?> list(String name) {
        return (List<?>) needed(name);
    }

    Feature feature(String name) {
        var deviation = cells.get(name + "_sd") instanceof Double number ? number : 0.0;
        if (cells.get(name) instanceof Double number) {
            return Feature.of(number, deviation);
        }
        var why = text(name + "_missing");
        return new Feature(0, deviation, why.isEmpty() ? BEFORE_ITS_TIME : why);
    }

    boolean flag(String name) {
        return (Boolean) needed(name);
    }

    static <E> E word(@Nullable Object wanted, E[] values, Function<E, String> word) {
        return Stream.of(values)
                .filter(value -> word.apply(value).equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + wanted + "' is none of "
                        + Stream.of(values).map(word).toList()));
    }

    private Object needed(String name) {
        var cell = cells.get(name);
        if (cell == null) {
            throw new IllegalArgumentException("column " + name + " holds nothing");
        }
        return cell;
    }
}
