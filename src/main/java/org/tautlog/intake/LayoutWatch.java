package org.tautlog.intake;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.Charset;
import java.util.List;
import org.tautlog.intake.layout.FileLayout;
import org.tautlog.intake.text.Line;
import org.tautlog.problem.Outcome;

/** Is shown how each text lies before its lines are read. */
interface LayoutWatch {
    /** A watch that only lets pass. */
    LayoutWatch NONE = (file, charset, layout, head) -> true;

    /** Takes a look, and says whether the lines are to be read. */
    boolean sees(String file, Charset charset, Outcome<FileLayout> layout, List<Line> head);

    /** So many lines it wants to see at least, where the file has them. */
    default int mostLines() {
        return 0;
    }

    /** Takes the text of a log that is stated to be JSON, or leaves it to the reader. */
    default boolean takes(String file, Charset charset, Reader text) throws IOException {
        return false;
    }
}
