/**
 * When a series changed, by how much, and whether it drifts.
 *
 * <p>Read in this order: {@link org.tautlog.spc.change.ChangePoint}, {@link org.tautlog.spc.change.Changes}, {@link
 * org.tautlog.spc.change.ChangeOptions}, {@link org.tautlog.spc.change.Pettitt}, {@link org.tautlog.spc.change.Trend}.
 *
 * <p>May import: {@code spc}. Refuses to: say why a series changed.
 */
@NullMarked
package org.tautlog.spc.change;

import org.jspecify.annotations.NullMarked;
