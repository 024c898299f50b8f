package io.github.saltfront.app.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.saltfront.app.store.Database;
import io.github.saltfront.app.store.NotedCook;
import io.github.saltfront.app.store.SavedPlan;
import io.github.saltfront.app.store.StoredAnswer;
import io.github.saltfront.app.store.StoredCheck;
import io.github.saltfront.app.store.StoredPhoto;
import io.github.saltfront.app.store.StoredTrial;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A notebook leaves as one file and comes back the same; a file that means harm does not come in. */
class NotebookArchiveTest {
    private static final String NOTE =
            "{\"title\":\"=HYPERLINK(\\\"http://x\\\")\",\"cooked\":\"2026-11-28\",\"profile\":\"home\","
                    + "\"measured\":{\"raw\":\"880.0 g\",\"cooked\":\"748.0 g\"},\"tags\":[\"sunday\"],\"notes\":\"+SUM(A1)\","
                    + "\"ratings\":[{\"taster\":\"@cmd\",\"saltiness\":\"just about right\",\"juice\":7}],"
                    + "\"request\":{\"cut\":\"pork-loin-chop\",\"mass\":\"185 g\",\"now\":\"2026-11-28T12:00\"}}";
    private static final String MINIMAL =
            "{\"schema\":\"saltfront.notebook\",\"version\":1,\"cooks\":[],\"thermometer_checks\":[]}";

    private static final String TRIAL =
            "{\"title\":\"Turkey, wet or dry\",\"sheet_title\":\"Turkey\",\"method\":\"triangle\",\"samples\":[\"wet\",\"dry\"],"
                    + "\"tasters\":12,\"rounds\":2,\"pieces\":[{\"block\":\"turkey 1\",\"count\":4},"
                    + "{\"block\":\"turkey 2\",\"count\":4}],\"portions_per_piece\":12,\"seed\":3}";

    /** One piece cannot give what twelve tasters need. */
    private static final String FEW =
            "{\"title\":\"Few\",\"sheet_title\":\"Few\",\"method\":\"triangle\",\"samples\":[\"wet\",\"dry\"],"
                    + "\"tasters\":12,\"pieces\":[{\"block\":\"a\",\"count\":1}],\"portions_per_piece\":1,\"seed\":3}";

    @TempDir
    private Path folder;

    private Notebook notebook(String name) {
        return new Notebook(Database.open(folder.resolve(name)), "test");
    }

    private Notebook filled() throws IOException {
        Notebook notebook = notebook("a.db");
        NotedCook cook = new NotedCook(
                "cook-1",
                "=HYPERLINK(\"http://x\")",
                "2026-11-28",
                "home",
                NOTE,
                "{\"name\":\"Pork loin chop\",\"loss_pct\":18.25}",
                "{\"appliance\":\"oven-fan\",\"oven_offset_k\":-9.0,\"meat\":\"R01\"}",
                "{\"time_s\":[0.0,60.0],\"core_c\":[4.0,9.5]}",
                "test",
                5,
                7,
                List.of("sunday"));
        notebook.cooks().put(cook);
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png", png);
        notebook.addPhoto(cook, "-2+3 on the plate", png.toByteArray());
        notebook.thermometers()
                .checks()
                .add(new StoredCheck(
                        "check-1",
                        "blue-pen",
                        "2026-11-01",
                        0.4,
                        Optional.of(new StoredCheck.Boiling(99.1, 99.14, 0.9)),
                        0.1,
                        "",
                        9));
        notebook.trials()
                .addMissing(
                        new StoredTrial("trial-1", "Turkey, wet or dry", TRIAL, 11),
                        List.of("known-to-tasters"),
                        List.of(new StoredAnswer(1, 1, "482", "odd", "=1+1", 12)));
        notebook.plans().add(new SavedPlan("plan-1", "Sunday", "{\"cut\":\"pork-loin-chop\"}", "test", 3, 4));
        return notebook;
    }

    private Path export(Notebook notebook) throws IOException {
        Path file = folder.resolve("notebook.zip");
        try (OutputStream out = Files.newOutputStream(file)) {
            new NotebookArchive(notebook).write(out, "test");
        }
        return file;
    }

    @Test
    void aNotebookComesBackTheSame() throws IOException {
        Notebook first = filled();
        Notebook second = notebook("b.db");
        assertThat(new NotebookArchive(second).read(export(first)))
                .isEqualTo(new NotebookArchive.Imported(1, 0, 1, 1, 1, 1));
        assertThat(new NotebookArchive(second).read(export(first)))
                .isEqualTo(new NotebookArchive.Imported(0, 1, 0, 1, 0, 0));
        NotedCook before = first.cooks().list("", "").get(0);
        NotedCook after = second.cooks().list("", "").get(0);
        assertThat(CookFigures.of(after)).isEqualTo(CookFigures.of(before));
        assertThat(after.readings()).isEqualTo(before.readings());
        assertThat(after.tags()).containsExactly("sunday");
        assertThat(second.cooks().list("", "SUNDAY")).hasSize(1);
        assertThat(second.cooks().list("loin", "")).hasSize(1);
        StoredPhoto photo = second.cooks().photosOf(after.id()).get(0);
        assertThat(photo.caption()).isEqualTo("-2+3 on the plate");
        assertThat(second.cooks().read(photo.id())).isPresent();
        assertThat(second.learning().knowledge("home", "").ovens()).containsOnlyKeys("oven-fan");
        assertThat(second.thermometers().checks().of("BLUE-PEN")).hasSize(1);
        assertThat(second.plans().find("plan-1")).isEqualTo(first.plans().find("plan-1"));
        assertThat(second.trials().answers("trial-1")).isEqualTo(first.trials().answers("trial-1"));
        assertThat(second.trials().tokens("trial-1")).hasSize(12).doesNotContain("known-to-tasters");
        second.learning().forget("home", "oven");
        assertThat(second.learning().knowledge("home", "").isEmpty()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"id\":\"../x\",\"document\":{}}",
                "{\"id\":\"t\",\"document\":{\"title\":\"no method\"}}",
                "{\"id\":\"t\",\"document\":" + FEW + "}",
                "{\"id\":\"t\",\"document\":" + TRIAL + ",\"answers\":[{\"taster\":13,\"round\":1,\"code\":\"482\"}]}"
            })
    void aTrialThatCannotBeDrawnIsRefusedAndNothingIsAdded(String trial) throws IOException {
        Notebook notebook = notebook("d.db");
        String main = MINIMAL.replace("}", ",\"trials\":[" + trial + "]}");
        assertThatThrownBy(() -> new NotebookArchive(notebook).read(archive("", new byte[0], main)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("nothing was added");
        assertThat(notebook.trials().list()).isEmpty();
    }

    @Test
    void spreadsheetsSeeNoFormulas() throws IOException {
        try (ZipFile zip = new ZipFile(export(filled()).toFile())) {
            String all = "";
            for (String name : List.of("cooks.csv", "ratings.csv", "photos.csv", "answers.csv")) {
                all += new String(zip.getInputStream(zip.getEntry(name)).readAllBytes(), StandardCharsets.UTF_8);
            }
            assertThat(all)
                    .contains(
                            "\"'=HYPERLINK(\"\"http://x\"\")\"",
                            ",'+SUM(A1)",
                            ",'@cmd,",
                            ",'-2+3 on the plate,",
                            ",'=1+1")
                    .contains(",880,", ",748,", ",15,");
            assertThat(all.lines().flatMap(l -> java.util.Arrays.stream(l.split(","))))
                    .noneMatch(cell -> cell.matches("\"?[=+@].*"));
        }
    }

    private Path archive(String name, byte[] content, String main) throws IOException {
        Path file = folder.resolve("bad.zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            zip.putNextEntry(new ZipEntry("notebook.json"));
            zip.write(main.getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
            if (!name.isEmpty()) {
                zip.putNextEntry(new ZipEntry(name));
                zip.write(content);
                zip.closeEntry();
            }
        }
        return file;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../../etc/cron.d/x",
                "/etc/passwd",
                "photos/../../x.jpg",
                "photos\\..\\x.jpg",
                "C:/x.jpg",
                "photos/a/b.jpg",
                "photos/x.exe",
                "evil.html"
            })
    void pathsThatLeadElsewhereAreRefused(String name) throws IOException {
        Path file = archive(name, new byte[10], MINIMAL);
        assertThatThrownBy(() -> new NotebookArchive(notebook("c.db")).read(file))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("holds a file named")
                .hasMessageContaining("Nothing was added");
    }

    @Test
    void bombsAreRefusedBeforeTheyGrow() throws IOException {
        // 30 MB of blanks pack into 30 kB: a thousandfold
        String bomb = MINIMAL.replace("\"cooks\":[]", "\"cooks\":[]" + " ".repeat(30_000_000));
        Path file = archive("", new byte[0], bomb);
        assertThat(Files.size(file)).isLessThan(100_000);
        assertThatThrownBy(() -> new NotebookArchive(notebook("c.db")).read(file))
                .hasMessageContaining("grows beyond")
                .hasMessageContaining("Nothing was added");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[]",
                "{}",
                "{\"schema\":\"saltfront.notebook\",\"version\":9}",
                "{\"schema\":\"saltfront.notebook\",\"version\":1,\"cooks\":[{\"id\":\"../x\"}]}",
                "{\"schema\":\"saltfront.notebook\",\"version\":1,\"cooks\":[{\"id\":\"x\",\"note\":{\"title\":\"a\"}}]}",
                "{\"schema\":\"saltfront.notebook\",\"version\":1,\"cooks\":[{\"id\":\"x\",\"note\":{\"titel\":\"a\","
                        + "\"request\":{\"cut\":\"pork-loin-chop\",\"mass\":\"1 kg\"}}}]}"
            })
    void whatIsNoNotebookIsRefused(String main) throws IOException {
        Path file = archive("", new byte[0], main);
        Notebook notebook = notebook("c.db");
        assertThatThrownBy(() -> new NotebookArchive(notebook).read(file))
                .isInstanceOfAny(
                        IllegalArgumentException.class, io.github.saltfront.app.document.DocumentException.class);
        assertThat(notebook.cooks().list("", "")).isEmpty();
        Path text = folder.resolve("text.zip");
        Files.writeString(text, "no archive");
        assertThatThrownBy(() -> new NotebookArchive(notebook).read(text)).isInstanceOf(IllegalArgumentException.class);
    }
}
