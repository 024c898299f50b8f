package io.github.saltfront.app.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * The file of data. Opening it moves it to the present form; before a file with data is changed, a whole copy is put beside it,
 * and where the move fails the file is left as it was.
 */
public final class Database {
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT);
    private static final int BUSY_MS = 5000;
    static final String MIGRATIONS = "classpath:io/github/saltfront/app/store/migration";
    private static final List<Logger> QUIET = List.of(Logger.getLogger("org.flywaydb"));

    private final Jdbi jdbi;
    private final Path file;

    private Database(Jdbi jdbi, Path file) {
        this.jdbi = jdbi;
        this.file = file;
    }

    /**
     * Opens or creates a file.
     *
     * @param file the file; its folder is made
     * @return the database
     * @throws IllegalArgumentException if the file is none of this program, or of a later one
     */
    public static Database open(Path file) {
        return open(file, MIGRATIONS);
    }

    static Database open(Path file, String... migrations) {
        QUIET.forEach(logger -> logger.setLevel(Level.WARNING));
        try {
            Path folder = file.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        DataSource source = source(file);
        try {
            Flyway flyway =
                    Flyway.configure().dataSource(source).locations(migrations).load();
            boolean filled = flyway.info().current() != null;
            if (filled && flyway.info().pending().length > 0) {
                copy(Jdbi.create(source), file);
            }
            flyway.migrate();
        } catch (FlywayException e) {
            throw new IllegalArgumentException(
                    "--data: " + file + " cannot be opened as a file of saved plans and cooks (" + firstLine(e)
                            + "); give another file, or the copy that lies beside it.",
                    e);
        }
        return new Database(Jdbi.create(source), file);
    }

    private static String firstLine(Exception e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("");
    }

    private static DataSource source(Path file) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setBusyTimeout(BUSY_MS);
        config.enforceForeignKeys(true);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
        return source;
    }

    /** A whole copy, consistent even while others write. */
    private static void copy(Jdbi jdbi, Path file) {
        Path copy = file.resolveSibling(
                file.getFileName() + "." + LocalDateTime.now().format(STAMP) + ".backup");
        jdbi.useHandle(
                handle -> handle.execute("vacuum into ?", copy.toAbsolutePath().toString()));
    }

    /** Returns the saved plans. */
    public SavedPlans savedPlans() {
        return new SavedPlans(jdbi);
    }

    /** Returns the cooks that are followed; to be closed by the caller, and only one at a time. */
    public CookStore cooks() {
        return new CookStore(jdbi);
    }

    /** Returns the cooks of the notebook; their pictures are in the folder {@code NAME.photos} beside the file. */
    public NotedCooks notedCooks() {
        return new NotedCooks(jdbi, file.toAbsolutePath().resolveSibling(file.getFileName() + ".photos"));
    }

    /** Returns the checks of the thermometers. */
    public InstrumentChecks instrumentChecks() {
        return new InstrumentChecks(jdbi);
    }

    /** Returns the trials. */
    public Trials trials() {
        return new Trials(jdbi);
    }
}
