package org.tautlog.intake.layout;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.text.Line;

/** What the lines above a table state of all its columns: {@code Torque unit = lbf.in}, {@code Time zone: Europe/Berlin}. */
final class StatedAbove {
    private static final Pattern KEY_AND_VALUE =
            Pattern.compile("[\\s#\"]*([^:=;\\t,|\"]{3,40}?)\\s*(?:[:=;\\t,|]|\\s{2,})(.{1,60})");
    private static final Pattern AROUND_VALUE = Pattern.compile("^[\\s:=;,|\"\\[(]+|[\\s;,|\"\\])]+$");
    private static final Pattern UNIT_OF =
            Pattern.compile("(?:unitof|unit|units|einheit)(.+)|(.+?)(?:units|unit|einheit)");
    private static final Set<String> ZONE_NAMES = Set.of("timezone", "zeitzone", "tz");

    private final Map<SampleQuantity, String> units = new EnumMap<>(SampleQuantity.class);
    private @Nullable ZoneId zone;

    /** Looks at the lines above a header. */
    static StatedAbove of(List<Line> head, int headerLine) {
        var stated = new StatedAbove();
        head.stream().filter(line -> line.number() < headerLine).forEach(line -> stated.take(line.text()));
        return stated;
    }

    private void take(String line) {
        var parts = line.length() < 200 ? KEY_AND_VALUE.matcher(line) : null;
        if (parts == null || !parts.matches()) {
            return;
        }
        var value = AROUND_VALUE.matcher(parts.group(2)).replaceAll("");
        unitOf(parts.group(1)).ifPresent(quantity -> units.putIfAbsent(quantity, value));
        if (zone == null && ZONE_NAMES.contains(ColumnName.plain(parts.group(1)))) {
            zone = zoneOf(value);
        }
    }

    /** The quantity whose unit a key names. */
    static Optional<SampleQuantity> unitOf(String key) {
        var named = UNIT_OF.matcher(ColumnName.plain(key));
        return named.matches()
                ? SampleQuantity.named(named.group(1) == null ? named.group(2) : named.group(1))
                : Optional.empty();
    }

    private static @Nullable ZoneId zoneOf(String name) {
        try {
            return ZoneId.of(name);
        } catch (DateTimeException e) {
            return null;
        }
    }

    /** The unit of a quantity as it is written there; empty where none is. */
    String unit(SampleQuantity quantity) {
        return units.getOrDefault(quantity, "");
    }

    /** The zone of times that carry none; null where none is stated. */
    @Nullable ZoneId zone() {
        return zone;
    }
}
