package org.proviso.today;

import java.net.InetAddress;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.boot.web.servlet.server.ConfigurableServletWebServerFactory;
import org.springframework.stereotype.Component;

/**
 * Who can reach the server. Everybody may know the passwords of a demonstration, so only this machine reaches it, unless
 * an address to listen on was set expressly.
 */
@Component
class ListenAddress implements WebServerFactoryCustomizer<ConfigurableServletWebServerFactory> {

    private final boolean demo;
    private final String address;

    ListenAddress(@Value("${proviso.demo:false}") boolean demo, @Value("${server.address:}") String address) {
        this.demo = demo;
        this.address = address;
    }

    boolean isForThisMachineOnly() {
        return demo && address.isEmpty();
    }

    @Override
    public void customize(ConfigurableServletWebServerFactory server) {
        if (isForThisMachineOnly()) {
            server.setAddress(InetAddress.getLoopbackAddress());
        }
    }
}
