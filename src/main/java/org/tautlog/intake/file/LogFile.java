package org.tautlog.intake.file;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;

/**
 * A file that was found among the inputs.
 *
 * @param path the file
 * @param root the input folder that it was found in; the file's own folder where it was named itself
 * @param named whether the user named the file itself, so that it is read whatever its name ends in
 */
public record LogFile(Path path, Path root, boolean named) {
    private static final Set<String> ENDINGS =
            Set.of("csv", "txt", "tsv", "tab", "log", "dat", "asc", "prn", "gz", "zip");

    private static final Set<String> JSON = Set.of("json", "jsonl", "ndjson");

    /**
     * Says whether a name is one that logs have.
     *
     * @param name a file's name, or an archive entry's with its folders
     * @return whether it ends as logs do and is not hidden
     */
    public static boolean looksLikeLog(String name) {
        return endsIn(name, ENDINGS);
    }

    /**
     * Says whether a name is one that JSON has.
     *
     * @param name a file's name, or an archive entry's with its folders
     * @return whether it ends as JSON does and is not hidden
     */
    public static boolean looksLikeJson(String name) {
        return endsIn(name, JSON);
    }

    private static boolean endsIn(String name, Set<String> endings) {
        var file = name.substring(name.lastIndexOf('/') + 1);
        int dot = file.lastIndexOf('.');
        boolean hidden = file.startsWith(".") || file.startsWith("~") || name.startsWith("__MACOSX/");
        return !hidden && dot >= 0 && endings.contains(file.substring(dot + 1).toLowerCase(Locale.ROOT));
    }

    /** {@return the file as its user named it} */
    public String name() {
        return path.toString();
    }
}
