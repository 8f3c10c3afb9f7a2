package swardcase.paper;

import java.awt.Color;

/**
 * The colours of the sheet: one dark ink, two tints and their shades. Their brightness differs by
 * steps, so that they stay apart on a black and white printer; no meaning hangs on colour alone.
 */
public enum Tint {
  /** Text and marks. */
  INK(0x17252B),
  /** Secondary text. */
  QUIET(0x4F5E64),
  /** The dark tint: what is there, what is found. */
  DEEP(0x2B6270),
  /** The light tint: ranges and what is missing. */
  OCHRE(0xE0BF7C),
  /** Ground behind boxes and winter months. */
  PALE(0xEAF0F1),
  /** Thin rules. */
  RULE(0xB4BFC3),
  /** Paper. */
  PAPER(0xFFFFFF);

  private final Color color;

  Tint(int rgb) {
    this.color = new Color(rgb);
  }

  Color color() {
    return color;
  }
}
