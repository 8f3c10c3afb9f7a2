package swardcase.sward;

/** Hard seed of one cultivar in the settings of a seed bank. */
final class Retentions {

  private Retentions() {}

  /** Sets the four retentions of a cultivar, first to fourth summer. */
  static void set(SeedBankSettings settings, int cultivar, double... bySummer) {
    System.arraycopy(bySummer, 0, settings.retention, cultivar * SeedBank.AGES, SeedBank.AGES);
  }
}
