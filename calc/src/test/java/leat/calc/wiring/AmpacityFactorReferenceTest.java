package leat.calc.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import leat.model.catalog.AmpacityFactor;
import leat.model.power.CodeFamily;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The printed factors for the temperature around conductors against the formula behind them:
 * f = √((Ti − Ta)/(Ti − T₀)), at the upper end of each range for Ta, or the middle where the code prints it so.
 * <p>
 * Source: NEC 310.15(B)(2), equation, T₀ = 30 °C; IEC 60364-5-52, T₀ = 20 °C in the ground. From memory, not confirmed.
 */
@Tag("reference")
class AmpacityFactorReferenceTest {

    @ParameterizedTest
    @CsvSource({"NFPA_70, 60, 30, 0.02", "NFPA_70, 75, 30, 0.02", "NFPA_70, 90, 30, 0.02", "IEC_60364, 70, 20, 0.006"})
    void eachFactorFollowsFromTheTemperatures(CodeFamily family, int insulation, int base, double tolerance) {
        List<AmpacityFactor> factors = Codes.site(family).catalog().electrical().factors().stream()
                .filter(one -> one.family() == family
                        && one.kind() == AmpacityFactor.Kind.AMBIENT
                        && one.insulation().orElseThrow() == insulation)
                .toList();
        assertEquals(true, factors.size() >= 9);
        for (AmpacityFactor factor : factors) {
            double celsius = factor.to().orElseThrow();
            double expected = Math.sqrt((insulation - celsius) / (insulation - base));
            assertEquals(expected, factor.factor().value(), tolerance, factor.toString());
        }
    }
}
