/**
 * How an exported log lies in its file: shape, text, columns, identity, units; stated in a layout file or sniffed.
 *
 * <p>Public types in reading order: {@link org.tautlog.intake.layout.LogShape}.
 *
 * <p>May import: trace, problem, intake.toml. Refuses to: read samples.
 */
@NullMarked
package org.tautlog.intake.layout;

import org.jspecify.annotations.NullMarked;
