package io.github.saltfront.trial;

import io.github.saltfront.units.Checks;
import java.util.List;

/**
 * What a trial is about.
 *
 * @param protocol what tasters are asked
 * @param samples names of the samples, which tasters never see; 2 to 10
 * @param pieces pieces of meat, to be shared out among the samples
 * @param portionsPerPiece portions that one piece gives [-], 1 to 200
 * @param tasters number of tasters [-], 1 to 480
 * @param rounds how often each taster does the test [-], 1 to 6
 * @param seed seed of every lot; the same one gives the same design
 */
public record TrialRequest(
        Protocol protocol,
        List<String> samples,
        List<Piece> pieces,
        int portionsPerPiece,
        int tasters,
        int rounds,
        long seed) {
    /** Most rounds; more tire any taster. */
    public static final int MOST_ROUNDS = 6;

    /** Checks the request. */
    public TrialRequest {
        samples = List.copyOf(samples);
        pieces = List.copyOf(pieces);
        Checks.require(
                samples.size() >= 2 && samples.stream().distinct().count() == samples.size(),
                "a trial needs two or more samples of different names, got " + samples + ".");
        Checks.require(
                tasters >= 1 && tasters <= SampleCodes.MOST,
                "tasters must be between 1 and " + SampleCodes.MOST + ", got " + tasters + ".");
        Checks.require(
                rounds >= 1 && rounds <= MOST_ROUNDS,
                "rounds must be between 1 and " + MOST_ROUNDS + ", got " + rounds + "; taste on another day.");
        Checks.require(
                portionsPerPiece >= 1 && portionsPerPiece <= 200,
                "portions of a piece must be between 1 and 200, got " + portionsPerPiece + ".");
        protocol.orders(samples.size());
    }
}
