/**
 * HTML, SVG, CSV and JSON of what the review found.
 *
 * <p>May import: review and below. Refuses to: compute.
 */
@NullMarked
package org.tautlog.report;

import org.jspecify.annotations.NullMarked;
