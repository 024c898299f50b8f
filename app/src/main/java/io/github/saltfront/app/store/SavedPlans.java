package io.github.saltfront.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** The saved plans. What is deleted can be brought back until it is purged. */
public final class SavedPlans {
    private static final String COLUMNS = "id, title, request, program_version, created_ms, changed_ms";

    private final Jdbi jdbi;

    SavedPlans(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /**
     * Lists plans, the last changed first.
     *
     * @param word what title or request must hold; empty for all
     * @return the plans
     */
    public List<SavedPlan> list(String word) {
        String pattern = "%" + word.toLowerCase(Locale.ROOT).replaceAll("([!%_])", "!$1") + "%";
        return jdbi.withHandle(handle -> handle.createQuery("select " + COLUMNS
                        + " from saved_plan where deleted_ms is null and (lower(title) like :word escape '!'"
                        + " or lower(request) like :word escape '!') order by changed_ms desc, id")
                .bind("word", pattern)
                .map((row, context) -> plan(row))
                .list());
    }

    /**
     * Finds a plan.
     *
     * @param id its id
     * @return the plan, unless there is none or it is deleted
     */
    public Optional<SavedPlan> find(String id) {
        return jdbi.withHandle(handle -> handle.createQuery(
                        "select " + COLUMNS + " from saved_plan where id = :id and deleted_ms is null")
                .bind("id", id)
                .map((row, context) -> plan(row))
                .findOne());
    }

    /**
     * Saves a new plan.
     *
     * @param plan the plan
     */
    public void add(SavedPlan plan) {
        jdbi.useHandle(handle -> insert(handle, plan));
    }

    /**
     * Adds those plans whose id is not there yet, all or, after a failure, none.
     *
     * @param plans the plans
     * @return how many were added
     */
    public int addMissing(List<SavedPlan> plans) {
        return jdbi.inTransaction(handle -> {
            int added = 0;
            for (SavedPlan plan : plans) {
                added += insert(handle, plan);
            }
            return added;
        });
    }

    private static int insert(Handle handle, SavedPlan plan) {
        // a plan that was deleted and comes with an import is wanted again
        return handle.createUpdate("insert into saved_plan (" + COLUMNS
                        + ") values (:id, :title, :request, :version, :created, :changed) on conflict (id) do update set"
                        + " deleted_ms = null, title = excluded.title, request = excluded.request, changed_ms ="
                        + " excluded.changed_ms where saved_plan.deleted_ms is not null")
                .bind("id", plan.id())
                .bind("title", plan.title())
                .bind("request", plan.request())
                .bind("version", plan.programVersion())
                .bind("created", plan.created())
                .bind("changed", plan.changed())
                .execute();
    }

    /**
     * Renames a plan.
     *
     * @param id its id
     * @param title its new title
     * @param now present time [ms since 1970]
     * @return whether there is such a plan
     */
    public boolean rename(String id, String title, long now) {
        return update(
                "update saved_plan set title = :title, changed_ms = :now where id = :id and deleted_ms is null",
                id,
                title,
                now);
    }

    /**
     * Deletes a plan so that it can be brought back.
     *
     * @param id its id
     * @param now present time [ms since 1970]
     * @return whether there is such a plan
     */
    public boolean delete(String id, long now) {
        return update("update saved_plan set deleted_ms = :now where id = :id and deleted_ms is null", id, "", now);
    }

    /**
     * Brings a deleted plan back.
     *
     * @param id its id
     * @return whether there is such a plan
     */
    public boolean restore(String id) {
        return update("update saved_plan set deleted_ms = null where id = :id and deleted_ms is not null", id, "", 0);
    }

    /**
     * Removes for good what was deleted before a time.
     *
     * @param time the time [ms since 1970]
     */
    public void purge(long time) {
        jdbi.useHandle(handle -> handle.createUpdate("delete from saved_plan where deleted_ms < :time")
                .bind("time", time)
                .execute());
    }

    private boolean update(String sql, String id, String title, long now) {
        return jdbi.withHandle(handle -> {
            try (var update = handle.createUpdate(sql)) {
                update.bind("id", id);
                if (sql.contains(":title")) {
                    update.bind("title", title);
                }
                if (sql.contains(":now")) {
                    update.bind("now", now);
                }
                return update.execute() > 0;
            }
        });
    }

    private static SavedPlan plan(ResultSet row) throws SQLException {
        return new SavedPlan(
                row.getString("id"),
                row.getString("title"),
                row.getString("request"),
                row.getString("program_version"),
                row.getLong("created_ms"),
                row.getLong("changed_ms"));
    }
}
