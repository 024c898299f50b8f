package io.github.saltfront.bench;

import io.github.saltfront.shape.LayerGrid;
import io.github.saltfront.transport.PropertyTable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What all programs read, and what the Python programs write. */
record CompareFiles(Path folder) {
    void write(List<Slab> slabs) throws IOException {
        Files.createDirectories(folder);
        List<String> lines = new ArrayList<>();
        lines.add(Slab.header());
        slabs.forEach(slab -> lines.add(slab.row()));
        Files.write(folder.resolve("slabs.csv"), lines);
        lines.clear();
        lines.add(PropertyTable.header());
        for (SlabCase kind : SlabCase.values()) {
            lines.add(PropertyTable.row(kind.name(), kind.heat(), SlabCase.MEAT.waterPerSolids(), 0));
        }
        Files.write(folder.resolve("properties.csv"), lines);
        Files.write(folder.resolve("latent.csv"), PropertyTable.latentHeat());
        lines.clear();
        lines.add("edge");
        LayerGrid grid = SlabBatch.grid(SlabBatch.CELLS);
        for (int i = 0; i <= grid.cells(); i++) {
            lines.add(Double.toString(grid.edge(i)));
        }
        Files.write(folder.resolve("edges.csv"), lines);
    }

    double[] values(String program, SlabCase kind) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(folder.resolve(program + "_" + kind.name() + ".bin")))
                .order(ByteOrder.LITTLE_ENDIAN);
        double[] values = new double[bytes.remaining() / Double.BYTES];
        bytes.asDoubleBuffer().get(values);
        return values;
    }
}
