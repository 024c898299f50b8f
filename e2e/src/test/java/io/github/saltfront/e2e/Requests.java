package io.github.saltfront.e2e;

import java.nio.charset.StandardCharsets;
import java.util.Base64;

/** Requests whose plans are quick to compute, and the addresses that open them. */
final class Requests {
    /** Pork chops of one inch in the pan, salted just before. */
    static final String CHOP = """
            {"cut":"pork-loin-chop","mass":"185 g","thickness":"1 in","appliance":"pan","salt":"table-salt-fine",\
            "salting":{"treatment":"surface-salt"},"guests":{"vulnerable":"no"},\
            "now":"2099-11-28T12:00+01:00","serve":"2099-11-28T19:00+01:00"}""";

    /** Chicken breast in brine, then in the oven. */
    static final String BREAST = """
            {"cut":"chicken-breast-skinless","mass":"220 g","thickness":"28 mm","appliance":"oven-fan",\
            "salt":"table-salt-fine","salting":{"treatment":"wet-brine"},"guests":{"vulnerable":"no"},\
            "now":"2099-11-28T12:00+01:00","serve":"2099-11-28T19:00+01:00"}""";

    private Requests() {}

    /** Returns the end of the address that opens a request. */
    static String bookmark(String request) {
        return "#plan="
                + Base64.getUrlEncoder().withoutPadding().encodeToString(request.getBytes(StandardCharsets.UTF_8));
    }
}
