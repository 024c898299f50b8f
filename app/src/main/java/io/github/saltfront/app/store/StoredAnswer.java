package io.github.saltfront.app.store;

/**
 * One answer of a taster.
 *
 * @param taster the taster, from 1
 * @param round the round, from 1
 * @param code code of the sample that is rated; empty where one answer is given for the whole plate
 * @param answer a code, a score, or {@code none}
 * @param note what the taster noticed
 * @param received when it arrived [ms since 1970]
 */
public record StoredAnswer(int taster, int round, String code, String answer, String note, long received) {}
