package org.tautlog.line;

/** When a tool's recorder takes a sample. */
enum Sampling {
    /** Each half degree that the angle moves, forwards or back. */
    HALF_DEGREE,
    /** Each two milliseconds, whether the tool turns or not. */
    TWO_MILLISECONDS
}
