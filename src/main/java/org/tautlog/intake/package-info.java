/**
 * All that comes from the plant's files: reading logs with their provenance and rejects, and the log writer beside the
 * reader. How logs lie: {@code intake.layout}. Joint-specification files: {@code intake.specification}.
 *
 * <p>Public types in reading order: {@link org.tautlog.intake.LogWriter}, {@link org.tautlog.intake.Packing}.
 *
 * <p>May import: joint, trace, problem. Refuses to: judge.
 */
@NullMarked
package org.tautlog.intake;

import org.jspecify.annotations.NullMarked;
