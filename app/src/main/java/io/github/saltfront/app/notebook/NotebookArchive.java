package io.github.saltfront.app.notebook;

import io.github.saltfront.app.document.Document;
import io.github.saltfront.app.document.DocumentFormat;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.store.NotedCook;
import io.github.saltfront.app.store.NotedCooks;
import io.github.saltfront.app.store.SavedPlan;
import io.github.saltfront.app.store.StoredCheck;
import io.github.saltfront.app.store.StoredPhoto;
import io.github.saltfront.words.Phrases;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A whole notebook, with trials and saved plans, as one zip archive of JSON, CSV and pictures. What is read back is notebook.json and the pictures it names; every
 * text goes through the same readers as a new note, and every picture is drawn anew.
 */
public final class NotebookArchive {
    private static final Phrases PHRASES = Phrases.of(NotebookArchive.class);

    /** Largest archive [byte]. */
    public static final long LARGEST_ARCHIVE = 1_000_000_000;

    /** Most files in an archive [-]. */
    public static final int MOST_FILES = 50_000;

    /** Largest notebook.json, unpacked [byte]. */
    public static final int LARGEST_JSON = 100_000_000;

    /** Most bytes of all files together, unpacked. */
    public static final long LARGEST_UNPACKED = 2_000_000_000;

    /** How many times a file may grow when it is unpacked [-]; text seldom grows tenfold. */
    public static final int LARGEST_RATIO = 200;

    /** Files up to this size may grow as they like [byte]. */
    private static final long RATIO_FROM = 1_000_000;

    private static final String MAIN = "notebook.json";
    private static final String SCHEMA = "saltfront.notebook";
    private static final String ID = "[A-Za-z0-9-]{1,64}";
    private static final String PHOTO = "photos/" + ID + "\\.jpg";

    private final Notebook notebook;
    private final NotedCooks cooks;

    /**
     * Works on a notebook.
     *
     * @param notebook the notebook
     */
    public NotebookArchive(Notebook notebook) {
        this.notebook = notebook;
        cooks = notebook.cooks();
    }

    /**
     * Writes the archive.
     *
     * @param stream where to
     * @param programVersion version of the program
     * @throws IOException if that fails
     */
    public void write(OutputStream stream, String programVersion) throws IOException {
        List<NotedCook> all = cooks.list("", "");
        List<StoredCheck> checks = notebook.thermometers().checks().instruments().stream()
                .flatMap(name -> notebook.thermometers().checks().of(name).stream())
                .toList();
        try (ZipOutputStream zip = new ZipOutputStream(stream, StandardCharsets.UTF_8)) {
            put(zip, "README.txt", NotebookTables.README);
            List<ArchivedTrial> trials = ArchivedTrial.all(notebook.trials());
            put(zip, MAIN, NotebookJson.text(json(all, checks, trials, programVersion)));
            put(zip, "answers.csv", NotebookTables.answers(trials));
            put(zip, "cooks.csv", NotebookTables.cooks(all));
            put(zip, "ratings.csv", NotebookTables.ratings(all));
            put(zip, "readings.csv", NotebookTables.readings(all));
            put(zip, "thermometers.csv", NotebookTables.checks(checks));
            List<StoredPhoto> photos = all.stream()
                    .flatMap(cook -> cooks.photosOf(cook.id()).stream())
                    .toList();
            put(zip, "photos.csv", NotebookTables.photos(photos));
            for (StoredPhoto photo : photos) {
                Optional<byte[]> content = cooks.read(photo.id());
                if (content.isPresent()) {
                    zip.putNextEntry(new ZipEntry("photos/" + photo.id() + ".jpg"));
                    zip.write(content.get());
                    zip.closeEntry();
                }
            }
        }
    }

    private static void put(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private Map<String, Object> json(
            List<NotedCook> all, List<StoredCheck> checks, List<ArchivedTrial> trials, String programVersion) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("schema", SCHEMA);
        json.put("version", NotebookViews.SCHEMA_VERSION);
        json.put("program_version", programVersion);
        List<Map<String, Object>> content = new ArrayList<>();
        for (NotedCook cook : all) {
            Map<String, Object> own = NotebookViews.content(cook, cooks.photosOf(cook.id()));
            own.put("evidence", NotebookJson.read(cook.evidence()));
            content.add(own);
        }
        json.put("cooks", content);
        json.put("thermometer_checks", checks.stream().map(CheckJson::of).toList());
        json.put("trials", trials.stream().map(ArchivedTrial::toJson).toList());
        json.put(
                "plans",
                notebook.plans().list("").stream().map(ArchivedPlan::toJson).toList());
        return json;
    }

    /**
     * What an import did.
     *
     * @param added cooks that were added [-]
     * @param known cooks that were there already [-]
     * @param pictures pictures that were added [-]
     * @param checks checks of thermometers in the archive [-]
     * @param trials trials that were added [-]
     * @param plans saved plans that were added [-]
     */
    public record Imported(int added, int known, int pictures, int checks, int trials, int plans) {}

    /**
     * Reads an archive and adds what is missing.
     *
     * @param file the archive
     * @return what was added
     * @throws IllegalArgumentException if the archive is none, is too large or holds what it should not; then nothing was added
     */
    public Imported read(Path file) {
        try {
            if (Files.size(file) > LARGEST_ARCHIVE) {
                throw refused(PHRASES.say("is-larger-than-mb", LARGEST_ARCHIVE / 1_000_000));
            }
            try (ZipFile zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8)) {
                return read(zip);
            }
        } catch (ZipException e) {
            throw new IllegalArgumentException(PHRASES.say("the-archive-cannot-be-read", e.getMessage()), e);
        } catch (IOException e) {
            throw new UncheckedIOException("The archive " + file + " cannot be read: " + e.getMessage(), e);
        }
    }

    private static IllegalArgumentException refused(String what) {
        return new IllegalArgumentException(PHRASES.say("the-archive-is-refused-it", what));
    }

    private Imported read(ZipFile zip) throws IOException {
        requirePlainNames(zip);
        long left = LARGEST_UNPACKED;
        ZipEntry main = zip.getEntry(MAIN);
        if (main == null) {
            throw refused(PHRASES.say("has-no", MAIN));
        }
        byte[] bytes = unpacked(zip, main, LARGEST_JSON);
        left -= bytes.length;
        ObjectNode json = NotebookJson.object(bytes, MAIN);
        if (!SCHEMA.equals(json.path("schema").asString(""))
                || json.path("version").asInt(0) != NotebookViews.SCHEMA_VERSION) {
            throw refused(PHRASES.say("is-none-of-a-notebook", NotebookViews.SCHEMA_VERSION));
        }
        if (json.path("cooks").size() > Notebook.MOST_COOKS) {
            throw refused(PHRASES.say("has-more-than-cooks", Notebook.MOST_COOKS));
        }
        List<NotedCook> read = new ArrayList<>();
        List<StoredPhoto> photos = new ArrayList<>();
        for (JsonNode node : json.path("cooks")) {
            NotedCook cook = cook(node);
            read.add(cook);
            photos.addAll(photos(cook, node.path("photos")));
        }
        List<StoredCheck> checks = CheckJson.read(json.path("thermometer_checks"));
        List<ArchivedTrial> trials = ArchivedTrial.read(json.path("trials"));
        List<SavedPlan> plans = ArchivedPlan.read(json.path("plans"));
        List<StoredPhoto> taken = new ArrayList<>();
        for (StoredPhoto photo : photos) {
            ZipEntry entry = zip.getEntry("photos/" + photo.id() + ".jpg");
            if (entry == null || cooks.read(photo.id()).isPresent()) {
                continue;
            }
            byte[] content = unpacked(zip, entry, PhotoFile.LARGEST_BYTES);
            left -= content.length;
            if (left < 0) {
                throw refused(PHRASES.say("grows-beyond-mb-when-it", LARGEST_UNPACKED / 1_000_000));
            }
            PhotoFile drawn = PhotoFile.of(content);
            cooks.write(photo.id(), drawn.jpeg());
            taken.add(new StoredPhoto(
                    photo.id(), photo.cook(), photo.caption(), drawn.width(), drawn.height(), photo.added()));
        }
        int added = cooks.addMissing(read, taken);
        checks.forEach(notebook.thermometers().checks()::add);
        int newTrials = 0;
        for (ArchivedTrial trial : trials) {
            boolean isNew =
                    notebook.trials().addMissing(trial.trial(), TasterTokens.draw(trial.tasters()), trial.answers());
            newTrials += isNew ? 1 : 0;
        }
        int newPlans = notebook.plans().addMissing(plans);
        return new Imported(added, read.size() - added, taken.size(), checks.size(), newTrials, newPlans);
    }

    /** Names are looked at though no file is ever written under one of them: an archive with such names is no honest one. */
    private static void requirePlainNames(ZipFile zip) {
        if (zip.size() > MOST_FILES) {
            throw refused(PHRASES.say("holds-more-than-files", MOST_FILES));
        }
        Set<String> names = new HashSet<>();
        Enumeration<? extends ZipEntry> entries = zip.entries();
        while (entries.hasMoreElements()) {
            String name = entries.nextElement().getName();
            if (!name.matches("[a-z]+\\.csv|README\\.txt|notebook\\.json|photos/|" + PHOTO) || !names.add(name)) {
                throw refused(PHRASES.say("holds-a-file-named", (name.length() > 60 ? name.substring(0, 60) : name)));
            }
        }
    }

    /** Counts what comes out, whatever the archive says of its sizes. */
    private static byte[] unpacked(ZipFile zip, ZipEntry entry, int most) throws IOException {
        long packed = Math.max(1, entry.getCompressedSize());
        long limit = Math.min(most, Math.max(RATIO_FROM, LARGEST_RATIO * packed));
        try (InputStream stream = zip.getInputStream(entry)) {
            byte[] bytes = stream.readNBytes((int) limit + 1);
            if (bytes.length > limit) {
                throw refused(PHRASES.say("holds-which-grows-beyond-mb", entry.getName(), limit / 1_000_000));
            }
            return bytes;
        }
    }

    private NotedCook cook(JsonNode node) {
        String id = id(node);
        if (!(node.path("note") instanceof ObjectNode note)) {
            throw refused(PHRASES.say("holds-a-cook-without-a"));
        }
        JsonNode request = note.remove("request");
        if (!(request instanceof ObjectNode planned)) {
            throw refused(PHRASES.say("holds-a-cook-without-a-2"));
        }
        byte[] bytes = NotebookJson.text(note).getBytes(StandardCharsets.UTF_8);
        Document document = DocumentReader.read(MAIN, bytes, DocumentFormat.JSON);
        CookNote read = CookFile.read(document, LocalDate.now());
        document.requireNoErrors();
        notebook.read(planned);
        Map<String, Object> whole = read.toJson();
        whole.put("request", planned);
        return new NotedCook(
                id,
                read.title(),
                read.cooked().toString(),
                read.place().profile(),
                NotebookJson.text(whole),
                NotebookJson.text(node.path("planned").isObject() ? node.path("planned") : Map.of()),
                NotebookJson.text(evidence(node).toJson()),
                readings(node),
                node.path("planned_by").asString("unknown"),
                node.path("created").asLong(0),
                node.path("changed").asLong(0),
                read.tags());
    }

    private static String readings(JsonNode node) {
        CookReadings readings = CookReadings.read(node.path("readings"));
        return readings.timesS().isEmpty() ? "{}" : readings.text();
    }

    private static Evidence evidence(JsonNode node) {
        try {
            return Evidence.read(node.path("evidence"));
        } catch (IllegalArgumentException | JacksonException e) {
            throw new IllegalArgumentException(
                    refused(PHRASES.say("holds-a-cook-whose-evidence")).getMessage(), e);
        }
    }

    private static String id(JsonNode node) {
        String id = node.path("id").asString("");
        if (!id.matches(ID)) {
            throw refused(PHRASES.say("holds-something-without-a-usable"));
        }
        return id;
    }

    private static List<StoredPhoto> photos(NotedCook cook, JsonNode nodes) {
        if (nodes.size() > Notebook.MOST_PHOTOS) {
            throw refused(PHRASES.say("holds-a-cook-with-more", Notebook.MOST_PHOTOS));
        }
        List<StoredPhoto> photos = new ArrayList<>();
        for (JsonNode node : nodes) {
            String caption = node.path("caption").asString("");
            photos.add(new StoredPhoto(
                    id(node),
                    cook.id(),
                    caption.length() > 300 ? caption.substring(0, 300) : caption,
                    0,
                    0,
                    node.path("added").asLong(0)));
        }
        return photos;
    }
}
