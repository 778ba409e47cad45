package org.tautlog.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import org.tautlog.archive.ArchiveRefusal;
import org.tautlog.cli.terminal.ExitCode;
import org.tautlog.cli.terminal.Refusal;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Tells a person what went wrong in one sentence; the stack trace only where it was asked for. */
final class Trouble {
    private Trouble() {}

    static int wrongWords(ParameterException wrong, String... words) {
        var command = wrong.getCommandLine();
        command.getErr().println("tautlog: " + wrong.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(wrong, command.getErr());
        command.getErr().println("See: " + command.getCommandSpec().qualifiedName() + " --help");
        return ExitCode.WRONG_USE.number();
    }

    static int report(Exception failure, CommandLine command, boolean debug) {
        var err = command.getErr();
        if (isRefusal(failure)) {
            err.println("tautlog: " + failure.getMessage());
        } else {
            err.println("tautlog: " + sentence(failure) + (debug ? "" : "; run with --debug to see where"));
        }
        if (debug) {
            failure.printStackTrace(err);
        }
        return exitCode(failure).number();
    }

    private static boolean isRefusal(Exception failure) {
        return failure instanceof Refusal || failure instanceof ArchiveRefusal;
    }

    private static ExitCode exitCode(Exception failure) {
        return failure instanceof Refusal refusal
                ? refusal.exitCode()
                : isOfTheDisk(failure) ? ExitCode.WRONG_USE : ExitCode.FAILED;
    }

    /** A file that is not there, a folder that may not be written, a disk that is full: nothing that the program did. */
    private static boolean isOfTheDisk(Exception failure) {
        return failure instanceof IOException || failure instanceof UncheckedIOException;
    }

    static int outOfMemory(OutOfMemoryError full, PrintWriter err, boolean debug) {
        long megabytes = Runtime.getRuntime().maxMemory() >> 20;
        err.println(
                "tautlog: the " + megabytes + " MB of memory that Java was given are full; give it more, with java -Xmx"
                        + 2 * megabytes + "m -jar tautlog.jar, or ask for less at a time");
        if (debug) {
            full.printStackTrace(err);
        }
        return ExitCode.FAILED.number();
    }

    private static String sentence(Throwable failure) {
        if (failure instanceof UncheckedIOException && failure.getCause() instanceof IOException cause) {
            return sentence(cause);
        }
        var message = String.valueOf(failure.getMessage());
        if (failure instanceof NoSuchFileException) {
            return "there is no file " + message;
        }
        if (failure instanceof AccessDeniedException) {
            return "the file system denies access to " + message;
        }
        if (failure instanceof FileAlreadyExistsException) {
            return message + " exists and is not a folder";
        }
        if (failure instanceof IOException || failure instanceof IllegalArgumentException) {
            return message;
        }
        return "the program failed (" + failure.getClass().getSimpleName() + ": " + message + ")";
    }
}
