package org.counterpull.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The update by hand, in its limits, and against sampling. */
class FactorBandTest {

  // The published band of an angle is a factor 2 both ways.
  @Test
  void publishedBandOfAnAngle() {
    FactorBand angle = FactorBand.published(Effect.ANGLE);
    assertThat(angle.median()).isEqualTo(1);
    assertThat(angle.low()).isCloseTo(0.5, within(1e-12));
    assertThat(angle.high()).isCloseTo(2, within(1e-12));
    assertThat(FactorBand.published(Effect.ALONG).low()).isCloseTo(0.8, within(1e-12));
    assertThat(FactorBand.published(Effect.ALONG).high()).isCloseTo(1.2, within(1e-12));
  }

  // By hand: sigma ln 2 / 1.64485 = 0.42140; reading 1.3 with sigma ln 1.12 = 0.11333: variance
  // 1 / (5.6313 + 77.862) = 0.011977, mean 0.011977 x 77.862 x ln 1.3 = 0.24467, factor 1.27720;
  // band exp(1.64485 x 0.109440) = 1.19724.
  @Test
  void oneReadingByHand() {
    FactorBand after =
        FactorBand.published(Effect.ANGLE).after(new Reading(Effect.ANGLE, 1.3, 1, 0));
    assertThat(after.median()).isCloseTo(1.2772, within(5e-5));
    assertThat(after.within()).isCloseTo(1.1972, within(5e-5));
  }

  @ParameterizedTest
  @EnumSource(Effect.class)
  void everyReadingNarrows(Effect effect) {
    FactorBand band = FactorBand.published(effect);
    for (int i = 0; i < 5; i++) {
      FactorBand after = band.after(new Reading(effect, 1.1, 1, 0.1));
      assertThat(after.within()).isLessThan(band.within());
      assertThat(after.median()).isBetween(Math.min(band.median(), 1.1), 1.1);
      band = after;
    }
  }

  // The order of readings doesn't matter, and a poor one weighs less than a good one.
  @Test
  void orderAndWeight() {
    Reading poor = new Reading(Effect.ANGLE, 1.5, 1, 0.8);
    Reading good = new Reading(Effect.ANGLE, 0.9, 1, 0.05);
    FactorBand prior = FactorBand.published(Effect.ANGLE);
    FactorBand one = prior.after(poor).after(good);
    FactorBand other = prior.after(good).after(poor);
    assertThat(one.median()).isCloseTo(other.median(), within(1e-12));
    assertThat(one.within()).isCloseTo(other.within(), within(1e-12));
    assertThat(one.median()).isLessThan(1.05);
  }

  // Sampled by Bayes' rule: draw factors from the prior, weigh each by the likelihood of the
  // reading; mean of the logarithm to 1 % of a standard deviation of 0.1.
  @Test
  void againstSampling() {
    FactorBand prior = FactorBand.published(Effect.ANGLE);
    Reading reading = new Reading(Effect.ANGLE, 0.8, 1, 0.1);
    Random random = new Random(1);
    double weights = 0;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < 400_000; i++) {
      double log = Math.log(prior.median()) + prior.sigmaLog() * random.nextGaussian();
      double off = Math.log(reading.ratio()) - log;
      double weight = Math.exp(-off * off / (2 * reading.varianceLog()));
      weights += weight;
      sum += weight * log;
      squares += weight * log * log;
    }
    FactorBand after = prior.after(reading);
    double mean = sum / weights;
    assertThat(Math.log(after.median())).isCloseTo(mean, within(2e-3));
    assertThat(after.sigmaLog())
        .isCloseTo(Math.sqrt(squares / weights - mean * mean), within(2e-3));
  }

  @Test
  void aRunToComeScattersOnTop() {
    FactorBand sure = new FactorBand(1.2, 1);
    assertThat(sure.ofOneRun().within()).isCloseTo(Math.pow(1.12, 1.6448536), within(1e-6));
    assertThat(sure.after(new Reading(Effect.ANGLE, 3, 1, 0))).isEqualTo(sure);
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> new FactorBand(1, 0.9)).hasMessageContaining("from 1");
    assertThatThrownBy(() -> new Reading(Effect.ANGLE, -1, 1, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
