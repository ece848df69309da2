package org.proviso.board.ui;

import org.proviso.access.PlainPages;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The addresses of this room's plain pages. */
@Configuration(proxyBeanMethods = false)
class PlainBoardPages {

    @Bean
    PlainPages roomAddresses() {
        return PlainPages.forEveryone("/room", "/room/**");
    }

    @Bean
    PlainPages minutesAddresses() {
        return PlainPages.forSignedIn("/board/minutes/**");
    }
}
