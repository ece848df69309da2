package org.proviso.browser;

/** How much of a page is seen at once, in CSS pixels. */
public record Window(int width, int height) {

    /** The least screen of an office. */
    public static final Window DESK = new Window(1366, 768);

    /** A voter's telephone. */
    public static final Window PHONE = new Window(390, 844);
}
