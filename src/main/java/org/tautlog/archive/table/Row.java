package org.tautlog.archive.table;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tautlog.signature.Feature;

/** One row as read: its cells by the names of their columns. Cells that hold nothing are not there. */
public final class Row {
    private static final String BEFORE_ITS_TIME = "kept before this feature was known";

    private final RowLayout layout;
    private final @Nullable Object[] cells;

    Row(RowLayout layout, @Nullable Object[] cells) {
        this.layout = layout;
        this.cells = cells;
    }

    @Nullable Object cell(String name) {
        return cell(layout.place(name));
    }

    private @Nullable Object cell(int place) {
        return place < 0 ? null : cells[place];
    }

    /**
     * A text.
     *
     * @param name the column
     * @return its text, empty where it holds nothing
     */
    public String text(String name) {
        return cell(name) instanceof String text ? text : "";
    }

    int whole(String name) {
        return (Integer) needed(name);
    }

    double @Nullable [] samples(String name) {
        return (double[]) cell(name);
    }

    int @Nullable [] stages(String name) {
        return (int[]) cell(name);
    }

    List<?> list(String name) {
        return (List<?>) needed(name);
    }

    Feature feature(String name) {
        var places = layout.feature(name);
        var deviation = cell(places.deviation()) instanceof Double number ? number : 0.0;
        if (cell(places.value()) instanceof Double number) {
            return Feature.of(number, deviation);
        }
        return new Feature(
                0, deviation, cell(places.missing()) instanceof String why && !why.isEmpty() ? why : BEFORE_ITS_TIME);
    }

    boolean flag(String name) {
        return (Boolean) needed(name);
    }

    private Object needed(String name) {
        var cell = cell(name);
        if (cell == null) {
            throw new IllegalArgumentException("column " + name + " holds nothing");
        }
        return cell;
    }
}
