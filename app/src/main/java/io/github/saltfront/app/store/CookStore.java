package io.github.saltfront.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * The cooks and all that was told of them. What is appended is on the disk when its future is done, not before: acknowledge
 * nothing earlier.
 */
public final class CookStore implements AutoCloseable {
    private static final String COOK = "id, title, request, options, program_version, started_ms, speed, ended_ms";
    private static final String READING = "cook_id, probe, role, time_ms, value, unit, source, received_ms";

    private final Jdbi jdbi;
    private final GroupCommit commits;

    CookStore(Jdbi jdbi, Runnable afterBreak) {
        this.jdbi = jdbi;
        commits = new GroupCommit(jdbi, afterBreak);
    }

    /**
     * Begins a cook.
     *
     * @param cook the cook
     */
    public void begin(StoredCook cook) {
        commits.run(handle -> handle.createUpdate("insert into cook (" + COOK
                                + ") values (:id, :title, :request, :options, :version, :started, :speed, null)")
                        .bind("id", cook.id())
                        .bind("title", cook.title())
                        .bind("request", cook.request())
                        .bind("options", cook.options())
                        .bind("version", cook.programVersion())
                        .bind("started", cook.started())
                        .bind("speed", cook.speed())
                        .execute())
                .join();
    }

    /**
     * Ends a cook.
     *
     * @param id its id
     * @param now present time [ms since 1970]
     */
    public void end(String id, long now) {
        commits.run(handle -> handle.createUpdate("update cook set ended_ms = :now where id = :id and ended_ms is null")
                        .bind("id", id)
                        .bind("now", now)
                        .execute())
                .join();
    }

    /** Returns all cooks, the last begun first. */
    public List<StoredCook> cooks() {
        return jdbi.withHandle(
                handle -> handle.createQuery("select " + COOK + " from cook order by started_ms desc, id")
                        .map((row, context) -> cook(row))
                        .list());
    }

    /**
     * Finds a cook.
     *
     * @param id its id
     * @return the cook, if there is one
     */
    public Optional<StoredCook> find(String id) {
        return jdbi.withHandle(handle -> handle.createQuery("select " + COOK + " from cook where id = :id")
                .bind("id", id)
                .map((row, context) -> cook(row))
                .findOne());
    }

    /**
     * Returns the readings of a cook.
     *
     * @param id its id
     * @return the readings in the order in which they came
     */
    public List<StoredReading> readings(String id) {
        return jdbi.withHandle(handle -> handle.createQuery(
                        "select " + READING + " from cook_reading where cook_id = :id order by number")
                .bind("id", id)
                .map((row, context) -> reading(row))
                .list());
    }

    /**
     * Returns what was told of a cook.
     *
     * @param id its id
     * @return the events in the order in which they came
     */
    public List<StoredEvent> events(String id) {
        return jdbi.withHandle(handle -> handle.createQuery(
                        "select number, cook_id, kind, content, received_ms from cook_event where cook_id = :id order by number")
                .bind("id", id)
                .map((row, context) -> new StoredEvent(
                        row.getLong("number"),
                        row.getString("cook_id"),
                        row.getString("kind"),
                        row.getString("content"),
                        row.getLong("received_ms")))
                .list());
    }

    /**
     * Appends readings, all or, after a failure, none. One that is there already is not appended again.
     *
     * @param readings the readings
     * @return those that are new; done when they are on the disk
     */
    public CompletableFuture<List<StoredReading>> append(List<StoredReading> readings) {
        return commits.run(handle ->
                readings.stream().filter(reading -> insert(handle, reading)).toList());
    }

    private static boolean insert(Handle handle, StoredReading reading) {
        return handle.createUpdate("insert into cook_reading (" + READING
                                + ") values (:cook, :probe, :role, :time, :value, :unit, :source, :received)"
                                + " on conflict do nothing")
                        .bind("cook", reading.cook())
                        .bind("probe", reading.probe())
                        .bind("role", reading.role())
                        .bind("time", reading.time())
                        .bind("value", reading.value())
                        .bind("unit", reading.unit())
                        .bind("source", reading.source())
                        .bind("received", reading.received())
                        .execute()
                > 0;
    }

    /**
     * Appends an event.
     *
     * @param event the event, without number
     * @return the event with its number; done when it is on the disk
     */
    public CompletableFuture<StoredEvent> append(StoredEvent event) {
        return commits.run(handle -> {
            long number = handle.createUpdate("insert into cook_event (cook_id, kind, content, received_ms)"
                            + " values (:cook, :kind, :content, :received)")
                    .bind("cook", event.cook())
                    .bind("kind", event.kind())
                    .bind("content", event.content())
                    .bind("received", event.received())
                    .executeAndReturnGeneratedKeys("number")
                    .mapTo(Long.class)
                    .one();
            return new StoredEvent(number, event.cook(), event.kind(), event.content(), event.received());
        });
    }

    private static StoredCook cook(ResultSet row) throws SQLException {
        long ended = row.getLong("ended_ms");
        OptionalLong end = row.wasNull() ? OptionalLong.empty() : OptionalLong.of(ended);
        return new StoredCook(
                row.getString("id"),
                row.getString("title"),
                row.getString("request"),
                row.getString("options"),
                row.getString("program_version"),
                row.getLong("started_ms"),
                row.getDouble("speed"),
                end);
    }

    private static StoredReading reading(ResultSet row) throws SQLException {
        return new StoredReading(
                row.getString("cook_id"),
                row.getString("probe"),
                row.getString("role"),
                row.getLong("time_ms"),
                row.getDouble("value"),
                row.getString("unit"),
                row.getString("source"),
                row.getLong("received_ms"));
    }

    /** Writes what waits, then stops. */
    @Override
    public void close() {
        commits.close();
    }
}
