package org.proviso.access;

import java.util.List;
import java.util.Optional;
import org.proviso.core.BetweenRooms;
import org.proviso.core.UserName;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The people of the office, for services that tell or check what several of them did. Thread-safe. */
@BetweenRooms
@Service
public class StaffList {

    private final UserStore users;
    private final AccessService access;

    StaffList(UserStore users, AccessService access) {
        this.users = users;
        this.access = access;
    }

    /** The account of that name, whether it can act now or not. */
    @Transactional(readOnly = true)
    public Optional<OfficeUser> user(UserName userName) {
        return users.find(userName);
    }

    /** The party of a member of staff, empty where none is noted; for rules that want two parties to act. */
    @Transactional(readOnly = true)
    public String party(UserName userName) {
        return users.find(userName).map(OfficeUser::party).orElse("");
    }

    /** Everyone who may do this now, in the order of their user names. */
    @Transactional(readOnly = true)
    public List<OfficeUser> usersWith(Permission act) {
        return users.all().stream()
                .filter(user -> access.canAct(user) && act.isOpenTo(user.roles()))
                .toList();
    }
}
