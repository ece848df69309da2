package org.proviso.access;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;

/**
 * Where a request comes from, as tries are counted: the whole address, or of IPv6 its first four groups, since one
 * household has a network of the others.
 */
public final class ClientAddress {

    private static final int GROUPS = 4;

    private ClientAddress() {}

    public static String of(HttpServletRequest request) {
        return network(request.getRemoteAddr());
    }

    static String network(String address) {
        String[] groups = address.split(":", -1);
        if (groups.length <= GROUPS || address.contains(".") || address.startsWith("::")) {
            return address;
        }
        int kept = address.contains("::") ? Math.min(GROUPS, address.split("::", 0)[0].split(":", 0).length) : GROUPS;
        return String.join(":", Arrays.copyOf(groups, kept));
    }
}
