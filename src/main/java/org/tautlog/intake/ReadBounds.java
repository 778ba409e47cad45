package org.tautlog.intake;

/**
 * How much one reading may take. Beyond a bound the file, line or trace concerned is rejected with a problem that names
 * the bound; the rest is read on.
 *
 * @param mostSamples most samples of a trace
 * @param longestLine longest line, characters
 * @param mostUnpackedBytes most bytes that one packed file may unpack to
 * @param mostUnpackedRatio most bytes unpacked for each packed byte; asked of files that unpack to more than 16 MiB
 * @param mostEntries most entries of an archive
 * @param mostProblems most problems kept; all are counted
 * @param mostRemembered how many traces back a repeated recording is still recognised
 */
public record ReadBounds(
        int mostSamples,
        int longestLine,
        long mostUnpackedBytes,
        int mostUnpackedRatio,
        int mostEntries,
        int mostProblems,
        int mostRemembered) {
    public ReadBounds {
        check("mostSamples", mostSamples);
        check("longestLine", longestLine);
        check("mostUnpackedBytes", mostUnpackedBytes);
        check("mostUnpackedRatio", mostUnpackedRatio);
        check("mostEntries", mostEntries);
        check("mostProblems", mostProblems);
        check("mostRemembered", mostRemembered);
    }

    /** {@return 200 000 samples, lines of 8 Mi characters, 16 GiB, 200 to 1, 100 000 entries, 1000 problems, 100 000 traces} */
    public static ReadBounds withDefaults() {
        return new ReadBounds(200_000, 1 << 23, 1L << 34, 200, 100_000, 1000, 100_000);
    }

    private static void check(String name, long value) {
        if (value < 1) {
            throw new IllegalArgumentException(name + " is " + value + "; it must be at least 1");
        }
    }
}
