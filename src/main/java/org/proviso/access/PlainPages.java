package org.proviso.access;

import java.util.List;

/**
 * A room's addresses that are plain server pages, without a script: each room that has some declares them as a bean, and
 * they get the strict content policy. Pages for everyone are served without a cookie; the others need a sign-in.
 */
public record PlainPages(List<String> forEveryone, List<String> forSignedIn) {

    public static PlainPages forEveryone(String... patterns) {
        return new PlainPages(List.of(patterns), List.of());
    }

    public static PlainPages forSignedIn(String... patterns) {
        return new PlainPages(List.of(), List.of(patterns));
    }
}
