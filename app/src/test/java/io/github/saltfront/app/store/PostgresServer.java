package io.github.saltfront.app.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A PostgreSQL server of its own on loopback, in a folder that is deleted with it. */
final class PostgresServer implements AutoCloseable {
    private static final Path INSTALLED = Path.of("/usr/lib/postgresql");
    private static final String USER = "cook";

    private final Path bin;
    private final Path folder;
    private final int port;

    private PostgresServer(Path bin, Path folder, int port) {
        this.bin = bin;
        this.folder = folder;
        this.port = port;
    }

    /** Returns the programs of the newest version that is installed. */
    static Optional<Path> installed() {
        if (!Files.isDirectory(INSTALLED)) {
            return Optional.empty();
        }
        try (Stream<Path> versions = Files.list(INSTALLED)) {
            return versions.map(version -> version.resolve("bin"))
                    .filter(bin -> Files.isExecutable(bin.resolve("initdb")))
                    .max(Comparator.comparingInt(
                            bin -> Integer.parseInt(String.valueOf(bin.getName(bin.getNameCount() - 2)))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static PostgresServer start(Path bin) throws IOException {
        Path folder = Files.createTempDirectory("saltfront-pg");
        int port;
        try (ServerSocket free = new ServerSocket(0)) {
            port = free.getLocalPort();
        }
        PostgresServer server = new PostgresServer(bin, folder, port);
        if (isRoot()) {
            run(List.of("chown", "postgres", folder.toString()));
        }
        server.runAsUser("initdb", "-D", server.data(), "-U", USER, "-A", "trust", "-E", "UTF8", "--no-sync");
        server.startAgain();
        return server;
    }

    void startAgain() {
        String options = "-p " + port + " -c listen_addresses=127.0.0.1 -c unix_socket_directories=" + folder;
        runAsUser("pg_ctl", "-D", data(), "-w", "-l", folder.resolve("log").toString(), "-o", options, "start");
    }

    void stop() {
        runAsUser("pg_ctl", "-D", data(), "-m", "fast", "-w", "stop");
    }

    String address() {
        return "jdbc:postgresql://127.0.0.1:" + port + "/postgres?user=" + USER;
    }

    private String data() {
        return folder.resolve("data").toString();
    }

    /** The server refuses to run as root. */
    private void runAsUser(String program, String... arguments) {
        List<String> command = new ArrayList<>();
        if (isRoot()) {
            command.addAll(List.of("runuser", "-u", "postgres", "--"));
        }
        command.add(bin.resolve(program).toString());
        command.addAll(List.of(arguments));
        run(command);
    }

    private static boolean isRoot() {
        return "root".equals(System.getProperty("user.name"));
    }

    private static void run(List<String> command) {
        try {
            Process process = new ProcessBuilder(command)
                    .directory(Path.of("/").toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (!process.waitFor(60, TimeUnit.SECONDS) || process.exitValue() != 0) {
                process.destroyForcibly();
                throw new IllegalStateException("failed: " + String.join(" ", command));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() {
        stop();
        run(List.of("rm", "-rf", folder.toString()));
    }
}
