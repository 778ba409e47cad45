/**
 * A simulated assembly line: demo traces made from physics, and the truth about them.
 *
 * <p>Public types in reading order: {@link org.tautlog.line.FenwaterEngine} (what is built),
 * {@link org.tautlog.line.SimulatedLine} (the line at work), {@link org.tautlog.line.SimulatedTightening},
 * {@link org.tautlog.line.Truth}, {@link org.tautlog.line.Fault}. Behind them a {@code Bench} sets up each bolt, a
 * {@code TurnedBolt} resists along its {@code LoadCurve}, a {@code Tool} turns it, a {@code Recorder} takes samples and, in a laboratory, a {@code LoadCell} is read.
 *
 * <p>May import: joint, trace. Refuses to: write files; know how a trace will be read or judged.
 */
@NullMarked
package org.tautlog.line;

import org.jspecify.annotations.NullMarked;
