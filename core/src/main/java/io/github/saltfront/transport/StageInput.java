package io.github.saltfront.transport;

import io.github.saltfront.units.Checks;
import java.util.List;

/**
 * What happens to one member in one stage.
 *
 * @param faces the condition of each face: one for a symmetric piece; first and second face for a two-faced one
 * @param sources the salt source of each face, as many as faces
 * @param duration longest time of the stage [s]
 * @param stop what may end it earlier
 */
public record StageInput(List<FaceCondition> faces, List<SaltSource> sources, double duration, StopRule stop) {
    /** Checks the values and copies the lists. */
    public StageInput {
        faces = List.copyOf(faces);
        sources = List.copyOf(sources);
        Checks.require(
                (faces.size() == 1 || faces.size() == 2) && sources.size() == faces.size(),
                "a stage needs one or two faces and as many salt sources, got " + faces.size() + " and "
                        + sources.size() + ".");
        Checks.requireInRange("duration of a stage", duration, 0, 60 * 86400, "s");
    }

    /**
     * Returns a stage with one condition on the only face and no salt.
     *
     * @param face condition of the face
     * @param duration time [s]
     * @return the stage
     */
    public static StageInput of(FaceCondition face, double duration) {
        return new StageInput(List.of(face), List.of(SaltSource.NONE), duration, StopRule.NEVER);
    }

    /**
     * Returns the same stage with another stop rule.
     *
     * @param rule the rule
     * @return the stage
     */
    public StageInput until(StopRule rule) {
        return new StageInput(faces, sources, duration, rule);
    }
}
