package org.proviso.architecture;

import com.tngtech.archunit.core.domain.JavaClass;

/** Which classes are pages: what a browser reaches. */
final class Pages {

    private Pages() {}

    /** Views, the parts of them, controllers, and whatever lies with them. */
    static boolean isPage(JavaClass item) {
        String below = item.getPackageName().substring(ClassesOf.PROVISO.length());
        return isPage(below.startsWith(".") ? below.substring(1) : below);
    }

    private static boolean isPage(String room) {
        return room.equals("ui")
                || room.startsWith("ui.")
                || room.endsWith(".ui")
                || room.contains(".ui.")
                || room.equals("setup")
                || room.startsWith("setup.")
                || room.equals("today")
                || room.startsWith("today.");
    }
}
