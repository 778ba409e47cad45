package org.tautlog.intake.layout;

import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.file.LogFile;
import org.tautlog.problem.Outcome;
import org.tautlog.problem.Problem;

/** The layout of each file: the nearest {@code layout.toml} from its folder up to the input folder. */
public final class NearestLayouts {
    /** Name of the file that states a layout. */
    public static final String NAME = "layout.toml";

    private final @Nullable LogLayout forAll;
    private final Map<Path, Optional<Found>> ofFolder = new HashMap<>();

    /**
     * Looks for layouts.
     *
     * @param forAll the layout of every file; null where each file's nearest counts
     */
    public NearestLayouts(@Nullable LogLayout forAll) {
        this.forAll = forAll;
    }

    /**
     * A layout and where it counts.
     *
     * @param folder the folder that holds it
     * @param layout the layout; without a value where its file has problems
     */
    public record Found(Path folder, Outcome<LogLayout> layout) {
        /**
         * Says whether the layout leaves a file out.
         *
         * @param file the file, below the folder
         * @return whether it does
         */
        public boolean ignores(Path file) {
            return layout.value()
                    .filter(stated -> NearestLayouts.ignores(stated, folder.relativize(file)))
                    .isPresent();
        }
    }

    /**
     * Says whether a layout leaves a file out, by its path below the layout or by its name.
     *
     * @param layout the layout
     * @param relative the path below the layout
     * @return whether it does
     */
    public static boolean ignores(LogLayout layout, Path relative) {
        return layout.ignore().stream()
                .map(glob -> FileSystems.getDefault().getPathMatcher("glob:" + glob))
                .anyMatch(matcher -> matcher.matches(relative) || matcher.matches(relative.getFileName()));
    }

    /**
     * The layout of a file.
     *
     * @param file the file
     * @param problems is told what is wrong with the layout, where it was not asked for before
     * @return the layout, or empty where none lies above the file
     */
    public Optional<Found> of(LogFile file, Consumer<Problem> problems) {
        if (forAll != null) {
            return Optional.of(new Found(file.root(), Outcome.of(forAll, List.of())));
        }
        var folder = file.path().getParent();
        while (folder != null) {
            var found = ofFolder.computeIfAbsent(folder, unread -> read(unread, problems));
            if (found.isPresent() || folder.equals(file.root())) {
                return found;
            }
            folder = folder.getParent();
        }
        return ofFolder.computeIfAbsent(file.root(), unread -> read(unread, problems));
    }

    private static Optional<Found> read(Path folder, Consumer<Problem> problems) {
        var file = folder.resolve(NAME);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        var layout = LayoutFile.read(file);
        layout.problems().forEach(problems);
        return Optional.of(new Found(folder, layout));
    }
}
