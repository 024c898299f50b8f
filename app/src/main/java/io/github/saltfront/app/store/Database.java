package io.github.saltfront.app.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.HikariPoolMXBean;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationInfoService;
import org.flywaydb.core.api.MigrationState;
import org.jdbi.v3.core.Jdbi;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * The data: a file of SQLite, or a database of a PostgreSQL server. Opening moves it to the present form; before one with data is
 * changed, a whole copy is made, beside the file or in a schema of its own, and where the move fails the data are left as they were.
 * One web program at a time; commands may read and write beside it.
 */
public final class Database implements AutoCloseable {
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT);
    private static final int BUSY_MS = 5000;
    private static final int CONNECTIONS = 8;
    static final String MIGRATIONS = "classpath:io/github/saltfront/app/store/migration";

    /** The present form of the data: the number of the newest migration. */
    static final int FORM = 20;

    static final String SERVER_MIGRATIONS = "classpath:io/github/saltfront/app/store/migrationpostgresql";
    private static final List<Logger> QUIET =
            List.of(Logger.getLogger("org.flywaydb"), Logger.getLogger("com.zaxxer.hikari"));

    private final Jdbi jdbi;
    private final Path file;
    private final Optional<HikariDataSource> pool;

    private Database(Jdbi jdbi, Path file, Optional<HikariDataSource> pool) {
        this.jdbi = jdbi;
        this.file = file;
        this.pool = pool;
    }

    /**
     * Opens or creates a file.
     *
     * @param file the file; its folder is made
     * @return the database
     * @throws IllegalArgumentException if the file is none of this program, or of a later one
     */
    public static Database open(Path file) {
        return open(DataPlace.of(file));
    }

    /**
     * Opens or creates the data of a place.
     *
     * @param place the place
     * @return the database
     * @throws IllegalArgumentException if they are none of this program, or of a later one, or a server cannot be reached
     */
    public static Database open(DataPlace place) {
        return place.server().isPresent()
                ? openServer(place, place.server().get(), SERVER_MIGRATIONS)
                : open(place.file(), MIGRATIONS);
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
            FileMark mark = FileMark.of(source);
            if (mark.isLaterThan(FORM) && isPresent(migrations)) {
                throw later(file.toString(), String.valueOf(mark.form()));
            }
            if (!mark.equals(FileMark.of(FORM)) || !isPresent(migrations)) {
                int form = migrate(
                        source,
                        file.toString(),
                        () -> {
                            copy(Jdbi.create(source), file);
                            FileMark.NONE.put(source);
                        },
                        migrations);
                FileMark.of(form).put(source);
            }
        } catch (FlywayException | SQLException e) {
            throw new IllegalArgumentException(
                    "--data: " + file + " cannot be opened as a file of saved plans and cooks (" + firstLine(e)
                            + "); give another file, or the copy that lies beside it.",
                    e);
        }
        return new Database(Jdbi.create(source), file, Optional.empty());
    }

    static Database openServer(DataPlace place, String address, String... migrations) {
        QUIET.forEach(logger -> logger.setLevel(Level.SEVERE));
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(address);
        config.setMaximumPoolSize(CONNECTIONS);
        config.setMinimumIdle(1);
        config.setConnectionTimeout(BUSY_MS);
        HikariDataSource pool;
        try {
            pool = new HikariDataSource(config);
        } catch (RuntimeException e) {
            throw unusable(place, e);
        }
        try {
            migrate(pool, place.toString(), () -> copySchema(Jdbi.create(pool)), migrations);
        } catch (FlywayException e) {
            pool.close();
            throw unusable(place, e);
        } catch (RuntimeException e) {
            pool.close();
            throw e;
        }
        return new Database(Jdbi.create(pool), place.file(), Optional.of(pool));
    }

    private static IllegalArgumentException unusable(DataPlace place, Exception e) {
        Throwable cause = e.getCause() == null ? e : e.getCause();
        String reason = String.valueOf(cause.getMessage()).lines().findFirst().orElse("");
        return new IllegalArgumentException(
                "--data: " + place + " cannot be opened (" + reason
                        + "); start the server, check host, database and user, or give a file.",
                e);
    }

    /**
     * Moves data to the present form.
     *
     * @param copy makes a whole copy; called only before data are changed
     * @return the form they have now: the number of the newest migration
     */
    private static int migrate(DataSource source, String name, Runnable copy, String... migrations) {
        Flyway flyway = Flyway.configure()
                .dataSource(source)
                .locations(migrations)
                .ignoreMigrationPatterns(new String[0])
                .load();
        MigrationInfoService info = flyway.info();
        for (MigrationInfo applied : info.applied()) {
            if (applied.getState() == MigrationState.FUTURE_SUCCESS
                    || applied.getState() == MigrationState.FUTURE_FAILED) {
                throw later(name, String.valueOf(applied.getVersion()));
            }
        }
        if (info.current() != null && info.pending().length > 0) {
            copy.run();
        }
        flyway.migrate();
        return flyway.info().current().getVersion().getMajor().intValueExact();
    }

    private static boolean isPresent(String... migrations) {
        return Arrays.equals(migrations, new String[] {MIGRATIONS});
    }

    private static IllegalArgumentException later(String name, String form) {
        return new IllegalArgumentException(
                "--data: " + name + " was written by a later version of this program (got form " + form
                        + ", expected at most " + FORM + "); use that version, or give other data.");
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

    /** All tables, in a schema of their own. */
    private static void copySchema(Jdbi jdbi) {
        jdbi.useTransaction(handle -> {
            String schema = handle.createQuery("select current_schema()")
                    .mapTo(String.class)
                    .one();
            String copy = schema + "_" + LocalDateTime.now().format(STAMP).replace('-', '_') + "_backup";
            handle.execute("create schema " + quoted(copy));
            List<String> tables = handle.createQuery("select table_name from information_schema.tables"
                            + " where table_schema = :schema and table_type = 'BASE TABLE'")
                    .bind("schema", schema)
                    .mapTo(String.class)
                    .list();
            for (String table : tables) {
                handle.execute("create table " + quoted(copy) + "." + quoted(table) + " as table " + quoted(schema)
                        + "." + quoted(table));
            }
        });
    }

    private static String quoted(String name) {
        return "\"" + name.replace("\"", "\"\"") + "\"";
    }

    /** Returns the saved plans. */
    public SavedPlans savedPlans() {
        return new SavedPlans(jdbi);
    }

    /** Returns the cooks that are followed; to be closed by the caller, and only one at a time. */
    public CookStore cooks() {
        return new CookStore(
                jdbi,
                () -> pool.map(HikariDataSource::getHikariPoolMXBean)
                        .ifPresent(HikariPoolMXBean::softEvictConnections));
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

    /** Lets go of the connections to a server. */
    @Override
    public void close() {
        pool.ifPresent(HikariDataSource::close);
    }
}
