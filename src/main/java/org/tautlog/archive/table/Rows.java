package org.tautlog.archive.table;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads the rows of one result, one after the other. */
public final class Rows {
    private final Map<String, ColumnType> types;
    private @Nullable RowLayout layout;

    Rows(Map<String, ColumnType> types) {
        this.types = types;
    }

    /**
     * Reads the row at which the result stands.
     *
     * @param result the same result at each call, with any of the table's columns, and both of those that every table has
     * @return the row; columns that the result does not have hold nothing
     * @throws SQLException where the store cannot read
     */
    public Row read(ResultSet result) throws SQLException {
        if (layout == null) {
            layout = new RowLayout(result, types);
        }
        return new Row(layout, layout.cells(result));
    }
}
