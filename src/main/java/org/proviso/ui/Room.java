package org.proviso.ui;

import org.proviso.access.AccessService;
import org.proviso.access.Act;

/** The rooms in the order of the work, as the main menu shows them, each with the acts done there. */
public enum Room {
    TODAY("", "Today", Act.READ_FIGURES),
    INTAKE("intake", "Intake", Act.RECEIVE_BAGS),
    REVIEW("review", "Review", Act.SEARCH),
    BOARD("board", "Board", Act.READ_FIGURES),
    RELEASE("release", "Release", Act.OPEN_ENVELOPES, Act.LOAD_FILES),
    NOTICES("notices", "Notices", Act.PRINT_CURE_LETTERS),
    CANVASS("canvass", "Canvass", Act.READ_FIGURES),
    LEDGER("ledger", "Ledger", Act.READ_LEDGER),
    SET_UP("set-up", "Setup", Act.LOAD_FILES, Act.MANAGE_USERS);

    private final String path;
    private final String words;
    private final Act[] acts;

    Room(String path, String words, Act... acts) {
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
        for (Act act : acts) {
            if (access.may(act)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a path belongs to this room. */
    boolean holds(String address) {
        return address.equals(path) || !path.isEmpty() && address.startsWith(path + "/");
    }
}
