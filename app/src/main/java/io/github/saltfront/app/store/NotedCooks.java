package io.github.saltfront.app.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** The cooks of the notebook and their pictures. What is deleted can be brought back until it is purged. */
public final class NotedCooks {
    private static final String COLUMNS = "id, title, cooked_on, profile, document, planned, evidence, readings,"
            + " program_version, created_ms, changed_ms";

    private final Jdbi jdbi;
    private final Path photos;

    NotedCooks(Jdbi jdbi, Path photos) {
        this.jdbi = jdbi;
        this.photos = photos;
    }

    /**
     * Lists cooks, the latest day first.
     *
     * @param word what title, notes or request must hold; empty for all
     * @param tag tag they must have; empty for all
     * @return the cooks
     */
    public List<NotedCook> list(String word, String tag) {
        String pattern = "%" + word.toLowerCase(Locale.ROOT).replaceAll("([!%_])", "!$1") + "%";
        return jdbi.withHandle(handle -> tagged(
                handle,
                handle.createQuery("select " + COLUMNS + " from noted_cook where deleted_ms is null"
                                + " and (lower(title) like :word escape '!' or lower(document) like :word escape '!')"
                                + " and (:tag = '' or exists (select 1 from noted_cook_tag t where t.cook_id = noted_cook.id and t.tag = :tag))"
                                + " order by cooked_on desc, created_ms desc, id")
                        .bind("word", pattern)
                        .bind("tag", tag.toLowerCase(Locale.ROOT))
                        .map((row, context) -> cook(row))
                        .list()));
    }

    /**
     * Finds a cook.
     *
     * @param id its id, or the beginning of it if no other begins so
     * @return the cook, unless there is none or it is deleted
     */
    public Optional<NotedCook> find(String id) {
        if (id.isEmpty()) {
            return Optional.empty();
        }
        String pattern = id.replaceAll("([!%_])", "!$1") + "%";
        List<NotedCook> found = jdbi.withHandle(handle -> tagged(
                handle,
                handle.createQuery("select " + COLUMNS
                                + " from noted_cook where id like :id escape '!' and deleted_ms is null limit 2")
                        .bind("id", pattern)
                        .map((row, context) -> cook(row))
                        .list()));
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static List<NotedCook> tagged(Handle handle, List<NotedCook> cooks) {
        Map<String, List<String>> tags = handle
                .createQuery("select cook_id, tag from noted_cook_tag order by tag")
                .map((row, context) -> Map.entry(row.getString("cook_id"), row.getString("tag")))
                .list()
                .stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey, Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
        return cooks.stream()
                .map(cook -> cook.tagged(tags.getOrDefault(cook.id(), List.of())))
                .toList();
    }

    /**
     * Saves a cook, in place of the one of the same id if there is one.
     *
     * @param cook the cook
     */
    public void put(NotedCook cook) {
        jdbi.useTransaction(handle -> put(handle, cook));
    }

    /**
     * Adds those cooks whose id is not there yet, all or, after a failure, none.
     *
     * @param cooks the cooks
     * @param pictures their pictures, whose files are there already
     * @return how many cooks were added
     */
    public int addMissing(List<NotedCook> cooks, List<StoredPhoto> pictures) {
        return jdbi.inTransaction(handle -> {
            int added = 0;
            for (NotedCook cook : cooks) {
                boolean known =
                        handle.createQuery("select count(*) from noted_cook where id = :id and deleted_ms is null")
                                        .bind("id", cook.id())
                                        .mapTo(Integer.class)
                                        .one()
                                > 0;
                if (!known) {
                    put(handle, cook);
                    added++;
                }
            }
            pictures.forEach(photo -> addPhoto(handle, photo));
            return added;
        });
    }

    private static void put(Handle handle, NotedCook cook) {
        handle.createUpdate(
                        "insert into noted_cook (" + COLUMNS
                                + ") values (:id, :title, :day, :profile, :document, :planned, :evidence, :readings, :version,"
                                + " :created, :changed) on conflict (id) do update set title = excluded.title,"
                                + " cooked_on = excluded.cooked_on, profile = excluded.profile, document = excluded.document,"
                                + " planned = excluded.planned, evidence = excluded.evidence, readings = excluded.readings,"
                                + " program_version = excluded.program_version, changed_ms = excluded.changed_ms, deleted_ms = null")
                .bind("id", cook.id())
                .bind("title", cook.title())
                .bind("day", cook.cookedOn())
                .bind("profile", cook.profile())
                .bind("document", cook.document())
                .bind("planned", cook.planned())
                .bind("evidence", cook.evidence())
                .bind("readings", cook.readings())
                .bind("version", cook.programVersion())
                .bind("created", cook.created())
                .bind("changed", cook.changed())
                .execute();
        handle.createUpdate("delete from noted_cook_tag where cook_id = :id")
                .bind("id", cook.id())
                .execute();
        for (String tag : cook.tags()) {
            handle.createUpdate("insert into noted_cook_tag (cook_id, tag) values (:id, :tag) on conflict do nothing")
                    .bind("id", cook.id())
                    .bind("tag", tag.toLowerCase(Locale.ROOT))
                    .execute();
        }
    }

    /**
     * Deletes a cook so that it can be brought back.
     *
     * @param id its id
     * @param now present time [ms since 1970]
     * @return whether there is such a cook
     */
    public boolean delete(String id, long now) {
        return mark(id, "deleted_ms = :now where id = :id and deleted_ms is null", now);
    }

    /**
     * Brings a deleted cook back.
     *
     * @param id its id
     * @return whether there is such a cook
     */
    public boolean restore(String id) {
        return mark(id, "deleted_ms = null where id = :id and deleted_ms is not null and :now = 0", 0);
    }

    private boolean mark(String id, String set, long now) {
        return jdbi.withHandle(handle -> handle.createUpdate("update noted_cook set " + set)
                        .bind("id", id)
                        .bind("now", now)
                        .execute()
                > 0);
    }

    /**
     * Removes for good what was deleted before a time, with its pictures.
     *
     * @param time the time [ms since 1970]
     */
    public void purge(long time) {
        List<String> gone = jdbi.inTransaction(handle -> {
            List<String> ids = handle.createQuery(
                            "select p.id from noted_cook_photo p join noted_cook c on c.id = p.cook_id where c.deleted_ms < :time")
                    .bind("time", time)
                    .mapTo(String.class)
                    .list();
            handle.createUpdate("delete from noted_cook where deleted_ms < :time")
                    .bind("time", time)
                    .execute();
            return ids;
        });
        gone.forEach(this::removeFile);
    }

    /**
     * Lists the pictures of a cook, the first added first.
     *
     * @param cook id of the cook
     * @return the pictures
     */
    public List<StoredPhoto> photosOf(String cook) {
        return jdbi.withHandle(handle -> handle.createQuery(
                        "select id, cook_id, caption, width, height, added_ms from noted_cook_photo where cook_id = :cook"
                                + " order by added_ms, id")
                .bind("cook", cook)
                .map((row, context) -> new StoredPhoto(
                        row.getString("id"),
                        row.getString("cook_id"),
                        row.getString("caption"),
                        row.getInt("width"),
                        row.getInt("height"),
                        row.getLong("added_ms")))
                .list());
    }

    /**
     * Adds a picture: first its file, then its row, so that no row is without a file.
     *
     * @param photo the picture
     * @param jpeg its content
     */
    public void addPhoto(StoredPhoto photo, byte[] jpeg) {
        write(photo.id(), jpeg);
        jdbi.useHandle(handle -> addPhoto(handle, photo));
    }

    private static void addPhoto(Handle handle, StoredPhoto photo) {
        handle.createUpdate("insert into noted_cook_photo (id, cook_id, caption, width, height, added_ms)"
                        + " values (:id, :cook, :caption, :width, :height, :added) on conflict do nothing")
                .bind("id", photo.id())
                .bind("cook", photo.cook())
                .bind("caption", photo.caption())
                .bind("width", photo.width())
                .bind("height", photo.height())
                .bind("added", photo.added())
                .execute();
    }

    /**
     * Writes the file of a picture.
     *
     * @param id id of the picture
     * @param jpeg its content
     */
    public void write(String id, byte[] jpeg) {
        try {
            Files.createDirectories(photos);
            Path partial = photos.resolve(id + ".part");
            Files.write(partial, jpeg);
            Files.move(partial, file(id), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException("The picture cannot be written to " + photos + ".", e);
        }
    }

    /**
     * Reads a picture.
     *
     * @param id id of the picture
     * @return its content as JPEG; empty if there is none
     */
    public Optional<byte[]> read(String id) {
        boolean known =
                jdbi.withHandle(handle -> handle.createQuery("select count(*) from noted_cook_photo where id = :id")
                                .bind("id", id)
                                .mapTo(Integer.class)
                                .one()
                        > 0);
        try {
            return known && Files.exists(file(id)) ? Optional.of(Files.readAllBytes(file(id))) : Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Deletes a picture for good.
     *
     * @param id id of the picture
     * @return whether there was one
     */
    public boolean deletePhoto(String id) {
        boolean known = jdbi.withHandle(handle -> handle.createUpdate("delete from noted_cook_photo where id = :id")
                        .bind("id", id)
                        .execute()
                > 0);
        if (known) {
            removeFile(id);
        }
        return known;
    }

    private Path file(String id) {
        return photos.resolve(id + ".jpg");
    }

    private void removeFile(String id) {
        try {
            Files.deleteIfExists(file(id));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Lets a kitchen forget what it learned until now.
     *
     * @param profile the kitchen
     * @param quantity what is forgotten
     * @param now present time [ms since 1970]
     */
    public void reset(String profile, String quantity, long now) {
        jdbi.useHandle(handle -> handle.createUpdate(
                        "insert into learning_reset (profile, quantity, at_ms) values (:profile, :quantity, :now)"
                                + " on conflict (profile, quantity) do update set at_ms = excluded.at_ms")
                .bind("profile", profile)
                .bind("quantity", quantity)
                .bind("now", now)
                .execute());
    }

    /**
     * Returns when a kitchen last forgot, by quantity.
     *
     * @param profile the kitchen
     * @return times [ms since 1970]
     */
    public Map<String, Long> resets(String profile) {
        return jdbi.withHandle(handle -> handle
                .createQuery("select quantity, at_ms from learning_reset where profile = :profile")
                .bind("profile", profile)
                .map((row, context) -> Map.entry(row.getString("quantity"), row.getLong("at_ms")))
                .list()
                .stream()
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue)));
    }

    private static NotedCook cook(ResultSet row) throws SQLException {
        return new NotedCook(
                row.getString("id"),
                row.getString("title"),
                row.getString("cooked_on"),
                row.getString("profile"),
                row.getString("document"),
                row.getString("planned"),
                row.getString("evidence"),
                row.getString("readings"),
                row.getString("program_version"),
                row.getLong("created_ms"),
                row.getLong("changed_ms"),
                List.of());
    }
}
