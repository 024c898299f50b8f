package io.github.saltfront.app.notebook;

import io.github.saltfront.app.document.Document;
import io.github.saltfront.app.document.DocumentException;
import io.github.saltfront.app.document.DocumentReader;
import io.github.saltfront.app.document.Node;
import io.github.saltfront.app.document.Problem;
import io.github.saltfront.app.store.NotedCook;
import io.github.saltfront.words.Phrases;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * A cook file on disk: the note, and beside it by name the request, the log and the pictures, all looked for from the folder of the
 * file.
 *
 * @param note what was noted
 * @param request the request
 * @param readings readings of the thermometer
 * @param photos pictures
 */
public record CookEntry(CookNote note, ObjectNode request, Optional<CookReadings> readings, List<Photo> photos) {
    private static final Phrases PHRASES = Phrases.of(CookEntry.class);

    private static final YAMLMapper YAML = YAMLMapper.builder().build();

    /** Copies the list. */
    public CookEntry {
        photos = List.copyOf(photos);
    }

    /**
     * A picture to add.
     *
     * @param file the file
     * @param caption what it shows
     */
    public record Photo(Path file, String caption) {}

    /**
     * Reads a cook file.
     *
     * @param file the file as YAML or JSON
     * @return what it names, read as well
     * @throws DocumentException with all that is wrong
     */
    public static CookEntry read(Path file) {
        Document document = DocumentReader.read(file);
        CookNote note = CookFile.read(document, LocalDate.now());
        Node root = document.root();
        Path request = beside(file, root.text("request"));
        Optional<Path> log = root.findText("log").map(name -> beside(file, name));
        List<Photo> photos = new ArrayList<>();
        for (Node node : root.findList("photos")) {
            Path photo = beside(file, node.text("file"));
            if (!Files.isRegularFile(photo)) {
                node.problem("file", PHRASES.say("there-is-no-such-picture"));
            }
            photos.add(new Photo(photo, node.findText("caption").orElse("")));
        }
        document.requireNoErrors();
        return new CookEntry(
                note,
                Notebook.withPresent(requestOf(request), note),
                log.map(path -> CookReadings.ofLog(bytes(path))),
                photos);
    }

    private static Path beside(Path file, String name) {
        Path folder = file.toAbsolutePath().getParent();
        return folder == null ? Path.of(name) : folder.resolve(name);
    }

    /** Looks at the file with the strict reader first, which says where it is no YAML. */
    private static ObjectNode requestOf(Path file) {
        DocumentReader.read(file);
        if (YAML.readTree(bytes(file)) instanceof ObjectNode object) {
            return object;
        }
        throw new DocumentException(
                file.toString(), List.of(new Problem("", 0, PHRASES.say("got-another-value-expected-a"))));
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException("The file " + file + " cannot be read; check its name.", e);
        }
    }

    /**
     * Notes the cook and adds its pictures.
     *
     * @param notebook the notebook
     * @param id id of a cook to replace; empty for a new one
     * @param executor where to run parts of the ensemble
     * @return the cook as it was kept
     */
    public NotedCook addTo(Notebook notebook, Optional<String> id, Executor executor) {
        // pictures first: what cannot be taken must not leave half a cook behind
        photos.forEach(photo -> PhotoFile.of(bytes(photo.file())));
        NotedCook cook = notebook.note(note, request, id, readings, executor);
        photos.forEach(photo -> notebook.addPhoto(cook, photo.caption(), bytes(photo.file())));
        return cook;
    }
}
