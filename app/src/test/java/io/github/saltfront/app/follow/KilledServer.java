package io.github.saltfront.app.follow;

import io.github.saltfront.app.web.WebOptions;
import io.github.saltfront.app.web.WebServer;
import java.nio.file.Path;

/** A server in a process of its own, to be killed. */
public final class KilledServer {
    private KilledServer() {}

    /**
     * Serves until it is killed.
     *
     * @param args the file of data
     */
    public static void main(String[] args) throws InterruptedException {
        WebServer server = WebServer.start(new WebOptions(0, false, Path.of(args[0]), "test"), Stove.SMALL);
        System.out.println("port " + server.port());
        System.out.flush();
        Thread.sleep(Long.MAX_VALUE);
    }
}
