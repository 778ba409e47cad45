/**
 * How an exported log lies in its file: shape, text, columns, identity, units; stated in a layout file or sniffed.
 *
 * <p>Public types in reading order: {@link org.tautlog.intake.layout.LogShape},
 * {@link org.tautlog.intake.layout.LayoutFile}, {@link org.tautlog.intake.layout.LogLayout} with its parts
 * {@link org.tautlog.intake.layout.TextForm}, {@link org.tautlog.intake.layout.Origin},
 * {@link org.tautlog.intake.layout.TimeForm}, {@link org.tautlog.intake.layout.SampleSource},
 * {@link org.tautlog.intake.layout.JsonForm};
 * {@link org.tautlog.intake.layout.LayoutSniffer}, {@link org.tautlog.intake.layout.FileLayout},
 * {@link org.tautlog.intake.layout.SampleColumn}, {@link org.tautlog.intake.layout.IdentityField},
 * {@link org.tautlog.intake.layout.SampleQuantity}, {@link org.tautlog.intake.layout.TimeReader}, {@link org.tautlog.intake.layout.NumberSearch};
 * {@link org.tautlog.intake.layout.LayoutText}, {@link org.tautlog.intake.layout.LayoutSkeleton}, {@link org.tautlog.intake.layout.LayoutLines},
 * {@link org.tautlog.intake.layout.ColumnName}, {@link org.tautlog.intake.layout.ColumnGuess};
 * {@link org.tautlog.intake.layout.NearestLayouts}.
 *
 * <p>May import: trace, problem, intake.toml, intake.text, intake.file. Refuses to: read samples.
 */
@NullMarked
package org.tautlog.intake.layout;

import org.jspecify.annotations.NullMarked;
