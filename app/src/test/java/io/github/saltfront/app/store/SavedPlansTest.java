package io.github.saltfront.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Saved plans survive a restart, come back after a deletion, and are copied before their file is changed. */
class SavedPlansTest {
    @TempDir
    private Path folder;

    private Path file = Path.of("");

    @BeforeEach
    void nameTheFile() {
        file = folder.resolve("new folder").resolve("plans.db");
    }

    private static SavedPlan plan(String id, String title, long changed) {
        return new SavedPlan(id, title, "{\"cut\":\"pork-loin-chop\"}", "1.0", 5, changed);
    }

    @Test
    void whatWasSavedIsThereAfterARestart() {
        SavedPlan plan = plan("a", "Sunday <script>alert(1)</script> 100 % 'quoted'", 7);
        Database.open(file).savedPlans().add(plan);
        assertThat(Database.open(file).savedPlans().list("")).containsExactly(plan);
    }

    @Test
    void theLastChangedComesFirstAndARenameIsAChange() {
        SavedPlans plans = Database.open(file).savedPlans();
        plans.add(plan("a", "first", 10));
        plans.add(plan("b", "second", 20));
        assertThat(plans.list("")).extracting(SavedPlan::id).containsExactly("b", "a");
        assertThat(plans.rename("a", "renamed", 30)).isTrue();
        assertThat(plans.list("")).extracting(SavedPlan::title).containsExactly("renamed", "second");
        assertThat(plans.rename("c", "x", 40)).isFalse();
    }

    @Test
    void whatWasDeletedComesBackUntilItIsPurged() {
        SavedPlans plans = Database.open(file).savedPlans();
        plans.add(plan("a", "first", 10));
        assertThat(plans.delete("a", 100)).isTrue();
        assertThat(plans.delete("a", 101)).isFalse();
        assertThat(plans.list("")).isEmpty();
        assertThat(plans.find("a")).isEmpty();
        plans.purge(100);
        assertThat(plans.restore("a")).isTrue();
        assertThat(plans.find("a")).isPresent();
        plans.delete("a", 100);
        plans.purge(101);
        assertThat(plans.restore("a")).isFalse();
    }

    @Test
    void aSearchTakesItsWordAsItIs() {
        SavedPlans plans = Database.open(file).savedPlans();
        plans.add(plan("a", "Ham 100 % done", 10));
        plans.add(plan("b", "Ham_one", 20));
        assertThat(plans.list("HAM")).hasSize(2);
        assertThat(plans.list("100 %")).extracting(SavedPlan::id).containsExactly("a");
        assertThat(plans.list("m_o")).extracting(SavedPlan::id).containsExactly("b");
        assertThat(plans.list("loin-chop")).hasSize(2);
        assertThat(plans.list("\\")).isEmpty();
    }

    @Test
    void anImportAddsWhatIsMissingAndBringsBackWhatWasDeleted() {
        SavedPlans plans = Database.open(file).savedPlans();
        plans.add(plan("a", "mine", 10));
        plans.add(plan("b", "gone", 20));
        plans.delete("b", 25);
        int added = plans.addMissing(List.of(plan("a", "theirs", 99), plan("b", "back", 20), plan("c", "new", 30)));
        assertThat(added).isEqualTo(2);
        assertThat(plans.list("")).extracting(SavedPlan::title).containsExactly("new", "back", "mine");
    }

    @Test
    void aWholeCopyIsMadeBeforeAMigration() throws IOException {
        Database.open(file).savedPlans().add(plan("a", "first", 10));
        assertThat(copies()).isEmpty();
        Database later = Database.open(file, Database.MIGRATIONS, "classpath:io/github/saltfront/app/store/later");
        assertThat(later.savedPlans().list("")).hasSize(1);
        List<Path> copies = copies();
        assertThat(copies).hasSize(1);
        assertThat(Database.open(copies.get(0)).savedPlans().list("")).containsExactly(plan("a", "first", 10));
    }

    @Test
    void theFormIsThatOfTheNewestMigrationOfFileAndServer() {
        for (String folder : List.of("migration", "migrationpostgresql")) {
            int newest = 0;
            try (Stream<Path> files = Files.list(Path.of(
                    Objects.requireNonNull(Database.class.getResource(folder)).toURI()))) {
                newest = files.map(file -> String.valueOf(file.getFileName()))
                        .mapToInt(name -> Integer.parseInt(name.substring(1, name.indexOf("__"))))
                        .max()
                        .orElse(0);
            } catch (IOException | URISyntaxException e) {
                throw new AssertionError(e);
            }
            assertThat(Database.FORM).as(folder).isEqualTo(newest);
        }
    }

    @Test
    void aFileInThePresentFormIsMarkedAndOpensWithoutALookAtItsMigrations() {
        Database.open(file).savedPlans().add(plan("a", "first", 10));
        assertThat(sql("pragma user_version")).isEqualTo(Database.FORM);
        assertThat(sql("pragma application_id")).isEqualTo(0x53414C54);
        // with the look this would fail: the history does not fit the tables
        sql("drop table flyway_schema_history");
        assertThat(Database.open(file).savedPlans().list("")).hasSize(1);
    }

    @Test
    void aFileOfBeforeTheMarksOpensAndIsMarked() {
        Database.open(file).savedPlans().add(plan("a", "first", 10));
        sql("pragma user_version = 0");
        sql("pragma application_id = 0");
        assertThat(Database.open(file).savedPlans().list("")).hasSize(1);
        assertThat(sql("pragma user_version")).isEqualTo(Database.FORM);
    }

    @Test
    void theMarkOfAnotherProgramCountsForNothing() {
        Database.open(file).savedPlans().add(plan("a", "first", 10));
        sql("pragma application_id = 7");
        sql("delete from flyway_schema_history where version = '20'");
        // its tables of form 20 are there already: the look fails, so it was taken
        assertThatThrownBy(() -> Database.open(file)).hasMessageContaining("cannot be opened");
    }

    @Test
    void aFileOfALaterProgramIsRefusedByItsMarkAndByItsHistory() {
        Database.open(file, Database.MIGRATIONS, "classpath:io/github/saltfront/app/store/later");
        assertThat(sql("pragma user_version")).isEqualTo(999);
        assertLater();
        sql("pragma user_version = 0");
        assertLater();
        // a later program that was killed before it had marked the file
        sql("pragma application_id = 0");
        assertLater();
    }

    private void assertLater() {
        assertThatThrownBy(() -> Database.open(file))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("plans.db")
                .hasMessageContaining("later version of this program")
                .hasMessageContaining("got form 999, expected at most 20")
                .hasMessageContaining("give other data");
    }

    @Test
    void aMigrationThatFailsLeavesNoMark() {
        Database.open(file);
        assertThatThrownBy(() ->
                        Database.open(file, Database.MIGRATIONS, "classpath:io/github/saltfront/app/store/broken"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(sql("pragma user_version")).isZero();
        assertThat(Database.open(file).savedPlans().list("")).isEmpty();
        assertThat(sql("pragma user_version")).isEqualTo(Database.FORM);
    }

    /** Does something to the file and returns the first number of the answer, 0 without one. */
    private int sql(String statement) {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement done = connection.createStatement()) {
            return done.execute(statement) ? done.getResultSet().getInt(1) : 0;
        } catch (SQLException e) {
            throw new AssertionError(e);
        }
    }

    private List<Path> copies() throws IOException {
        try (Stream<Path> files = Files.list(file.resolveSibling(""))) {
            return files.filter(f -> f.toString().endsWith(".backup")).toList();
        }
    }

    @Test
    void aFileThatIsNoneOfOursIsRefusedAndLeftAlone() throws IOException {
        Path other = folder.resolve("letter.db");
        Files.writeString(other, "Dear guests, ".repeat(500));
        byte[] before = Files.readAllBytes(other);
        assertThatThrownBy(() -> Database.open(other))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("letter.db")
                .hasMessageContaining("give another file");
        assertThat(Files.readAllBytes(other)).isEqualTo(before);
    }
}
