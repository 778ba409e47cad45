/**
 * Strict reading of TOML files: every key is known, every value makes sense, or a problem says where and what instead.
 *
 * <p>Public types in reading order: {@link org.tautlog.intake.toml.TomlFile},
 * {@link org.tautlog.intake.toml.StrictTable}, {@link org.tautlog.intake.toml.Quantity}.
 *
 * <p>May import: trace, problem. Refuses to: know what any file is for.
 */
@NullMarked
package org.tautlog.intake.toml;

import org.jspecify.annotations.NullMarked;
