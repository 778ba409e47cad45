package org.tautlog.cli.terminal;

import java.io.PrintWriter;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import me.tongfei.progressbar.DelegatingProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Help.Ansi;

/** Shows on a terminal how far a long run is; silent everywhere else, so that logs and pipes stay clean. */
public final class Progress implements AutoCloseable {
    private final @Nullable ProgressBar bar;
    private final PrintWriter err;

    private Progress(@Nullable ProgressBar bar, PrintWriter err) {
        this.bar = bar;
        this.err = err;
    }

    /**
     * A bar on the error output, where a person sits at it.
     *
     * @param task what is done, in a word
     * @param err the error output
     * @return the bar, to be closed
     */
    public static Progress onTerminal(String task, PrintWriter err) {
        // The bar's usual look is yellow; NO_COLOR and the terminals without colour are told apart as for the verdicts.
        var style = Ansi.AUTO.enabled() ? ProgressBarStyle.COLORFUL_UNICODE_BLOCK : ProgressBarStyle.UNICODE_BLOCK;
        return on(task, err, Terminal.isAttended(), style);
    }

    static Progress on(String task, PrintWriter err, boolean terminal, ProgressBarStyle style) {
        if (!terminal) {
            return new Progress(null, err);
        }
        var bar = new ProgressBarBuilder()
                .setTaskName(task)
                .setStyle(style)
                .setInitialMax(-1)
                .setUpdateIntervalMillis(200)
                .showSpeed(new DecimalFormat("0", DecimalFormatSymbols.getInstance(Locale.ROOT)))
                .setConsumer(new DelegatingProgressBarConsumer(
                        line -> {
                            err.print('\r' + line);
                            err.flush();
                        },
                        78))
                .build();
        return new Progress(bar, err);
    }

    /** One more is done. */
    public void step() {
        if (bar != null) {
            bar.step();
        }
    }

    /** {@return whether somebody sees it, so that it is worth counting what lies ahead} */
    public boolean isShown() {
        return bar != null;
    }

    /**
     * Says beside the bar how far the run is.
     *
     * @param where the file at hand, say, and how many there are
     */
    public void at(String where) {
        if (bar != null) {
            bar.setExtraMessage(", " + where);
        }
    }

    @Override
    public void close() {
        if (bar != null) {
            bar.close();
            err.print('\r' + " ".repeat(78) + '\r');
            err.flush();
        }
    }
}
