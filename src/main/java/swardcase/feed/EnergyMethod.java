package swardcase.feed;

/** The two published systems of ewe energy requirements that the program computes side by side. */
public enum EnergyMethod {
  /**
   * Standing Committee on Agriculture (1990), Australia, with the energy cost of grazing. The
   * default: it lies closer to Australian tables for grazing ewes.
   */
  SCA_1990,
  /** Agricultural and Food Research Council (1993), United Kingdom, lowland ewes outdoors. */
  AFRC_1993
}
