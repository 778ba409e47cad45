/**
 * How traces lie in JSON: cut out along their path, and followed by pointers.
 *
 * <p>Public types in reading order: {@link org.tautlog.intake.json.JsonTraces}, {@link org.tautlog.intake.json.JsonPointers}.
 *
 * <p>May import: problem, intake.layout, intake.text. Refuses to: make traces of what it finds.
 */
@NullMarked
package org.tautlog.intake.json;

import org.jspecify.annotations.NullMarked;
