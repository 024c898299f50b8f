package io.github.saltfront.app.cli;

import io.github.saltfront.app.notebook.Notebook;
import io.github.saltfront.app.store.DataPlace;
import io.github.saltfront.app.store.Database;
import io.github.saltfront.words.Language;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The file of data, which the web program and the commands share. */
final class DataFile {
    @Option(
            names = "--data",
            paramLabel = "FILE",
            description =
                    "File of plans, cooks and trials, or jdbc:postgresql://HOST/DATABASE?user=NAME. Default: saltfront.db in your"
                            + " folder for program data.")
    private @Nullable String data;

    Database open() {
        return Database.open(place(data, usual()));
    }

    static DataPlace place(@Nullable String given, Path usual) {
        return given == null ? DataPlace.of(usual) : DataPlace.parse(given, usual());
    }

    Notebook notebook() {
        return new Notebook(open(), Version.text());
    }

    static Path usual() {
        String folder = System.getenv("XDG_DATA_HOME");
        Path base = folder == null || folder.isBlank()
                ? Path.of(System.getProperty("user.home", "."), ".local", "share")
                : Path.of(folder);
        return base.resolve("saltfront").resolve("saltfront.db");
    }

    /** Threads for ensembles, which do not keep the program alive; they speak the language of the command. */
    static ExecutorService threads() {
        Language language = Language.spoken();
        return Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors(), task -> {
            Runnable spoken = () -> {
                try (Language.Scope scope = language.begin()) {
                    task.run();
                }
            };
            Thread thread = new Thread(spoken, "ensemble");
            thread.setDaemon(true);
            return thread;
        });
    }
}
