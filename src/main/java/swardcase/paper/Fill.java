package swardcase.paper;

/** How an area is filled: apart from each other in grey, and without any colour. */
public enum Fill {
  OPEN(Tint.PAPER),
  DEEP(Tint.DEEP),
  OCHRE(Tint.OCHRE),
  INK(Tint.INK),
  HATCHED(Tint.OCHRE),
  SLANTED(Tint.PAPER),
  CROSSED(Tint.PAPER),
  DOTTED(Tint.PAPER);

  private final Tint ground;

  Fill(Tint ground) {
    this.ground = ground;
  }

  Tint ground() {
    return ground;
  }
}
