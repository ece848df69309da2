package org.proviso.access;

import org.proviso.core.UserName;
import org.springframework.security.core.userdetails.User;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The accounts as the sign-in asks for them. A closed account, or a demo account outside a demo, cannot sign in. */
@Component
class SignInUsers implements UserDetailsService {

    private final UserStore users;
    private final AccessSettings settings;

    SignInUsers(UserStore users, AccessSettings settings) {
        this.users = users;
        this.settings = settings;
    }

    @Override
    @Transactional(readOnly = true)
    public UserDetails loadUserByUsername(String userName) {
        OfficeUser user = UserName.find(userName)
                .flatMap(users::find)
                .orElseThrow(() -> new UsernameNotFoundException("no such account"));
        return User.withUsername(user.userName().value())
                .password(users.passwordHash(user.userName()))
                .roles(user.roles().stream().map(Role::name).toArray(String[]::new))
                .disabled(!user.enabled() || (user.demo() && !settings.demo()))
                .build();
    }
}
