package org.tautlog.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import org.tautlog.intake.layout.FileLayout;
import org.tautlog.intake.layout.IdentityField;
import org.tautlog.intake.layout.LayoutSniffer;
import org.tautlog.intake.layout.LogLayout;
import org.tautlog.intake.layout.Origin;
import org.tautlog.intake.layout.SampleQuantity;
import org.tautlog.intake.text.Cells;
import org.tautlog.intake.text.Line;
import org.tautlog.intake.text.Row;
import org.tautlog.intake.text.RowsAlike;
import org.tautlog.problem.Where;

/** What the lines of one log mean under its layout: rows with as many cells as the header, headings, identity. */
final class LogText {
    private static final String SAMPLE_COUNT_NAMES = " samples samplecount numberofsamples points messpunkte anzahl ";

    private static final String TIME_OF_DAY_NAMES = " time zeit uhrzeit ";

    /** A key and its value with nothing but room between them. */
    private static final Pattern ALIGNED_KEY = Pattern.compile("\\s*(\\S+(?: \\S+){0,4})(?:\\s{2,}|\\t)(\\S.{0,200})");

    private static final Pattern SIGNED_KEY = Pattern.compile("\\s*[^:=\\s]+(?: [^:=\\s]+){0,4}\\s*[:=]");

    private static final Pattern STAGE_LINE = Pattern.compile(
            "(?i)[\\[#=*-]*\\s*(?:stage|step|stufe|schritt|phase)\\s*(?:no\\.?|nr\\.?)?\\s*[:=;,\\t]?\\s*([0-9]{1,3})(?:\\s*[:;,\\t-]\\s*\\p{L}[^0-9:=]{0,40}?)?\\s*[\\]=*;,\\t-]*");

    private final String file;
    private final FileLayout layout;
    private final Cells cells;
    private final Map<IdentityField, String> fromFileName;
    private List<String> units = List.of();

    LogText(String file, FileLayout layout) {
        this.file = file;
        this.layout = layout;
        this.cells = new Cells(layout.delimiter());
        this.fromFileName = fromFileName(file, layout.stated());
    }

    String file() {
        return file;
    }

    FileLayout layout() {
        return layout;
    }

    /** The last line above the first table's rows. */
    int lastHeaderLine() {
        return Math.max(layout.headerLine(), layout.unitsLine());
    }

    /** Plain rows of this table that begin with the same cells as one. */
    Optional<RowsAlike> alike(Row first, int same) {
        int width = layout.header().size();
        var comment = layout.stated().text().comment();
        return same == 0
                ? RowsAlike.any(width, layout.delimiter(), comment)
                : RowsAlike.after(first, same, width, layout.delimiter(), comment);
    }

    Where at(Line line) {
        return Where.line(file, line.number());
    }

    boolean isComment(Line line) {
        var sign = layout.stated().text().comment();
        return !sign.isEmpty() && line.text().startsWith(sign);
    }

    /** The cells of a row; empty where it cannot be cut, or not into as many cells as the header has. */
    Optional<Row> row(Line line) {
        var cut = line.tooLong() ? Optional.<Row>empty() : cut(line);
        return cut.filter(found -> found.size() == layout.header().size());
    }

    /** The cells of a line, or of its beginning, with as many empty ones at its end as the header has, where that is all they differ by. */
    Optional<Row> cut(Line line) {
        if (line.text().indexOf('\0') >= 0) {
            return Optional.empty();
        }
        // Of a line that is too long the last cell of its beginning is cut, and the key stands before it.
        return cells.of(line.text())
                .map(found -> line.tooLong() ? Row.of(found.subList(0, found.size() - 1)) : fitted(found));
    }

    private Row fitted(Row found) {
        int wanted = layout.header().size();
        if (found.size() == wanted) {
            return found;
        }
        var fitted = new ArrayList<>(found);
        while (fitted.size() > wanted && fitted.get(fitted.size() - 1).isEmpty()) {
            fitted.remove(fitted.size() - 1);
        }
        while (fitted.size() < wanted && layout.header().get(fitted.size()).isEmpty()) {
            fitted.add("");
        }
        return Row.of(fitted);
    }

    boolean isHeader(Row row) {
        return row.isSame(layout.header());
    }

    /** Remembers the row of units under the first header. */
    void noteUnits(Line line) {
        units = row(line).map(List::copyOf).orElse(List.of());
    }

    /** Whether a row where the first header has numbers names other columns, or other units. */
    boolean isOtherHeader(Line line, Row row) {
        var torque = layout.samples().get(SampleQuantity.TORQUE);
        boolean numbers = beginsWithADigit(line)
                || torque == null
                || !torque.isColumn()
                || beginsANumber(row.get(torque.column()));
        return !numbers && ((isUnitsAgain(row) && !row.isSame(units)) || (!isHeader(row) && isOtherHeader(line)));
    }

    boolean isOtherHeader(Line line) {
        return LayoutSniffer.isHeader(layout.stated(), line);
    }

    private static boolean beginsWithADigit(Line line) {
        return !line.text().isEmpty() && Character.isDigit(line.text().charAt(0));
    }

    private static boolean beginsANumber(String cell) {
        return !cell.isEmpty() && (Character.isDigit(cell.charAt(0)) || "+-.,[\u2212".indexOf(cell.charAt(0)) >= 0);
    }

    /** A line of {@code key: value}, {@code key = value} or of a key cell and a value cell. */
    Optional<Map.Entry<String, String>> heading(Line line) {
        if (line.tooLong() || line.isBlank()) {
            return Optional.empty();
        }
        var comment = layout.stated().text().comment();
        var text = isComment(line) ? line.text().substring(comment.length()) : line.text();
        var parts = cells.of(text).orElseGet(() -> Row.of(List.of(text)));
        var aligned = aligned(text, parts.size());
        if (aligned.isPresent() && !SIGNED_KEY.matcher(text).lookingAt()) {
            return aligned;
        }
        var whole = parts.size() == 1 ? parts.get(0) : text;
        int colon = whole.indexOf(':');
        int equal = whole.indexOf('=');
        boolean byColon = colon >= 0 && (equal < 0 || colon < equal);
        int sign = byColon ? colon : equal;
        int delimiter = whole.indexOf(layout.delimiter());
        if (sign > 0 && (delimiter < 0 || sign < delimiter || layout.delimiter() == Cells.BLANKS)) {
            var behind = whole.substring(sign + 1);
            // A heading that fills one quoted cell has its delimiters in the value itself.
            boolean quotedWhole = parts.size() == 1 && text.stripLeading().startsWith("\"");
            return Optional.of(Map.entry(
                    whole.substring(0, sign).strip(), quotedWhole ? behind.strip() : valueOf(behind, byColon)));
        }
        return parts.size() >= 2 && !parts.get(0).isEmpty()
                ? Optional.of(Map.entry(parts.get(0), parts.get(1)))
                : Optional.empty();
    }

    /** A key and its value that only room tells apart, so that a sign within the value is the value's own. */
    private Optional<Map.Entry<String, String>> aligned(String text, int parts) {
        var aligned = ALIGNED_KEY.matcher(text);
        return (parts == 1 || layout.delimiter() == Cells.BLANKS) && aligned.matches()
                ? Optional.of(Map.entry(aligned.group(1), aligned.group(2).strip()))
                : Optional.empty();
    }

    /** A line that does nothing but begin a stage: {@code Stage: 2}, {@code [Schritt 2]}, {@code Stage 1: snug}. */
    OptionalInt stage(Line line) {
        // Nearly all lines are rows, and those begin with a number.
        boolean row = line.tooLong()
                || line.isBlank()
                || Character.isDigit(line.text().charAt(0));
        var found = row ? null : STAGE_LINE.matcher(line.text().strip());
        return found != null && found.matches()
                ? OptionalInt.of(Integer.parseInt(found.group(1)))
                : OptionalInt.empty();
    }

    /** Whether a row repeats the units under a header that comes again. */
    boolean isUnitsAgain(Row row) {
        return layout.unitsLine() > 0
                && row.stream().noneMatch(cell -> !cell.isEmpty() && Character.isDigit(cell.charAt(0)))
                && LayoutSniffer.areUnits(row);
    }

    /** {@code Serial:;FW-1;;} has its value in the cell after the colon. */
    private String valueOf(String behind, boolean colon) {
        var text = behind.strip();
        if (colon && !text.isEmpty() && text.charAt(0) == layout.delimiter()) {
            return cells.of(text.substring(1)).map(found -> found.get(0)).orElse("");
        }
        int end = text.length();
        while (end > 0 && text.charAt(end - 1) == layout.delimiter()) {
            end--;
        }
        return text.substring(0, end).strip();
    }

    /** Whether a key says something about a trace, so that it cannot stand inside a table. */
    boolean isKnownKey(String key) {
        return IdentityField.named(key).isPresent()
                || isSampleCount(key)
                || layout.stated().identity().values().stream()
                        .anyMatch(origin -> origin instanceof Origin.HeaderLine line
                                && line.key().equalsIgnoreCase(key));
    }

    static boolean isSampleCount(String key) {
        return SAMPLE_COUNT_NAMES.contains(
                ' ' + key.toLowerCase(Locale.ROOT).replace(" ", "").replace("_", "") + ' ');
    }

    /** What the heading lines and the row say of a trace's identity. */
    Map<IdentityField, String> identity(Map<String, String> headings, List<String> row) {
        var identity = new EnumMap<IdentityField, String>(IdentityField.class);
        headings.forEach((key, value) -> IdentityField.named(key)
                .filter(field -> !layout.stated().identity().containsKey(field))
                .ifPresent(field -> identity.putIfAbsent(field, value)));
        joinTimeOfDay(identity, headings);
        identity.putAll(fromFileName);
        layout.stated().identity().forEach((field, origin) -> {
            if (origin instanceof Origin.Fixed fixed) {
                identity.put(field, fixed.value());
            } else if (origin instanceof Origin.HeaderLine line) {
                headings.entrySet().stream()
                        .filter(entry -> entry.getKey().equalsIgnoreCase(line.key()))
                        .findFirst()
                        .ifPresent(entry -> identity.put(field, entry.getValue()));
            }
        });
        layout.identityColumns().forEach((field, column) -> {
            if (column < row.size()) {
                identity.put(field, row.get(column));
            }
        });
        joinTimeOfDayCell(identity, row);
        if (identity.getOrDefault(IdentityField.ATTEMPT, "x").isEmpty()) {
            identity.remove(IdentityField.ATTEMPT);
        }
        return identity;
    }

    /** Headings often hold the day and the time of day in two lines. */
    private static void joinTimeOfDay(Map<IdentityField, String> identity, Map<String, String> headings) {
        headings.forEach((key, value) -> {
            if (isTimeOfDay(key)) {
                identity.computeIfPresent(IdentityField.TIME, (field, day) -> day + ' ' + value);
            }
        });
    }

    static boolean isTimeOfDay(String key) {
        return TIME_OF_DAY_NAMES.contains(' ' + key.toLowerCase(Locale.ROOT) + ' ');
    }

    /** Tables hold the day and the time of day in two columns. */
    private void joinTimeOfDayCell(Map<IdentityField, String> identity, List<String> row) {
        int column = layout.timeOfDayColumn();
        if (column >= 0 && column < row.size()) {
            identity.computeIfPresent(IdentityField.TIME, (field, day) -> day + ' ' + row.get(column));
        }
    }

    /** What the file's name says of identity fields that the layout takes from it. */
    static Map<IdentityField, String> fromFileName(String file, LogLayout stated) {
        var fields = new EnumMap<IdentityField, String>(IdentityField.class);
        var pattern = stated.fileName();
        if (pattern == null) {
            return fields;
        }
        var name = file.substring(
                1 + Math.max(file.lastIndexOf('!'), Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\'))));
        for (var candidate : List.of(name, name.replaceFirst("(?i)[.]gz$", ""))) {
            var matched = pattern.matcher(candidate);
            if (matched.matches() && fields.isEmpty()) {
                stated.identity().forEach((field, origin) -> {
                    if (origin instanceof Origin.FileName from) {
                        fields.put(
                                field,
                                Optional.ofNullable(matched.group(from.group())).orElse(""));
                    }
                });
            }
        }
        return fields;
    }
}
