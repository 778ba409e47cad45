/**
 * How traces lie in JSON: cut out along their path, followed by pointers, and a layout proposed where nobody stated one.
 *
 * <p>Public types in reading order: {@link org.tautlog.intake.json.JsonTraces},
 * {@link org.tautlog.intake.json.JsonPointers}, {@link org.tautlog.intake.json.JsonParts},
 * {@link org.tautlog.intake.json.JsonProposal}.
 *
 * <p>May import: problem, intake.layout, intake.text. Refuses to: make traces of what it finds.
 */
@NullMarked
package org.tautlog.intake.json;

import org.jspecify.annotations.NullMarked;
