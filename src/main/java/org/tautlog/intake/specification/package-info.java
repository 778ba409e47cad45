/**
 * The joint-specification file: what the plant released for one joint, read strictly and written back.
 *
 * <p>Public types in reading order: {@link org.tautlog.intake.specification.SpecificationFile}.
 *
 * <p>May import: joint, problem, intake.toml. Refuses to: fill in a limit that the plant did not state.
 */
@NullMarked
package org.tautlog.intake.specification;

import org.jspecify.annotations.NullMarked;
