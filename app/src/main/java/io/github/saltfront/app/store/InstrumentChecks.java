package io.github.saltfront.app.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;

/** The checks of the thermometers. */
public final class InstrumentChecks {
    private static final String COLUMNS =
            "id, instrument, day, ice_c, boiling_c, boiling_point_c, boiling_bound_k, step_k, note, created_ms";

    private final Jdbi jdbi;

    InstrumentChecks(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /**
     * Adds a check.
     *
     * @param check the check
     */
    public void add(StoredCheck check) {
        jdbi.useHandle(handle -> handle.createUpdate(
                        "insert into instrument_check (" + COLUMNS
                                + ") values (:id, :instrument, :day, :ice, :boiling, :point, :bound, :step, :note, :created) on conflict do nothing")
                .bind("id", check.id())
                .bind("instrument", check.instrument())
                .bind("day", check.day())
                .bind("ice", check.iceC())
                .bind("boiling", check.boiling().map(StoredCheck.Boiling::readingC))
                .bind("point", check.boiling().map(StoredCheck.Boiling::pointC))
                .bind("bound", check.boiling().map(StoredCheck.Boiling::boundK))
                .bind("step", check.stepK())
                .bind("note", check.note())
                .bind("created", check.created())
                .execute());
    }

    /**
     * Lists the checks of one thermometer, the first day first.
     *
     * @param instrument its name
     * @return the checks
     */
    public List<StoredCheck> of(String instrument) {
        return jdbi.withHandle(handle -> handle.createQuery("select " + COLUMNS
                        + " from instrument_check where lower(instrument) = lower(:name) order by day, created_ms, id")
                .bind("name", instrument)
                .map((row, context) -> check(row))
                .list());
    }

    /** Returns the names of all thermometers that were checked, in order of the alphabet. */
    public List<String> instruments() {
        return jdbi.withHandle(
                handle -> handle.createQuery("select min(instrument) from instrument_check group by lower(instrument)"
                                + " order by lower(instrument)")
                        .mapTo(String.class)
                        .list());
    }

    private static StoredCheck check(ResultSet row) throws SQLException {
        double boiling = row.getDouble("boiling_c");
        boolean none = row.wasNull();
        return new StoredCheck(
                row.getString("id"),
                row.getString("instrument"),
                row.getString("day"),
                row.getDouble("ice_c"),
                none
                        ? Optional.empty()
                        : Optional.of(new StoredCheck.Boiling(
                                boiling, row.getDouble("boiling_point_c"), row.getDouble("boiling_bound_k"))),
                row.getDouble("step_k"),
                row.getString("note"),
                row.getLong("created_ms"));
    }
}
