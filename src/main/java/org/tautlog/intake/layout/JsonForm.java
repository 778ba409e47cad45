package org.tautlog.intake.layout;

import java.util.Arrays;
import java.util.List;

/**
 * Where traces lie in JSON, as a layout states it. Paths are JSON Pointers (RFC 6901) in which {@code *} stands for every
 * element of an array, one behind the other; an array's element is named by its index from 0.
 *
 * @param traces path from the root to the array of traces, without {@code *}; empty where the root is that array, one
 *     trace, or one trace behind the other
 * @param points path from a trace to the array of its samples, each an object, from which the paths of the samples then
 *     start; empty where each quantity has an array of its own
 */
public record JsonForm(String traces, String points) {
    public JsonForm {
        for (var path : List.of(traces, points)) {
            if (!path.isEmpty() && !path.startsWith("/")) {
                throw new IllegalArgumentException("the path is '" + path + "'; it must be empty or begin with /");
            }
        }
        if (segments(traces).contains("*")) {
            throw new IllegalArgumentException("traces is '" + traces + "'; it must lead to one array, without *");
        }
    }

    /**
     * The names along a path.
     *
     * @param path a JSON Pointer
     * @return its segments, with {@code ~1} and {@code ~0} read as RFC 6901 says
     */
    public static List<String> segments(String path) {
        return path.isEmpty()
                ? List.of()
                : Arrays.stream(path.substring(1).split("/", -1))
                        .map(segment -> segment.replace("~1", "/").replace("~0", "~"))
                        .toList();
    }
}
