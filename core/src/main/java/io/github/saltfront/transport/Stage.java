package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;
import java.util.List;

/**
 * One stage of a piece's day.
 *
 * @param kind what the stage is, in the words of the file format, such as {@code soak} or {@code heat}
 * @param faces the condition all around (one), or of the first and the second face (two)
 * @param salt what it offers by way of salt
 * @param duration longest time [s]
 * @param stop what may end it earlier
 */
public record Stage(String kind, List<FaceCondition> faces, SaltExchange salt, double duration, StopRule stop) {
    /** Checks the values and copies the list. */
    public Stage {
        faces = List.copyOf(faces);
        Checks.require(
                faces.size() == 1 || faces.size() == 2,
                "a stage needs one condition all around or two faces, got " + faces.size() + ".");
        Checks.requireInRange("duration of stage " + kind, duration, 0, 60 * 86400, "s");
    }

    /** Returns whether both faces are treated alike. */
    public boolean isSymmetric() {
        return faces.size() == 1 || faces.get(0).equals(faces.get(1));
    }
}
