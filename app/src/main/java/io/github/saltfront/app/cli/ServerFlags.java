package io.github.saltfront.app.cli;

import io.github.saltfront.app.web.QrCode;
import io.github.saltfront.app.web.WebOptions;
import io.github.saltfront.app.web.WebServer;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Options of the web program, and how it is started and ended. */
final class ServerFlags {
    private static final String DEFAULT_PORT = "8474";

    @Option(
            names = "--port",
            paramLabel = "PORT",
            defaultValue = DEFAULT_PORT,
            description = "Port to listen on; 0 takes any free one. Default: ${DEFAULT-VALUE}.")
    private int port;

    @Option(
            names = "--lan",
            description =
                    "Open it to the devices in your network, behind an access code. Only where you trust the network: the"
                            + " traffic is not encrypted.")
    private boolean lan;

    @Option(names = "--no-browser", description = "Do not open the browser.")
    private boolean quiet;

    @Option(
            names = "--data",
            paramLabel = "FILE",
            description =
                    "File of saved plans and cooks, or a shared server: jdbc:postgresql://HOST/DATABASE?user=NAME; its password"
                            + " is read from the file .pgpass in your home folder. Default: see below.")
    private @Nullable String data;

    /** Starts the server. */
    WebServer start(Path usual) {
        if (port < 0 || port > 65535) {
            throw new IllegalArgumentException(
                    "--port: got " + port + ", expected a number from 0 to 65535; choose one such as 8474.");
        }
        return WebServer.start(new WebOptions(port, lan, DataFile.place(data, usual), Version.text()));
    }

    /** Tells where the server is and waits until it is ended. */
    void serve(WebServer server, String path, PrintWriter out) throws InterruptedException {
        String page = path.isEmpty() || lan ? server.address() : server.address() + path;
        out.println("Saltfront is at " + page);
        tellNetwork(server, out);
        if (lan && !path.isEmpty()) {
            out.println("After the access code the cook is under \"Cooking now\".");
        }
        out.println("Press Ctrl+C to end it.");
        out.flush();
        CountDownLatch end = new CountDownLatch(1);
        Runtime.getRuntime().addShutdownHook(new Thread(() -> {
            server.close();
            end.countDown();
        }));
        if (!quiet) {
            openBrowser(page);
        }
        end.await();
    }

    private static void tellNetwork(WebServer server, PrintWriter out) {
        Optional<String> code = server.accessCode();
        if (code.isEmpty()) {
            return;
        }
        out.println("Access code: " + code.get());
        List<String> addresses = server.lanAddresses();
        if (addresses.isEmpty()) {
            out.println("This computer is in no network; other devices cannot reach it.");
            return;
        }
        addresses.forEach(address -> out.println("In your network: " + address));
        out.println("Or let a phone read this:");
        out.print(new QrCode(addresses.get(0)).text());
    }

    /** Where there is a screen; a failure is no harm, the address is written. */
    private static void openBrowser(String address) {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        List<String> command;
        if (system.contains("mac")) {
            command = List.of("open", address);
        } else if (system.contains("windows")) {
            command = List.of("rundll32", "url.dll,FileProtocolHandler", address);
        } else if (System.getenv("DISPLAY") != null || System.getenv("WAYLAND_DISPLAY") != null) {
            command = List.of("xdg-open", address);
        } else {
            return;
        }
        try {
            new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            return; // there is no such command
        }
    }
}
