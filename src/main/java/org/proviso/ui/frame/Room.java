package org.proviso.ui.frame;

import org.proviso.access.AccessService;
import org.proviso.access.Permission;

/** The rooms in the order of the work, as the main menu shows them, each with the acts done there. */
public enum Room {
    TODAY("", "Today", Permission.READ_FIGURES),
    INTAKE("intake", "Intake", Permission.RECEIVE_BAGS),
    REVIEW("review", "Review", Permission.SEARCH),
    BOARD("board", "Board", Permission.READ_FIGURES),
    RELEASE("release", "Release", Permission.SEE_RELEASE),
    NOTICES("notices", "Notices", Permission.PRINT_CURE_LETTERS),
    CANVASS("canvass", "Canvass", Permission.READ_FIGURES),
    LEDGER("ledger", "Ledger", Permission.READ_LEDGER),
    SET_UP("set-up", "Setup", Permission.LOAD_FILES, Permission.MANAGE_USERS);

    private final String path;
    private final String words;
    private final Permission[] acts;

    Room(String path, String words, Permission... acts) {
        this.path = path;
        this.words = words;
        this.acts = acts;
    }

    /** The path of its first page, without a slash. */
    public String path() {
        return path;
    }

    public String words() {
        return words;
    }

    /** Whether the signed-in person has anything to do or read there. */
    boolean isOpen(AccessService access) {
        for (Permission act : acts) {
            if (access.isPermitted(act)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a path belongs to this room. */
    boolean holds(String address) {
        return address.equals(path) || (!path.isEmpty() && address.startsWith(path + "/"));
    }
}
