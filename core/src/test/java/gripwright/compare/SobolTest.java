package gripwright.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class SobolTest {

  /**
   * The function of Ishigami T, Homma T 1990, Proc. ISUMA '90, with a = 7 and b = 0.1; indices in
   * closed form, as printed in Saltelli A et al. 2008, Global Sensitivity Analysis, The Primer.
   */
  @Test
  void indicesOfIshigamisFunction() {
    Philox random = new Philox(1990);
    double[] indices =
        Sobol.of(
            3,
            100_000,
            (row, input, second) ->
                Math.PI * (2 * random.uniform(0, row, input, second ? 1 : 0) - 1),
            x ->
                Math.sin(x[0])
                    + 7 * Math.pow(Math.sin(x[1]), 2)
                    + 0.1 * Math.pow(x[2], 4) * Math.sin(x[0]));
    double[] expected = {0.3139, 0.4424, 0, 0.5576, 0.4424, 0.2437};
    for (int i = 0; i < expected.length; i++) {
      assertEquals(expected[i], indices[i], 0.02, "index " + i);
    }
  }
}
