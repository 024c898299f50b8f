package io.github.saltfront.app.web;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The names under which this computer answers. */
final class Addresses {
    private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");

    private Addresses() {}

    /** Returns the addresses of this computer in its local networks, IPv4 first. */
    static List<String> local() {
        List<String> four = new ArrayList<>();
        List<String> six = new ArrayList<>();
        try {
            for (NetworkInterface network : Collections.list(NetworkInterface.getNetworkInterfaces())) {
                if (!network.isUp() || network.isLoopback()) {
                    continue;
                }
                for (InetAddress address : Collections.list(network.getInetAddresses())) {
                    if (address instanceof Inet4Address) {
                        four.add(address.getHostAddress());
                    } else if (!address.isLinkLocalAddress()) {
                        six.add("[" + address.getHostAddress().replaceAll("%.*", "") + "]");
                    }
                }
            }
        } catch (SocketException e) {
            return four;
        }
        four.addAll(six);
        return four;
    }

    /** Returns the names a browser may call this server by; another one means that a page of another site got here. */
    static Set<String> allowed(boolean lan) {
        Set<String> names = new LinkedHashSet<>(LOOPBACK);
        if (lan) {
            names.addAll(local());
            try {
                String name = InetAddress.getLocalHost().getHostName().toLowerCase(Locale.ROOT);
                names.add(name);
                names.add(name + ".local");
            } catch (java.net.UnknownHostException e) {
                return names; // a computer without a name is called by its address
            }
        }
        return names;
    }
}
