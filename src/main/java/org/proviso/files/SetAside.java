package org.proviso.files;

/**
 * Where the rows of an outside list go that cannot be taken, one after the other; the rest of the list is read on. It
 * keeps few or none of them in memory: a file may have a million. A reader that is given none refuses the whole file.
 */
@FunctionalInterface
public interface SetAside {

    void take(SetAsideRow row);
}
