package org.tautlog.intake.layout;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * How logs lie in their files, as the plant states it. Whatever is not stated is told from each file, and every guess is
 * reported.
 *
 * @param text how the text is written
 * @param shape how traces lie; null where it is not stated
 * @param identity where each identity field comes from; fields that are missing are looked for by their usual names
 * @param fileName pattern with named groups that the whole file name matches; null where nothing comes from it
 * @param time how recording times are written
 * @param samples where each quantity of the samples comes from; those missing are looked for by their usual names
 * @param listSeparator what stands between values of a list cell; empty where it is not stated
 * @param traceKey columns that change where a long table's next trace begins; empty where they are not stated
 * @param ignore globs of files that are no logs, matched against the file's name and its path below the layout
 * @param json where traces lie in JSON; null where the logs are tables. With it, columns are paths
 */
public record LogLayout(
        TextForm text,
        @Nullable LogShape shape,
        Map<IdentityField, Origin> identity,
        @Nullable Pattern fileName,
        TimeForm time,
        Map<SampleQuantity, SampleSource> samples,
        String listSeparator,
        List<String> traceKey,
        List<String> ignore,
        @Nullable JsonForm json) {
    public LogLayout {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(time, "time");
        identity = Map.copyOf(identity);
        samples = Map.copyOf(samples);
        traceKey = List.copyOf(traceKey);
        ignore = List.copyOf(ignore);
    }

    /** {@return a layout that states nothing: everything is told from the file} */
    public static LogLayout unstated() {
        return new LogLayout(
                TextForm.unstated(),
                null,
                Map.of(),
                null,
                new TimeForm(null, null),
                Map.of(),
                "",
                List.of(),
                List.of(),
                null);
    }

    /**
     * The same layout with other samples.
     *
     * @param others where each quantity of the samples comes from
     * @return the changed layout
     */
    public LogLayout withSamples(Map<SampleQuantity, SampleSource> others) {
        return new LogLayout(text, shape, identity, fileName, time, others, listSeparator, traceKey, ignore, json);
    }

    /**
     * The same layout with another zone of times that carry none.
     *
     * @param zone the zone
     * @return the changed layout
     */
    public LogLayout withZone(ZoneId zone) {
        return new LogLayout(
                text,
                shape,
                identity,
                fileName,
                new TimeForm(time.format(), zone),
                samples,
                listSeparator,
                traceKey,
                ignore,
                json);
    }

    /**
     * The same layout of logs that are JSON.
     *
     * @param form where the traces lie
     * @return the changed layout
     */
    public LogLayout ofJson(JsonForm form) {
        return new LogLayout(text, shape, identity, fileName, time, samples, listSeparator, traceKey, ignore, form);
    }
}
