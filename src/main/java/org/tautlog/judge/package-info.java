/**
 * One trace held against the window and the fault signatures: findings and verdict.
 *
 * <p>Public types in reading order: {@link org.tautlog.judge.Judge}, {@link org.tautlog.judge.Judgement},
 * {@link org.tautlog.judge.BriefJudgement}, {@link org.tautlog.judge.Verdict}, {@link org.tautlog.judge.Finding},
 * {@link org.tautlog.judge.JudgesInOrder}.
 *
 * <p>May import: signature, joint, trace. Refuses to: see peers: that is the review's.
 */
@NullMarked
package org.tautlog.judge;

import org.jspecify.annotations.NullMarked;
