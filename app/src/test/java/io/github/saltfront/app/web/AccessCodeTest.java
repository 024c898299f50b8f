package io.github.saltfront.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.security.SecureRandom;
import org.junit.jupiter.api.Test;

/** A code that is guessed at is no longer looked at for a time, which grows. */
class AccessCodeTest {
    private final AccessCode access = new AccessCode(new SecureRandom());

    @Test
    void theCodeIsReadAsPeopleWriteIt() {
        String code = access.code();
        String written = " " + code.substring(0, 4).toLowerCase(java.util.Locale.ROOT) + "-" + code.substring(4);
        assertThat(access.accepts("10.0.0.2", written, 0)).isTrue();
        assertThat(access.accepts("10.0.0.2", code.substring(1), 0)).isFalse();
        assertThat(access.accepts("10.0.0.2", "", 0)).isFalse();
    }

    @Test
    void afterFiveWrongCodesTheRightOneHasToWait() {
        for (int i = 0; i < 5; i++) {
            assertThat(access.waitFor("10.0.0.2", i)).isZero();
            access.accepts("10.0.0.2", "WRONG", i);
        }
        long wait = access.waitFor("10.0.0.2", 5);
        assertThat(wait).isBetween(4000L, 5000L);
        assertThat(access.accepts("10.0.0.2", access.code(), 5)).isFalse();
        assertThat(access.accepts("10.0.0.3", access.code(), 5))
                .as("another address")
                .isTrue();
        assertThat(access.accepts("10.0.0.2", access.code(), 5 + wait)).isTrue();
    }

    @Test
    void everyFurtherWrongCodeDoublesTheWait() {
        long now = 0;
        long last = 0;
        for (int i = 0; i < 15; i++) {
            access.accepts("10.0.0.2", "WRONG", now);
            long wait = access.waitFor("10.0.0.2", now);
            assertThat(wait).isGreaterThanOrEqualTo(last).isLessThanOrEqualTo(900_000);
            last = wait;
            now += wait;
        }
        assertThat(last).isEqualTo(900_000);
    }

    @Test
    void manyAddressesTogetherAreSlowedDownToo() {
        for (int i = 0; i < 50; i++) {
            access.accepts("10.0.1." + i, "WRONG", 0);
        }
        assertThat(access.accepts("10.0.0.3", access.code(), 0)).isFalse();
    }

    @Test
    void eachStartHasItsOwnCodeAndToken() {
        AccessCode other = new AccessCode(new SecureRandom());
        assertThat(other.code()).hasSize(8).isNotEqualTo(access.code());
        assertThat(access.isToken(access.token())).isTrue();
        assertThat(access.isToken(other.token())).isFalse();
    }
}
