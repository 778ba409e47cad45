/**
 * Everything that needs peers: shift review, engine dossier, containment, causes.
 *
 * <p>May import: archive and below, spc. Refuses to: format.
 */
@NullMarked
package org.tautlog.review;

import org.jspecify.annotations.NullMarked;
