package io.github.saltfront.app.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;

/** Trials, the tokens of their tasters, and the answers as they arrive. */
public final class Trials {
    private final Jdbi jdbi;

    Trials(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /**
     * Adds a trial.
     *
     * @param trial the trial
     * @param tokens token of each taster, the first taster's first
     */
    public void add(StoredTrial trial, List<String> tokens) {
        jdbi.useTransaction(handle -> {
            handle.createUpdate(
                            "insert into trial (id, title, document, created_ms) values (:id, :title, :document, :created)")
                    .bind("id", trial.id())
                    .bind("title", trial.title())
                    .bind("document", trial.document())
                    .bind("created", trial.created())
                    .execute();
            for (int i = 0; i < tokens.size(); i++) {
                handle.createUpdate("insert into trial_taster (token, trial_id, taster) values (:token, :id, :taster)")
                        .bind("token", tokens.get(i))
                        .bind("id", trial.id())
                        .bind("taster", i + 1)
                        .execute();
            }
        });
    }

    /**
     * Adds a trial with its answers unless there is one of its id, even a deleted one.
     *
     * @param trial the trial
     * @param tokens token of each taster, the first taster's first
     * @param answers what they said
     * @return whether it was added
     */
    public boolean addMissing(StoredTrial trial, List<String> tokens, List<StoredAnswer> answers) {
        // all or nothing: a trial without its answers would count as known the next time
        return jdbi.inTransaction(handle -> {
            if (!query("id = :id", trial.id()).isEmpty()) {
                return false;
            }
            add(trial, tokens);
            answer(trial.id(), answers);
            return true;
        });
    }

    /** Lists the trials, the last made first. */
    public List<StoredTrial> list() {
        return query("deleted_ms is null order by created_ms desc, id", "");
    }

    /**
     * Finds a trial.
     *
     * @param id its id
     * @return the trial, unless there is none or it is deleted
     */
    public Optional<StoredTrial> find(String id) {
        return query("deleted_ms is null and id = :id", id).stream().findFirst();
    }

    private List<StoredTrial> query(String where, String id) {
        return jdbi.withHandle(handle -> {
            var query = handle.createQuery("select id, title, document, created_ms from trial where " + where);
            if (!id.isEmpty()) {
                query.bind("id", id);
            }
            return query.map((row, context) -> new StoredTrial(
                            row.getString("id"),
                            row.getString("title"),
                            row.getString("document"),
                            row.getLong("created_ms")))
                    .list();
        });
    }

    /**
     * Deletes a trial; its tasters' addresses then lead nowhere.
     *
     * @param id its id
     * @param now present time [ms since 1970]
     * @return whether there is such a trial
     */
    public boolean delete(String id, long now) {
        return jdbi.withHandle(handle ->
                handle.createUpdate("update trial set deleted_ms = :now where id = :id and deleted_ms is null")
                                .bind("id", id)
                                .bind("now", now)
                                .execute()
                        > 0);
    }

    /**
     * Returns the tokens of a trial's tasters.
     *
     * @param id id of the trial
     * @return tokens, the first taster's first
     */
    public List<String> tokens(String id) {
        return jdbi.withHandle(
                handle -> handle.createQuery("select token from trial_taster where trial_id = :id order by taster")
                        .bind("id", id)
                        .mapTo(String.class)
                        .list());
    }

    /**
     * A taster of a trial.
     *
     * @param trial id of the trial
     * @param taster the taster, from 1
     */
    public record Taster(String trial, int taster) {}

    /**
     * Finds the taster of a token.
     *
     * @param token the token
     * @return the taster
     */
    public Optional<Taster> taster(String token) {
        return jdbi.withHandle(
                handle -> handle.createQuery("select trial_id, taster from trial_taster where token = :token")
                        .bind("token", token)
                        .map((row, context) -> new Taster(row.getString("trial_id"), row.getInt("taster")))
                        .findOne());
    }

    /**
     * Takes the answers of one taster, all or, after a failure, none; an answer given before is kept as it was.
     *
     * @param trial id of the trial
     * @param answers the answers
     * @return how many were new
     */
    public int answer(String trial, List<StoredAnswer> answers) {
        return jdbi.inTransaction(handle -> {
            int added = 0;
            for (StoredAnswer answer : answers) {
                added += handle.createUpdate(
                                "insert into trial_answer"
                                        + " (trial_id, taster, round, code, answer, note, received_ms)"
                                        + " values (:trial, :taster, :round, :code, :answer, :note, :received) on conflict do nothing")
                        .bind("trial", trial)
                        .bind("taster", answer.taster())
                        .bind("round", answer.round())
                        .bind("code", answer.code())
                        .bind("answer", answer.answer())
                        .bind("note", answer.note())
                        .bind("received", answer.received())
                        .execute();
            }
            return added;
        });
    }

    /**
     * Returns the answers of a trial.
     *
     * @param trial id of the trial
     * @return answers by taster, round and code
     */
    public List<StoredAnswer> answers(String trial) {
        return jdbi.withHandle(handle -> handle.createQuery("select taster, round, code, answer, note, received_ms"
                        + " from trial_answer where trial_id = :trial order by taster, round, code")
                .bind("trial", trial)
                .map((row, context) -> new StoredAnswer(
                        row.getInt("taster"),
                        row.getInt("round"),
                        row.getString("code"),
                        row.getString("answer"),
                        row.getString("note"),
                        row.getLong("received_ms")))
                .list());
    }

    /**
     * Returns how many answers each trial has.
     *
     * @return counts by id of the trial
     */
    public Map<String, Integer> counts() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        jdbi.useHandle(handle -> handle.createQuery(
                        "select trial_id, count(distinct taster) as n from trial_answer" + " group by trial_id")
                .map((row, context) -> Map.entry(row.getString("trial_id"), row.getInt("n")))
                .forEach(entry -> counts.put(entry.getKey(), entry.getValue())));
        return counts;
    }
}
