/**
 * Files as they lie on a disk: found, hashed, unpacked within bounds, written; and what their failures mean.
 *
 * <p>Public types in reading order: {@link org.tautlog.intake.file.LogFinder},
 * {@link org.tautlog.intake.file.LogFile}, {@link org.tautlog.intake.file.SealedFile},
 * {@link org.tautlog.intake.file.Sha256}, {@link org.tautlog.intake.file.BreakingStream},
 * {@link org.tautlog.intake.file.BrokenFile}, {@link org.tautlog.intake.file.Packing},
 * {@link org.tautlog.intake.file.LogOutput};
 * {@link org.tautlog.intake.file.SettledFiles}, {@link org.tautlog.intake.file.FilesRead}.
 *
 * <p>May import: problem. Refuses to: look into a text.
 */
@NullMarked
package org.tautlog.intake.file;

import org.jspecify.annotations.NullMarked;
