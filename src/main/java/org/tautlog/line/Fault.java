package org.tautlog.line;

import java.util.Locale;

/** What was wrong with one simulated tightening, placed there on purpose. */
public enum Fault {
    /** Nothing: an ordinary tightening. */
    NONE("nothing", true),
    /** A bolt of class 8.8 among those of class 10.9. */
    WEAK_BOLT("bolt of too low strength", false),
    /** The tool stopped before the turn was done. */
    TURN_SHORT("turn stopped short", false),
    /** The tool did not stop where the turn was done. */
    TURN_LONG("turned too far", false),
    /** A burr met in the rundown passed for the seated joint: the snug torque was touched and never held. */
    NOT_SEATED("snug torque never held", false),
    /** The nut thread gives way before the bolt has its load. */
    STRIPPED_THREAD("stripped thread", false),
    /** The nut started across the thread and jams in the rundown. */
    CROSS_THREADED("cross-threaded", false),
    /** The bolt had been tightened before the tool started. */
    ALREADY_TIGHT("already tight when started", false),
    /** No washer under the head: a longer rundown, a shorter stack and aluminium under the turning head. */
    WASHER_MISSING("washer missing", false),
    /** Something soft lies between the parts. */
    SOFT_LAYER("something soft between the parts", false),
    /** The socket slipped on the head: angle was counted that turned no bolt. */
    ANGLE_SLIP("angle slip of the tool", false),
    /** A bolt without lubricant. */
    DRY_BOLT("dry bolt", false),
    /** Sound tightening whose bolt chattered between sticking and slipping. */
    STICK_SLIP("stick-slip", true),
    /** Sound tightening whose recording ends before it does. */
    TRUNCATED("recording truncated", true),
    /** Sound second attempt, after a first one that had stopped short and was loosened. */
    REPEATED_ATTEMPT("repeated attempt", true),
    /** Sound tightening some of whose rows cannot be read; whoever writes the log spoils them. */
    UNREADABLE_ROWS("unreadable rows", true),
    /** Sound tightening under a transducer that shows a few per cent too much. */
    TRANSDUCER_OUT_OF_SCALE("torque transducer out of scale", true);

    private final String title;
    private final boolean sound;

    Fault(String title, boolean sound) {
        this.title = title;
        this.sound = sound;
    }

    /** {@return the fault in plain words} */
    public String title() {
        return title;
    }

    /** {@return whether the bolt is well tightened all the same: then only its recording is odd} */
    public boolean leavesASoundBolt() {
        return sound;
    }

    /** {@return the fault as files write it, for example {@code weak-bolt}} */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
