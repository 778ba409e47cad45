package org.tautlog.intake.layout;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.ChronoField;
import java.time.temporal.TemporalAccessor;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads recording times. Where no format is stated these are tried: ISO 8601 with and without its signs, year/month/day,
 * day.month.year, and days with the month's name in English or German. A date with slashes that does not begin with the
 * year is refused, for it means another day on either side of the ocean.
 */
public final class TimeReader {
    private static final List<DateTimeFormatter> USUAL = List.of(
            DateTimeFormatter.ISO_OFFSET_DATE_TIME,
            usual("uuuu-MM-dd['T'][' ']", Locale.ROOT),
            usual("d.M.uuuu['T'][' ']", Locale.ROOT),
            usual("uuuu/M/d['T'][' ']", Locale.ROOT),
            usual("d.M.uu' '", Locale.ROOT),
            usual("d[-][ ]MMM[-][ ]uuuu' '", Locale.ENGLISH),
            usual("d. MMMM uuuu' '", Locale.GERMAN),
            usual("d. MMM uuuu' '", Locale.GERMAN),
            basic(),
            DateTimeFormatter.ofPattern("uuuuMMddHHmmss", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT));

    private final TimeForm form;

    /**
     * Reads times of one form.
     *
     * @param form the form as the layout states it
     */
    public TimeReader(TimeForm form) {
        this.form = form;
    }

    /**
     * A time that was read.
     *
     * @param time the time
     * @param zoneAssumed whether neither the text nor the layout states a zone, so that UTC was taken
     * @param twice whether the clocks of the zone show this time twice, as they are put back; the first was taken
     */
    public record Reading(OffsetDateTime time, boolean zoneAssumed, boolean twice) {}

    /**
     * Reads a time.
     *
     * @param text the cell or heading
     * @return the time, or empty where it has none of the forms, or the clocks of the zone never show it
     */
    public Optional<Reading> read(String text) {
        return parsed(text).flatMap(this::reading);
    }

    /**
     * Says whether a time is one that the clocks of the stated zone pass over, as they are put forward.
     *
     * @param text the cell or heading
     * @return whether it is
     */
    public boolean isPassedOver(String text) {
        return parsed(text).isPresent() && read(text).isEmpty();
    }

    private Optional<TemporalAccessor> parsed(String text) {
        for (var format : form.format() == null ? USUAL : List.of(form.format())) {
            try {
                return Optional.of(format.parseBest(text, OffsetDateTime::from, LocalDateTime::from));
            } catch (DateTimeException e) {
                // The next format may fit; where none does the caller reports it.
            }
        }
        return Optional.empty();
    }

    private Optional<Reading> reading(TemporalAccessor parsed) {
        if (parsed instanceof OffsetDateTime time) {
            return Optional.of(new Reading(time, false, false));
        }
        var local = LocalDateTime.from(parsed);
        if (form.zone() == null) {
            return Optional.of(new Reading(local.atOffset(ZoneOffset.UTC), true, false));
        }
        var offsets = form.zone().getRules().getValidOffsets(local);
        return offsets.stream().findFirst().map(first -> new Reading(local.atOffset(first), false, offsets.size() > 1));
    }

    private static DateTimeFormatter usual(String date, Locale months) {
        return new DateTimeFormatterBuilder()
                .parseCaseInsensitive()
                .appendPattern(date + "H:mm[:ss]")
                .appendFraction(ChronoField.NANO_OF_SECOND, 0, 9, true)
                .optionalStart()
                .appendLiteral(',')
                .appendFraction(ChronoField.NANO_OF_SECOND, 1, 9, false)
                .optionalEnd()
                .appendPattern("[' '][XXX][XX][X]")
                .toFormatter(months)
                .withResolverStyle(ResolverStyle.STRICT);
    }

    private static DateTimeFormatter basic() {
        return new DateTimeFormatterBuilder()
                .parseCaseInsensitive()
                .appendPattern("uuuuMMdd['T'][' ']HHmmss[' '][XXX][XX][X]")
                .toFormatter(Locale.ROOT)
                .withResolverStyle(ResolverStyle.STRICT);
    }
}
