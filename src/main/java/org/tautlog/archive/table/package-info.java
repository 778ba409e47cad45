/**
 * The open columns in which traces, judgements and problems are kept: one line per column, what each holds and how a
 * record is made of them again.
 *
 * <p>Public types in reading order: {@link org.tautlog.archive.table.TraceTable},
 * {@link org.tautlog.archive.table.JudgementTable}, {@link org.tautlog.archive.table.ProblemTable},
 * {@link org.tautlog.archive.table.IdentityColumns}, {@link org.tautlog.archive.table.Table}, {@link org.tautlog.archive.table.Column},
 * {@link org.tautlog.archive.table.ColumnType}, {@link org.tautlog.archive.table.Row},
 * {@link org.tautlog.archive.table.RowHash}, {@link org.tautlog.archive.table.Kept},
 * {@link org.tautlog.archive.table.KeptJudgement},
 * {@link org.tautlog.archive.table.BriefRow}.
 *
 * <p>A column is never renamed, never changes its type or its unit and never goes away, as records must be readable for
 * the life of an engine. A new column raises {@link org.tautlog.archive.table.Table#SCHEMA_VERSION}; rows kept before it
 * hold nothing in it, and keep their hash.
 *
 * <p>May import: judge, signature, joint.window, trace, problem. Refuses to: know files and folders.
 */
@NullMarked
package org.tautlog.archive.table;

import org.jspecify.annotations.NullMarked;
