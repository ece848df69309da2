package org.proviso.ui.frame;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Nav;
import java.util.EnumMap;
import java.util.Map;
import org.proviso.access.AccessService;

/** The main menu: the rooms in which the signed-in person has work. */
final class RoomLinks extends Nav {

    private final Map<Room, Anchor> links = new EnumMap<>(Room.class);

    RoomLinks(AccessService access) {
        addClassName("rooms");
        getElement().setAttribute("aria-label", "Main menu");
        for (Room room : Room.values()) {
            if (room.isOpen(access)) {
                Anchor link = new Anchor("/" + room.path(), room.words());
                links.put(room, link);
                add(link);
            }
        }
    }

    /** Marks the room of the current page. */
    void at(String address) {
        links.forEach((room, link) -> {
            if (room.holds(address)) {
                link.getElement().setAttribute("aria-current", "page");
            } else {
                link.getElement().removeAttribute("aria-current");
            }
        });
    }
}
