package org.tautlog.intake.layout;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.text.Cells;
import org.tautlog.intake.text.Line;
import org.tautlog.intake.text.Row;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;
import org.tautlog.problem.ProblemCode;
import org.tautlog.problem.Where;

/** Finds the table's header: the line, cut at the delimiter, in which the most columns are known by name. */
final class HeaderSearch {
    /**
     * Where two delimiters explain a line as well, the one that is no decimal mark wins. Blanks cut any sentence, so they
     * count only where nothing else explains the file.
     */
    private static final List<Character> DELIMITERS = List.of(';', '\t', ',', '|', Cells.BLANKS);

    private static final Pattern WIDE_GAP = Pattern.compile("\\s{2,}");
    private static final double MOSTLY = 0.8;
    private static final int ROWS_LOOKED_AT = 3;

    private final LogLayout stated;

    HeaderSearch(LogLayout stated) {
        this.stated = stated;
    }

    /**
     * A header that was found.
     *
     * @param line 1-based line
     * @param delimiter the delimiter that cuts it
     * @param cells its cells
     * @param samples 0-based columns of the samples' quantities
     * @param identity 0-based columns of the identity's fields
     */
    record Header(
            int line,
            char delimiter,
            List<String> cells,
            Map<SampleQuantity, Integer> samples,
            Map<IdentityField, Integer> identity) {
        int known() {
            return samples.size() + identity.size();
        }
    }

    Outcome<Header> find(String file, List<Line> head) {
        var delimiters = stated.text().delimiter() == null
                ? DELIMITERS
                : List.of(stated.text().delimiter());
        Header best = null;
        Header nearest = null;
        for (var delimiter : delimiters) {
            if (delimiter == Cells.BLANKS && (best != null || (delimiters.size() > 1 && isTabbed(head)))) {
                break;
            }
            var cutter = new Cells(delimiter);
            for (var line : head) {
                if (!mayNameColumns(line)) {
                    continue;
                }
                var cells = cutter.of(line.text()).orElseGet(Row::none);
                var header = header(line, delimiter, delimiter == Cells.BLANKS ? aligned(line, cells, head) : cells);
                if (isWhole(header) && (best == null || header.known() > best.known())) {
                    best = header;
                }
                if (nearest == null || header.known() > nearest.known()) {
                    nearest = header;
                }
            }
        }
        return best == null ? Outcome.failed(List.of(whatIsMissing(file, nearest))) : Outcome.of(best, List.of());
    }

    /** Where nearly every line holds a tab, blanks stand within cells. */
    private static boolean isTabbed(List<Line> head) {
        long filled = head.stream().filter(line -> !line.isBlank()).count();
        long tabbed =
                head.stream().filter(line -> line.text().indexOf('\t') >= 0).count();
        return tabbed > MOSTLY * filled;
    }

    /** Names may hold blanks where wider gaps stand between them, if so the rows have as many cells as there are names. */
    private static List<String> aligned(Line line, List<String> cells, List<Line> head) {
        var names = List.of(WIDE_GAP.split(line.text().strip(), -1));
        if (names.size() < 2 || names.size() == cells.size()) {
            return cells;
        }
        var cutter = new Cells(Cells.BLANKS);
        return head.stream()
                        .filter(below ->
                                below.number() > line.number() && !below.isBlank() && !mayNameColumnsOnly(below))
                        .limit(ROWS_LOOKED_AT)
                        .anyMatch(below ->
                                cutter.of(below.text()).orElseGet(Row::none).size() == names.size())
                ? names
                : cells;
    }

    private static boolean mayNameColumnsOnly(Line line) {
        return line.text().chars().noneMatch(Character::isDigit);
    }

    /** Most lines of a log are rows of numbers; looking for names in each of them would cost more than reading it. */
    private static boolean mayNameColumns(Line line) {
        var text = line.text();
        int at = 0;
        while (at < text.length()
                && !(Character.isLetter(text.charAt(at)) && text.charAt(at) != 'e' && text.charAt(at) != 'E')) {
            at++;
        }
        return at < text.length();
    }

    private Header header(Line line, char delimiter, List<String> cells) {
        var names = cells.stream().map(HeaderSearch::name).toList();
        var samples = new EnumMap<SampleQuantity, Integer>(SampleQuantity.class);
        for (var quantity : SampleQuantity.values()) {
            var source = stated.samples().get(quantity);
            int at = source == null
                    ? first(names, quantity::isNamed)
                    : source.column().isEmpty() ? -1 : named(cells, source.column());
            if (at >= 0) {
                samples.put(quantity, at);
            }
        }
        var plain = cells.stream()
                .map(cell -> holdsDigit(cell) ? "" : ColumnName.plain(cell))
                .toList();
        var identity = new EnumMap<IdentityField, Integer>(IdentityField.class);
        for (var field : IdentityField.values()) {
            var origin = stated.identity().get(field);
            int at = -1;
            if (origin instanceof Origin.Column column) {
                at = named(cells, column.name());
            } else if (origin == null) {
                at = first(plain, field::isNamed);
            }
            if (at >= 0 && !samples.containsValue(at)) {
                identity.put(field, at);
            }
        }
        return new Header(line.number(), delimiter, cells, samples, identity);
    }

    /** The plain name in a cell. No usual name holds a digit, so of a cell that is all name nothing else need be known. */
    private static String name(String cell) {
        return holdsDigit(cell) && !ColumnName.mayHoldUnit(cell)
                ? ""
                : ColumnName.of(cell).plain();
    }

    private static boolean holdsDigit(String cell) {
        for (int i = 0; i < cell.length(); i++) {
            if (cell.charAt(i) >= '0' && cell.charAt(i) <= '9') {
                return true;
            }
        }
        return false;
    }

    private boolean isWhole(Header header) {
        return missing(header).isEmpty();
    }

    /** Every column that the layout states must be there, and angle and torque in any case. */
    private List<String> missing(Header header) {
        var missing = new ArrayList<String>();
        stated.samples().forEach((quantity, source) -> {
            if (!source.column().isEmpty() && !header.samples().containsKey(quantity)) {
                missing.add("'" + source.column() + "'");
            }
        });
        for (var quantity : List.of(SampleQuantity.ANGLE, SampleQuantity.TORQUE)) {
            if (!stated.samples().containsKey(quantity) && !header.samples().containsKey(quantity)) {
                missing.add(quantity.key());
            }
        }
        stated.identity().forEach((field, origin) -> {
            if (origin instanceof Origin.Column column && named(header.cells(), column.name()) < 0) {
                missing.add("'" + column.name() + "'");
            }
        });
        stated.traceKey().stream()
                .filter(name -> named(header.cells(), name) < 0)
                .forEach(name -> missing.add("'" + name + "'"));
        return missing;
    }

    private Problem whatIsMissing(String file, @Nullable Header nearest) {
        if (nearest == null || nearest.known() == 0) {
            return new Problem(
                    ProblemCode.UNKNOWN_LAYOUT,
                    Where.file(file),
                    "no line names the columns of a torque-angle table",
                    "a header such as Angle (deg), Torque (N·m)",
                    "state the columns in a layout.toml beside the file");
        }
        return new Problem(
                ProblemCode.MISSING_COLUMN,
                Where.line(file, nearest.line()),
                "no column " + String.join(", ", missing(nearest)) + "; found: " + String.join(", ", nearest.cells()),
                "",
                "state the columns in a layout.toml beside the file");
    }

    static int named(List<String> cells, String name) {
        int exact = cells.indexOf(name.strip());
        return exact >= 0 ? exact : first(cells, cell -> cell.equalsIgnoreCase(name.strip()));
    }

    static int first(List<String> cells, java.util.function.Predicate<String> wanted) {
        for (int i = 0; i < cells.size(); i++) {
            if (wanted.test(cells.get(i))) {
                return i;
            }
        }
        return -1;
    }
}
