package org.tautlog.joint.study;

/** What scatters from one tightening to the next; each is independent of the others. */
public enum Factor {
    /** The bolt's yield strength. */
    YIELD_STRENGTH("yield strength", "MPa"),
    /** Friction in the thread and under the head together, as a lubricant lot moves it. */
    FRICTION("friction, both", ""),
    /** Friction in the thread alone. */
    THREAD_FRICTION("thread friction", ""),
    /** Friction under the head alone. */
    UNDER_HEAD_FRICTION("under-head friction", ""),
    /** The torque at which the snug stage really ends. */
    SNUG_TORQUE("snug torque", "N·m"),
    /** The turn that is really made past the snug point. */
    TURN("turn", "deg"),
    /** How stiff the bolt is, as a share of nominal: its modulus and sections. */
    BOLT_STIFFNESS("bolt stiffness", "share"),
    /** How stiff the layers are, as a share of nominal: their moduli and areas. */
    LAYER_STIFFNESS("layer stiffness", "share"),
    /** The thread's pitch. */
    PITCH("pitch", "mm"),
    /** The grip: free length and layers together. */
    LENGTH("length", "mm"),
    /** How far the parts draw together before they are seated. */
    SEATING("seating closure", "mm"),
    /** The bolt's temperature when hot. */
    BOLT_TEMPERATURE("bolt temperature", "K"),
    /** The layers' temperature when hot, all alike. */
    LAYER_TEMPERATURE("layer temperature", "K");

    private final String title;
    private final String unit;

    Factor(String title, String unit) {
        this.title = title;
        this.unit = unit;
    }

    /**
     * Its name in plain words.
     *
     * @return such as {@code yield strength}
     */
    public String title() {
        return title;
    }

    /**
     * The unit of its spread.
     *
     * @return such as {@code MPa}; empty for a friction coefficient
     */
    public String unit() {
        return unit;
    }
}
