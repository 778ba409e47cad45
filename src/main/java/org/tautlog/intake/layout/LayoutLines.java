package org.tautlog.intake.layout;

import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** The lines of a proposed layout file, each with its reason behind it. */
public final class LayoutLines {
    /** Pattern of a file name that takes all before the ending as the serial. */
    public static final String WHOLE_NAME = "(?<serial>.+)[.][A-Za-z0-9]+";

    private static final int REASON_COLUMN = 56;

    private final StringBuilder text = new StringBuilder();

    /**
     * Begins a layout file.
     *
     * @param file the name of the file that it describes
     */
    public LayoutLines(String file) {
        comment("How " + file
                + " lies, as told from the file. Correct what is wrong and keep it beside the logs as layout.toml.");
    }

    /**
     * Begins a section.
     *
     * @param name its name
     */
    public void section(String name) {
        text.append("\n[").append(name).append("]\n");
    }

    /**
     * States a key.
     *
     * @param key the key
     * @param value its value in TOML
     * @param reason why
     */
    public void line(String key, String value, String reason) {
        var stated = key + " = " + value;
        text.append(stated)
                .append(" ".repeat(Math.max(1, REASON_COLUMN - stated.length())))
                .append("# ")
                .append(harmless(reason))
                .append('\n');
    }

    /**
     * Says something and states nothing.
     *
     * @param words what to say
     */
    public void comment(String words) {
        text.append("# ").append(harmless(words)).append('\n');
    }

    /** Says that no serial was found. */
    public void noSerial() {
        comment("serial: nothing in the file names it; say where it stands, or no trace can be read");
    }

    /**
     * Writes the section of recording times.
     *
     * @param times times as the file writes them
     * @param zone the zone that the file states; null where it states none
     */
    public void time(List<String> times, @Nullable ZoneId zone) {
        section("time");
        if (zone != null) {
            line("zone", quoted(zone.getId()), "a line above the table");
        } else {
            text.append("# zone = \"Europe/Berlin\"   # of times that carry none; without it they count as UTC\n");
        }
        var dates = SlashDates.lines(times);
        dates.ifPresent(lines -> text.append(lines).append('\n'));
        var reader = new TimeReader(new TimeForm(null, null));
        times.stream()
                .filter(time ->
                        dates.isEmpty() && !time.isBlank() && reader.read(time).isEmpty())
                .findFirst()
                .ifPresent(
                        time -> comment(
                                "format = \"\"   # " + time
                                        + " has none of the usual forms; these times are not read until format says theirs; CHECK THIS"));
    }

    /** {@return the text of the layout file} */
    public String text() {
        return text.toString();
    }

    /**
     * A TOML basic string. Source: TOML 1.0.0, "String".
     *
     * @param words any text
     * @return the text in quotes
     */
    public static String quoted(String words) {
        var quoted = new StringBuilder("\"");
        words.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
            } else if (Character.isISOControl(c)) {
                quoted.append(String.format(Locale.ROOT, "\\u%04x", c));
            } else {
                quoted.appendCodePoint(c);
            }
        });
        return quoted.append('"').toString();
    }

    /**
     * Numbers for the words of a stage, in the order in which they come.
     *
     * @param words the words, which may come again
     * @return the inside of a TOML table
     */
    public static String marks(List<String> words) {
        var distinct = words.stream().distinct().toList();
        return IntStream.range(0, distinct.size())
                .mapToObj(i -> quoted(distinct.get(i)) + " = " + (i + 1))
                .collect(Collectors.joining(", "));
    }

    private static String harmless(String words) {
        return words.replaceAll("\\p{Cntrl}", "?");
    }
}
