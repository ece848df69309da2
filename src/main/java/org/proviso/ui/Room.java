package org.proviso.ui;

import org.proviso.access.AccessService;
import org.proviso.access.Act;

/** The rooms of the house in the order of the work, as the top line shows them; each with who has work there. */
public enum Room {
    TODAY("", "Today", Act.READ_FIGURES),
    INTAKE("intake", "Intake", Act.RECEIVE_BAGS),
    REVIEW("review", "Review", Act.SEARCH),
    BOARD("board", "Board", Act.READ_FIGURES),
    RELEASE("release", "Release", Act.OPEN_ENVELOPES, Act.LOAD_FILES),
    NOTICES("notices", "Notices", Act.PRINT_CURE_LETTERS),
    CANVASS("canvass", "Canvass", Act.READ_FIGURES),
    LEDGER("ledger", "Ledger", Act.READ_LEDGER),
    SET_UP("set-up", "Set-up", Act.LOAD_FILES, Act.MANAGE_USERS);

    private final String path;
    private final String words;
    private final Act[] acts;

    Room(String path, String words, Act... acts) {
        this.path = path;
        this.words = words;
        this.acts = acts;
    }

    /** The address of its first page, without a slash. */
    public String path() {
        return path;
    }

    public String words() {
        return words;
    }

    /** Whether whoever is signed in has anything to do or read there. */
    boolean isOpen(AccessService access) {
        for (Act act : acts) {
            if (access.may(act)) {
                return true;
            }
        }
        return false;
    }

    /** Whether an address lies in this room. */
    boolean holds(String address) {
        return address.equals(path) || (!path.isEmpty() && address.startsWith(path + "/"));
    }
}
