package org.proviso.access;

/**
 * Where whoever has this role and no other is taken after signing in; a room whose page is made for one role declares it
 * as a bean.
 */
public record FirstPage(Role role, String address) {

    /** Whether it is meant for this person. */
    public boolean isFor(OfficeUser user) {
        return user.roles().size() == 1 && user.roles().contains(role);
    }
}
