package org.tautlog.intake;

import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tautlog.intake.file.LogFile;
import org.tautlog.intake.layout.LayoutFile;
import org.tautlog.intake.layout.LogLayout;
import org.tautlog.problem.Outcome;

/** The layout of each file: the nearest {@code layout.toml} from its folder up to the input folder. */
final class NearestLayouts {
    static final String NAME = "layout.toml";

    private final @Nullable LogLayout forAll;
    private final ReadLedger ledger;
    private final Map<Path, Optional<Found>> ofFolder = new HashMap<>();

    NearestLayouts(@Nullable LogLayout forAll, ReadLedger ledger) {
        this.forAll = forAll;
        this.ledger = ledger;
    }

    /**
     * A layout and where it counts.
     *
     * @param folder the folder that holds it
     * @param layout the layout; without a value where its file has problems
     */
    record Found(Path folder, Outcome<LogLayout> layout) {
        boolean ignores(Path file) {
            return layout.value()
                    .filter(stated -> NearestLayouts.ignores(stated, folder.relativize(file)))
                    .isPresent();
        }
    }

    /** Whether a layout ignores a file, by its path below the layout or by its name. */
    static boolean ignores(LogLayout layout, Path relative) {
        return layout.ignore().stream()
                .map(glob -> FileSystems.getDefault().getPathMatcher("glob:" + glob))
                .anyMatch(matcher -> matcher.matches(relative) || matcher.matches(relative.getFileName()));
    }

    Optional<Found> of(LogFile file) {
        if (forAll != null) {
            return Optional.of(new Found(file.root(), Outcome.of(forAll, java.util.List.of())));
        }
        var folder = file.path().getParent();
        while (folder != null) {
            var found = ofFolder.computeIfAbsent(folder, this::read);
            if (found.isPresent() || folder.equals(file.root())) {
                return found;
            }
            folder = folder.getParent();
        }
        return ofFolder.computeIfAbsent(file.root(), this::read);
    }

    private Optional<Found> read(Path folder) {
        var file = folder.resolve(NAME);
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        var layout = LayoutFile.read(file);
        layout.problems().forEach(ledger::problem);
        return Optional.of(new Found(folder, layout));
    }
}
