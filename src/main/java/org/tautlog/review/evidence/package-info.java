/**
 * What an auditor asks of the kept evidence: everything known of one engine, who else a cause may have touched, and what
 * another specification would have said.
 *
 * <p>Public types in reading order: {@link org.tautlog.review.evidence.StandingJudgements} (one judgement a recording),
 * {@link org.tautlog.review.evidence.DossierReader}, {@link org.tautlog.review.evidence.EngineDossier},
 * {@link org.tautlog.review.evidence.Soundness}, {@link org.tautlog.review.evidence.BoltPosition},
 * {@link org.tautlog.review.evidence.PositionStanding}, {@link org.tautlog.review.evidence.Repeat},
 * {@link org.tautlog.review.evidence.EngineTightening}, {@link org.tautlog.review.evidence.Said},
 * {@link org.tautlog.review.evidence.SameCause}, {@link org.tautlog.review.evidence.Surroundings};
 * {@link org.tautlog.review.evidence.SpecificationComparison}, {@link org.tautlog.review.evidence.VerdictChange};
 * {@link org.tautlog.review.evidence.StandingSearch}, {@link org.tautlog.review.evidence.ArchivedStanding},
 * {@link org.tautlog.review.evidence.Bracketing},
 * {@link org.tautlog.review.evidence.BoltLots}, {@link org.tautlog.review.evidence.Containment},
 * {@link org.tautlog.review.evidence.EngineHold}, {@link org.tautlog.review.evidence.Contained}, {@link org.tautlog.review.evidence.BracketCourse},
 * {@link org.tautlog.review.evidence.ExplainedStep}, {@link org.tautlog.review.evidence.WordMet},
 * {@link org.tautlog.review.evidence.StepSpan}, {@link org.tautlog.review.evidence.LotReach},
 * {@link org.tautlog.review.evidence.LotPlaces}.
 *
 * <p>May import: review, archive, judge, signature, spc, joint, trace, problem. Refuses to: format, alter a verdict, call
 * sound what is not known.
 */
@NullMarked
package org.tautlog.review.evidence;

import org.jspecify.annotations.NullMarked;
