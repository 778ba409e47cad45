/**
 * Streams (station and spindle) watched side by side: charts of each, what one does apart from its station's others, how
 * capable each is, which tightenings stand out, which bolt lots differ, and what changed since the shift before.
 *
 * <p>Public types in reading order: {@link org.tautlog.review.stream.Stream}, {@link
 * org.tautlog.review.stream.ChartedFeature}, {@link org.tautlog.review.stream.StreamReview} (all of it), {@link
 * org.tautlog.review.stream.Levels}, {@link org.tautlog.review.stream.StreamCharts}, {@link org.tautlog.review.stream.StreamChart} with {@link
 * org.tautlog.review.stream.SetAside}, {@link org.tautlog.review.stream.LevelChanges}, {@link
 * org.tautlog.review.stream.Change}, {@link org.tautlog.review.stream.StreamFigures}, {@link
 * org.tautlog.review.stream.StationChart}, {@link org.tautlog.review.stream.OwnShift}, {@link
 * org.tautlog.review.stream.SpindleCase}, {@link org.tautlog.review.stream.Unusual}, {@link
 * org.tautlog.review.stream.LotEffect}, {@link org.tautlog.review.stream.FalseAlarms}; of two shifts {@link
 * org.tautlog.review.stream.PastShift} and {@link org.tautlog.review.stream.ShiftComparison}; for the search for causes {@link
 * org.tautlog.review.stream.Cue}, {@link org.tautlog.review.stream.CueReading} and {@link
 * org.tautlog.review.stream.Resolution}.
 *
 * <p>May import: judge, signature, spc, joint, trace. Refuses to: name a cause ({@code
 * review.cause} does), or show a list of signals without the number that chance gives.
 */
@NullMarked
package org.tautlog.review.stream;

import org.jspecify.annotations.NullMarked;
