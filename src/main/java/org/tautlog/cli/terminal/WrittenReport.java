package org.tautlog.cli.terminal;

import java.io.PrintWriter;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * The files of one report, all made from the same values.
 *
 * @param page the page to read
 * @param print the same for paper; null where it was left out
 * @param table every tightening of it, for a spreadsheet
 * @param figures its figures, for a program
 */
public record WrittenReport(Path page, @Nullable Path print, Path table, Path figures) {
    /**
     * Names them, the page first.
     *
     * @param out where to
     */
    public void print(PrintWriter out) {
        out.println("report: " + page);
        if (print != null) {
            out.println("PDF: " + print);
        }
        out.println("CSV: " + table);
        out.println("JSON: " + figures);
    }
}
