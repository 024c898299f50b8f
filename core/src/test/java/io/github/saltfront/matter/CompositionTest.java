package io.github.saltfront.matter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CompositionTest {
    @Test
    void printedCompositionIsDividedByItsSum() {
        // lean beef sirloin, ashrae2006, chapter 9, Table 3: sums to 0.9842
        Composition meat = Composition.ofPrinted(0.7170, 0.2124, 0.0440, 0, 0.0108);
        assertThat(meat.water()).isCloseTo(0.7170 / 0.9842, within(1e-15));
        assertThat(meat.water() + meat.protein() + meat.fat() + meat.ash()).isCloseTo(1, within(1e-12));
    }

    @Test
    void sumsAtTheEdgesOfTheRangeAreAcceptedAndBeyondRefusedWithTheSum() {
        assertThat(Composition.ofPrinted(0.72, 0.20, 0.05, 0, 0).fat()).isPositive();
        assertThat(Composition.ofPrinted(0.78, 0.20, 0.04, 0, 0.0099).ash()).isPositive();
        assertThatThrownBy(() -> Composition.ofPrinted(0.72, 0.20, 0.04, 0, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0.97")
                .hasMessageContaining("0.96");
        assertThatThrownBy(() -> Composition.ofPrinted(0.80, 0.20, 0.04, 0, 0)).hasMessageContaining("1.04");
    }

    @Test
    void fractionsThatDoNotSumToOneAreRefused() {
        assertThatThrownBy(() -> new Composition(0.7, 0.2, 0.05, 0, 0)).hasMessageContaining("sum to 1");
        assertThatThrownBy(() -> new DryMatter(0.5, 0.4, 0, 0)).hasMessageContaining("sum to 1");
    }

    @Test
    void nanAndNegativeFractionsAreRefused() {
        assertThatThrownBy(() -> new Composition(Double.NaN, 0.2, 0.05, 0, 0)).hasMessageContaining("water fraction");
        assertThatThrownBy(() -> Composition.ofPrinted(0.7, Double.NaN, 0.05, 0, 0))
                .hasMessageContaining("NaN");
        assertThatThrownBy(() -> new Composition(1.1, -0.1, 0, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DryMatter(0.5, Double.NaN, 0, 0.5)).hasMessageContaining("fat");
    }

    @Test
    void dryMatterIsPerMassOfItself() {
        Composition meat = new Composition(0.75, 0.20, 0.04, 0, 0.01);
        assertThat(meat.dryMatter().protein()).isCloseTo(0.8, within(1e-12));
        assertThat(meat.waterPerSolids()).isCloseTo(3, within(1e-12));
        assertThatThrownBy(() -> new Composition(1, 0, 0, 0, 0).dryMatter()).hasMessageContaining("dry matter");
    }
}
