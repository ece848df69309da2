package org.proviso.architecture;

import com.tngtech.archunit.core.domain.JavaClass;
import java.util.List;

/** The rooms of the house in their order; a class may use the rooms before its own and never one after it. */
record Rooms(String root) {

    private static final List<String> ORDER = List.of(
            "core",
            "core.calendar",
            "core.contests",
            "core.rules",
            "core.matching",
            "core.chain",
            "core.adjudication",
            "core.act",
            "core.deciding",
            "files",
            "ledger",
            "access",
            "ui",
            "ledger.ui",
            "practice",
            "election",
            "roll",
            "intake",
            "review",
            "board",
            "release",
            "notices",
            "status",
            "canvass",
            "today",
            "setup",
            "cli");

    /** The program's entry stands over every room. */
    private static final int DOOR = ORDER.size();

    /** The order does not know this package. */
    static final int NOWHERE = -1;

    /** How far along the order a class lies. */
    int place(JavaClass item) {
        String name = item.getPackageName();
        if (name.equals(root)) {
            return DOOR;
        }
        return placeOf(name.substring(root.length() + 1));
    }

    private static int placeOf(String path) {
        if (ORDER.contains(path)) {
            return ORDER.indexOf(path);
        }
        int dot = path.lastIndexOf('.');
        // A sub-package of the core that the order does not name is no part of the core's root.
        boolean stray = dot < 0 || path.substring(0, dot).equals("core");
        return stray ? NOWHERE : placeOf(path.substring(0, dot));
    }

    /** Whether the class is one of the house at all. */
    boolean owns(JavaClass item) {
        return (item.getPackageName() + ".").startsWith(root + ".");
    }
}
