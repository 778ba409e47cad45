package org.tautlog.archive.table;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Which columns a result has, and where: found once, and shared by all of its rows. */
final class RowLayout {
    /** Where a feature's columns are; -1 for one that the result does not have. */
    record FeaturePlaces(int value, int deviation, int missing) {}

    private final List<ColumnType> types = new ArrayList<>();
    private final Map<String, Integer> places = new HashMap<>();
    private final Map<String, FeaturePlaces> features = new HashMap<>();

    RowLayout(ResultSet result, Map<String, ColumnType> known) throws SQLException {
        var found = result.getMetaData();
        for (int i = 1; i <= found.getColumnCount(); i++) {
            places.put(found.getColumnName(i), i - 1);
            types.add(known.getOrDefault(found.getColumnName(i), ColumnType.TEXT));
        }
    }

    @Nullable Object[] cells(ResultSet at) throws SQLException {
        var cells = new @Nullable Object[types.size()];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = types.get(i).read(at, i + 1);
        }
        return cells;
    }

    int place(String name) {
        return places.getOrDefault(name, -1);
    }

    FeaturePlaces feature(String name) {
        return features.computeIfAbsent(
                name, value -> new FeaturePlaces(place(value), place(value + "_sd"), place(value + "_missing")));
    }
}
