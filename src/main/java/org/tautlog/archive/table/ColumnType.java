package org.tautlog.archive.table;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import org.duckdb.DuckDBAppender;
import org.jspecify.annotations.Nullable;

/** The kinds of columns: how a value is stored, read back and hashed. Nothing is rounded on the way. */
public enum ColumnType {
    /** Text; a {@code String}. */
    TEXT("VARCHAR") {
        @Override
        void append(DuckDBAppender row, Object value) throws SQLException {
            row.append((String) value);
        }

        @Override
        @Nullable Object read(ResultSet rows, int column) throws SQLException {
            return rows.getString(column);
        }

        @Override
        void feed(RowHash hash, Object value) {
            hash.text((String) value);
        }
    },
    /** Whole number of 32 bits; an {@code Integer}. */
    WHOLE("INTEGER") {
        @Override
        void append(DuckDBAppender row, Object value) throws SQLException {
            row.append((int) (Integer) value);
        }

        @Override
        @Nullable Object read(ResultSet rows, int column) throws SQLException {
            int value = rows.getInt(column);
            return rows.wasNull() ? null : (Object) value;
        }

        @Override
        void feed(RowHash hash, Object value) {
            hash.whole((Integer) value);
        }
    },
    /** Double-precision number; a {@code Double}. A negative zero is kept as zero, which is the same number. */
    NUMBER("DOUBLE") {
        @Override
        void append(DuckDBAppender row, Object value) throws SQLException {
            row.append(unsigned((Double) value));
        }

        @Override
        @Nullable Object read(ResultSet rows, int column) throws SQLException {
            double value = rows.getDouble(column);
            return rows.wasNull() ? null : (Object) value;
        }

        @Override
        void feed(RowHash hash, Object value) {
            hash.number(unsigned((Double) value));
        }
    },
    /** Yes or no; a {@code Boolean}. */
    FLAG("BOOLEAN") {
        @Override
        void append(DuckDBAppender row, Object value) throws SQLException {
            row.append((boolean) (Boolean) value);
        }

        @Override
        @Nullable Object read(ResultSet rows, int column) throws SQLException {
            boolean value = rows.getBoolean(column);
            return rows.wasNull() ? null : (Object) value;
        }

        @Override
        void feed(RowHash hash, Object value) {
            hash.whole((Boolean) value ? 1 : 0);
        }
    },
    /** A moment in UTC to the microsecond; a {@code LocalDateTime}. */
    MOMENT("TIMESTAMP") {
        @Override
        void append(DuckDBAppender row, Object value) throws SQLException {
            row.append((LocalDateTime) value);
        }

        @Override
        @Nullable Object read(ResultSet rows, int column) throws SQLException {
            return rows.getObject(column, LocalDateTime.class);
        }

        @Override
        void feed(RowHash hash, Object value) {
            hash.text(value.toString());
        }
    },
    /** Texts in order; a {@code List<String>}. */
    TEXTS("VARCHAR[]") {
        @Override
        void append(DuckDBAppender row, Object value) throws SQLException {
            row.append((List<?>) value);
        }

        @Override
        @Nullable Object read(ResultSet rows, int column) throws SQLException {
            return list(rows, column);
        }

        @Override
        void feed(RowHash hash, Object value) {
            var list = (List<?>) value;
            hash.whole(list.size());
            list.forEach(item -> hash.text((String) item));
        }
    },
    /** Numbers in order, some of which may be absent; a {@code List<Double>}. */
    NUMBERS("DOUBLE[]") {
        @Override
        void append(DuckDBAppender row, Object value) throws SQLException {
            var numbers = new ArrayList<@Nullable Double>();
            ((List<?>) value).forEach(item -> numbers.add(item == null ? null : (Double) unsigned((Double) item)));
            row.append(numbers);
        }

        @Override
        @Nullable Object read(ResultSet rows, int column) throws SQLException {
            return list(rows, column);
        }

        @Override
        void feed(RowHash hash, Object value) {
            var list = (List<?>) value;
            hash.whole(list.size());
            for (var item : list) {
                hash.whole(item == null ? 0 : 1);
                hash.number(item == null ? 0 : unsigned((Double) item));
            }
        }
    },
    /** The samples of a curve; a {@code double[]}. */
    SAMPLES("DOUBLE[]") {
        @Override
        void append(DuckDBAppender row, Object value) throws SQLException {
            row.append(
                    DoubleStream.of((double[]) value).map(ColumnType::unsigned).toArray());
        }

        @Override
        @Nullable Object read(ResultSet rows, int column) throws SQLException {
            var items = items(rows, column);
            if (items == null) {
                return null;
            }
            var samples = new double[items.length];
            for (int i = 0; i < samples.length; i++) {
                samples[i] = (Double) items[i];
            }
            return samples;
        }

        @Override
        void feed(RowHash hash, Object value) {
            hash.whole(((double[]) value).length);
            for (double item : (double[]) value) {
                hash.number(unsigned(item));
            }
        }
    },
    /** The stage numbers of a curve's samples; an {@code int[]}. */
    STAGES("INTEGER[]") {
        @Override
        void append(DuckDBAppender row, Object value) throws SQLException {
            row.append((int[]) value);
        }

        @Override
        @Nullable Object read(ResultSet rows, int column) throws SQLException {
            var items = items(rows, column);
            if (items == null) {
                return null;
            }
            var stages = new int[items.length];
            for (int i = 0; i < stages.length; i++) {
                stages[i] = (Integer) items[i];
            }
            return stages;
        }

        @Override
        void feed(RowHash hash, Object value) {
            hash.whole(((int[]) value).length);
            for (int item : (int[]) value) {
                hash.whole(item);
            }
        }
    };

    private final String sql;

    ColumnType(String sql) {
        this.sql = sql;
    }

    /** {@return the type's name in SQL} */
    public String sql() {
        return sql;
    }

    abstract void append(DuckDBAppender row, Object value) throws SQLException;

    abstract @Nullable Object read(ResultSet rows, int column) throws SQLException;

    abstract void feed(RowHash hash, Object value);

    /** The store's dictionaries hold zero and negative zero as one value, whichever came first. */
    private static double unsigned(double value) {
        return value == 0 ? 0.0 : value;
    }

    private static @Nullable List<?> list(ResultSet rows, int column) throws SQLException {
        var items = items(rows, column);
        return items == null ? null : Collections.unmodifiableList(Arrays.asList(items));
    }

    private static Object @Nullable [] items(ResultSet rows, int column) throws SQLException {
        var array = rows.getArray(column);
        return array == null ? null : (Object[]) array.getArray();
    }
}
