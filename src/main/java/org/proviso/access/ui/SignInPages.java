package org.proviso.access.ui;

import org.proviso.access.PlainPages;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The addresses of this room's pages. */
@Configuration(proxyBeanMethods = false)
class SignInPages {

    @Bean
    PlainPages signInAddresses() {
        return PlainPages.forSignedIn(SignInController.SIGN_IN, SignInController.SIGN_OUT, PasswordController.PASSWORD);
    }
}
