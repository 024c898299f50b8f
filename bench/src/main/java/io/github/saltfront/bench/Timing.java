package io.github.saltfront.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Wall and CPU times of repeats of one task, in s. On a machine that others use the CPU time is the steadier of the two.
 *
 * @param wall wall times, sorted
 * @param cpu CPU times of the thread or process, sorted
 */
record Timing(List<Double> wall, List<Double> cpu) {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    Timing {
        wall = sorted(wall);
        cpu = sorted(cpu);
    }

    private static List<Double> sorted(List<Double> values) {
        List<Double> copy = new ArrayList<>(values);
        Collections.sort(copy);
        return List.copyOf(copy);
    }

    /** Runs a task until it is warm, then times its repeats. */
    static Timing of(Runnable task, double warmSeconds, int repeats) {
        long until = System.nanoTime() + (long) (1e9 * warmSeconds);
        do {
            task.run();
        } while (System.nanoTime() < until);
        List<Double> wall = new ArrayList<>();
        List<Double> cpu = new ArrayList<>();
        for (int i = 0; i < repeats; i++) {
            long cpuStart = THREADS.getCurrentThreadCpuTime();
            long wallStart = System.nanoTime();
            task.run();
            wall.add(1e-9 * (System.nanoTime() - wallStart));
            cpu.add(1e-9 * (THREADS.getCurrentThreadCpuTime() - cpuStart));
        }
        return new Timing(wall, cpu);
    }

    double medianWall() {
        return median(wall);
    }

    double medianCpu() {
        return median(cpu);
    }

    private static double median(List<Double> sorted) {
        int n = sorted.size();
        return 0.5 * (sorted.get((n - 1) / 2) + sorted.get(n / 2));
    }

    double leastWall() {
        return wall.get(0);
    }

    double mostWall() {
        return wall.get(wall.size() - 1);
    }

    double leastCpu() {
        return cpu.get(0);
    }

    double mostCpu() {
        return cpu.get(cpu.size() - 1);
    }
}
