package io.github.saltfront.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Runs a Python program on the same files, with one thread. */
final class PythonRun {
    private PythonRun() {}

    static Map<SlabCase, Timing> run(Path program, Path folder, int repeats, String last)
            throws IOException, InterruptedException {
        ProcessBuilder builder =
                new ProcessBuilder("python3", program.toString(), folder.toString(), Integer.toString(repeats), last);
        for (String library : List.of("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS")) {
            builder.environment().put(library, "1");
        }
        builder.redirectError(ProcessBuilder.Redirect.INHERIT);
        Process process = builder.start();
        Map<SlabCase, List<double[]>> times = new EnumMap<>(SlabCase.class);
        try (BufferedReader reader = process.inputReader(StandardCharsets.UTF_8)) {
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String[] cells = line.split(",", -1);
                if (!cells[0].equals("case")) {
                    times.computeIfAbsent(SlabCase.valueOf(cells[0]), kind -> new ArrayList<>())
                            .add(new double[] {Double.parseDouble(cells[2]), Double.parseDouble(cells[3])});
                }
            }
        }
        int exit = process.waitFor();
        if (exit != 0) {
            throw new IOException(program + " ended with exit status " + exit + "; see its message above.");
        }
        Map<SlabCase, Timing> result = new EnumMap<>(SlabCase.class);
        times.forEach((kind, rows) -> result.put(
                kind,
                new Timing(
                        rows.stream().map(r -> r[0]).toList(),
                        rows.stream().map(r -> r[1]).toList())));
        return result;
    }
}
