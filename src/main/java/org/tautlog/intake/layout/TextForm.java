package org.tautlog.intake.layout;

import java.nio.charset.Charset;
import org.jspecify.annotations.Nullable;

/**
 * How a log's text is written, as a layout states it; what is null is sniffed.
 *
 * @param encoding the encoding
 * @param delimiter the character between cells
 * @param decimalMark {@code .} or {@code ,}
 * @param thousands whether the other mark stands between thousands
 * @param comment beginning of lines that are no rows; empty where there are none
 */
public record TextForm(
        @Nullable Charset encoding,
        @Nullable Character delimiter,
        @Nullable Character decimalMark,
        boolean thousands,
        String comment) {
    /** {@return a form that states nothing but {@code #} before comments} */
    public static TextForm unstated() {
        return new TextForm(null, null, null, false, "#");
    }
}
