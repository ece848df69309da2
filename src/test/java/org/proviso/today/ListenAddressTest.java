package org.proviso.today;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import org.junit.jupiter.api.Test;
import org.springframework.boot.web.embedded.tomcat.TomcatServletWebServerFactory;

/** A demonstration is for this machine only, unless somebody says otherwise. */
class ListenAddressTest {

    private static boolean loopbackOnly(ListenAddress door) {
        TomcatServletWebServerFactory server = new TomcatServletWebServerFactory();
        door.customize(server);
        InetAddress address = server.getAddress();
        assertThat(door.isForThisMachineOnly()).isEqualTo(address != null);
        return address != null && address.isLoopbackAddress();
    }

    @Test
    void a_demonstration_listens_on_the_loopback_address_only() {
        assertThat(loopbackOnly(new ListenAddress(true, ""))).isTrue();
    }

    @Test
    void an_address_set_expressly_and_a_real_office_listen_as_they_are_told() {
        assertThat(loopbackOnly(new ListenAddress(true, "0.0.0.0"))).isFalse();
        assertThat(loopbackOnly(new ListenAddress(false, ""))).isFalse();
    }
}
