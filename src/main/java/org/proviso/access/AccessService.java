package org.proviso.access;

import java.util.Collection;
import org.proviso.core.UserName;
import org.springframework.security.authentication.AnonymousAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Says who is acting and whether they may. Every service asks it first, whatever page or command called; it looks at
 * the account as it is now, so a role taken away is gone at once. Thread-safe.
 */
@Service
public class AccessService {

    private final UserStore users;
    private final AccessSettings settings;

    AccessService(UserStore users, AccessSettings settings) {
        this.users = users;
        this.settings = settings;
    }

    /** Whoever acts, if they may; otherwise refuses with the reason. */
    @Transactional(readOnly = true)
    public OfficeUser demand(Permission act) {
        if (signedIn().isVisitor() && act.isOpenTo(OfficeUser.VISITOR.roles())) {
            return OfficeUser.VISITOR;
        }
        OfficeUser user = demandSignedIn();
        if (user.passwordIsOneTime()) {
            throw new NotPermittedException("Change your one-time password first.");
        }
        if (!act.isOpenTo(user.roles())) {
            throw new NotPermittedException("Your role does not include " + act.words() + ".");
        }
        return user;
    }

    /** As {@link #demand}, and not one of those who acted on the thing before: nobody checks their own act. */
    @Transactional(readOnly = true)
    public OfficeUser demandSomebodyElse(Permission act, Collection<UserName> earlierUserNames) {
        OfficeUser user = demand(act);
        if (earlierUserNames.contains(user.userName())) {
            throw new NotPermittedException("Somebody else has to do this: you acted on it before.");
        }
        return user;
    }

    /** Whether whoever is looking may; for what a page offers, never instead of a demand. */
    @Transactional(readOnly = true)
    public boolean isPermitted(Permission act) {
        OfficeUser user = signedIn();
        return canAct(user) && act.isOpenTo(user.roles());
    }

    /** Whether this server shows an invented election, with accounts that everybody may use. */
    public boolean isDemonstration() {
        return settings.demo();
    }

    /** Whoever is looking, able to act or not; a visitor where nobody signed in. */
    @Transactional(readOnly = true)
    public OfficeUser signedIn() {
        Authentication signedIn = SecurityContextHolder.getContext().getAuthentication();
        boolean nobody =
                signedIn == null || !signedIn.isAuthenticated() || signedIn instanceof AnonymousAuthenticationToken;
        return nobody
                ? OfficeUser.VISITOR
                : users.find(new UserName(signedIn.getName()))
                        .orElseThrow(() -> new NotPermittedException("There is no such account any more."));
    }

    /** Whoever signed in, on an account that can be used; a one-time password is enough. */
    OfficeUser demandSignedIn() {
        OfficeUser user = signedIn();
        if (user.isVisitor()) {
            throw new NotPermittedException("Sign in first.");
        }
        if (!isUsable(user)) {
            throw new NotPermittedException("This account cannot be used.");
        }
        return user;
    }

    boolean canAct(OfficeUser user) {
        return isUsable(user) && !user.passwordIsOneTime();
    }

    private boolean isUsable(OfficeUser user) {
        return user.enabled() && (!user.demo() || settings.demo());
    }
}
