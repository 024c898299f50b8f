package io.github.saltfront.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Exact series for slab, long cylinder and sphere, worked out here on their own: convection from time zero (Carslaw and Jaeger
 * 1959, sections 3.11, 7.7, 9.4) and diffusion from a well-stirred limited bath (Crank 1975, equations 4.37, 5.33, 6.30). Lengths
 * are shares of the half thickness or radius, times are Fourier numbers.
 */
final class Series {
    private static final double LARGEST_ROOT = 400;
    private static final double STEP = 0.02;

    private final String shape;
    private final double ratio;
    private final List<Double> roots;

    private Series(String shape, double ratio, DoubleUnaryOperator equation) {
        this.shape = shape;
        this.ratio = ratio;
        this.roots = roots(equation);
    }

    static Series convection(String shape, double biot) {
        return new Series(
                shape,
                biot,
                switch (shape) {
                    case "slab" -> q -> q * Math.sin(q) - biot * Math.cos(q);
                    case "cylinder" -> q -> q * bessel(1, q) - biot * bessel(0, q);
                    default -> q -> (1 - biot) * Math.sin(q) - q * Math.cos(q);
                });
    }

    static Series limitedBath(String shape, double alpha) {
        return new Series(
                shape,
                alpha,
                switch (shape) {
                    case "slab" -> q -> Math.sin(q) + alpha * q * Math.cos(q);
                    case "cylinder" -> q -> alpha * q * bessel(0, q) + 2 * bessel(1, q);
                    default -> q -> (3 + alpha * q * q) * Math.sin(q) - 3 * q * Math.cos(q);
                });
    }

    /** What is left of the first difference to the medium at a place: 0 the middle, 1 the surface. */
    double left(double fourier, double place) {
        return sum(fourier, q -> coefficient(q) * profile(q, place));
    }

    double meanLeft(double fourier) {
        return sum(fourier, q -> coefficient(q) * meanProfile(q));
    }

    /** Share of the final uptake. */
    double uptake(double fourier) {
        double a = ratio;
        return 1
                - sum(fourier, q -> switch (shape) {
                    case "slab" -> 2 * a * (1 + a) / (1 + a + a * a * q * q);
                    case "cylinder" -> 4 * a * (1 + a) / (4 + 4 * a + a * a * q * q);
                    default -> 6 * a * (1 + a) / (9 + 9 * a + a * a * q * q);
                });
    }

    private double coefficient(double q) {
        return switch (shape) {
            case "slab" -> 4 * Math.sin(q) / (2 * q + Math.sin(2 * q));
            case "cylinder" -> 2 * bessel(1, q) / (q * (Math.pow(bessel(0, q), 2) + Math.pow(bessel(1, q), 2)));
            default -> 4 * (Math.sin(q) - q * Math.cos(q)) / (2 * q - Math.sin(2 * q));
        };
    }

    private double profile(double q, double place) {
        return switch (shape) {
            case "slab" -> Math.cos(q * place);
            case "cylinder" -> bessel(0, q * place);
            default -> place == 0 ? 1 : Math.sin(q * place) / (q * place);
        };
    }

    private double meanProfile(double q) {
        return switch (shape) {
            case "slab" -> Math.sin(q) / q;
            case "cylinder" -> 2 * bessel(1, q) / q;
            default -> 3 * (Math.sin(q) - q * Math.cos(q)) / (q * q * q);
        };
    }

    private double sum(double fourier, DoubleUnaryOperator term) {
        double sum = 0;
        for (double q : roots) {
            double decay = Math.exp(-q * q * fourier);
            if (decay < 1e-16) {
                break;
            }
            sum += term.applyAsDouble(q) * decay;
        }
        return sum;
    }

    private static List<Double> roots(DoubleUnaryOperator equation) {
        List<Double> roots = new ArrayList<>();
        double low = 1e-3;
        double atLow = equation.applyAsDouble(low);
        while (low < LARGEST_ROOT) {
            double high = low + STEP;
            double atHigh = equation.applyAsDouble(high);
            if (atLow * atHigh < 0) {
                roots.add(bisect(equation, low, high, atLow));
            }
            low = high;
            atLow = atHigh;
        }
        return roots;
    }

    private static double bisect(DoubleUnaryOperator equation, double from, double to, double atFrom) {
        double low = from;
        double high = to;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            if (equation.applyAsDouble(middle) * atFrom > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /** Bessel's integral by the trapezoidal rule, which converges faster than any power once its points outnumber x. */
    private static double bessel(int order, double x) {
        int n = 64 + 2 * (int) x;
        double sum = 0.5 * (1 + Math.cos(order * Math.PI));
        for (int i = 1; i < n; i++) {
            double angle = Math.PI * i / n;
            sum += Math.cos(order * angle - x * Math.sin(angle));
        }
        return sum / n;
    }
}
