package io.github.saltfront.app.export;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TrialTablesTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            brined          | brined
            =1+1            | '=1+1
            @SUM(A1)        | '@SUM(A1)
            -2 °C           | '-2 °C
            wet, then dry   | "wet, then dry"
            the "good" one  | "the ""good"" one"
            """)
    void cellsAreNoFormulasAndKeepTheirCommas(String text, String cell) {
        assertThat(TrialTables.cell(text)).isEqualTo(cell);
    }
}
