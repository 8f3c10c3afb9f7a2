package swardcase.plan;

import java.util.Comparator;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.function.IntPredicate;

/**
 * How far a better plan could be ahead of the best one found: branch and bound.
 *
 * <p>A part of the plans is a set of open choices with a {@link Span}. {@link PlanBound} bounds it,
 * takes choices out of it that cannot be in a better plan, and narrows its span to what a better
 * plan may lose at the prices. The part with the highest bound is split in two, until none is left
 * above the plan in hand or the work allowed is done. There is no chance and no clock in it.
 */
final class PlanProof {

  private static final int FIRST_TRIALS = 250;
  private static final int ROOT_TRIALS = 200;
  private static final int ROOT_ROUNDS = 20;
  private static final int TRIALS = 30;
  private static final int ROUNDS = 2;
  private static final int MOST_PARTS = 300;
  private static final double MOST_PARTS_TIMES_CHOICES_SQUARED = 5e8;
  private static final int LEAST_PARTS_REPAIRED = 6;
  private static final int PARTS_REPAIRED_TIMES_CHOICES = 20_000;

  /** A span of a mob's open feed wider than this share of it is split before paddocks are. */
  private static final double WIDE = 0.5;

  private record Part(
      Open open, Span span, double bound, double[] prices, double step, int[] picked, int number) {}

  private final PlanTable table;
  private final PlanBound ofPart;
  private final Reach reach;
  private final Room room;
  private final BestSoFar best;
  private final double[] inHand;
  private final PriorityQueue<Part> parts =
      new PriorityQueue<>(
          Comparator.comparingDouble((Part part) -> -part.bound()).thenComparingInt(Part::number));
  private int count;

  PlanProof(PlanTable table, PlanBound ofPart, BestSoFar best) {
    this.table = table;
    this.ofPart = ofPart;
    this.best = best;
    reach = ofPart.reach();
    room = ofPart.room();
    inHand = new double[table.years() * table.sums()];
    table.sum(best.pick(), inHand);
  }

  /** A value that no plan passes. Better plans met on the way are kept. */
  double bound() {
    root().ifPresent(parts::add);
    double choices = table.choices();
    double most = Math.min(MOST_PARTS, MOST_PARTS_TIMES_CHOICES_SQUARED / (choices * choices));
    while (!parts.isEmpty() && count < most && parts.peek().bound() > best.toPass()) {
      split(parts.poll());
    }
    return parts.isEmpty() ? best.toPass() : Math.max(best.toPass(), parts.peek().bound());
  }

  private Optional<Part> root() {
    Span span = Span.all(table);
    Optional<Open> fitting = room.of(Open.all(table));
    if (fitting.isEmpty()) {
      return Optional.empty();
    }
    Open open = fitting.get();
    reach.narrow(open, span);
    reach.narrowToLimits(open, span);
    double[] prices = ofPart.slopes(inHand);
    Optional<Part> part =
        tighten(new Part(open, span, Double.POSITIVE_INFINITY, prices, 1, null, 0), FIRST_TRIALS);
    for (int round = 1; round < ROOT_ROUNDS && part.isPresent(); round++) {
      best.repairFrom(ofPart.pick());
      table.sum(best.pick(), inHand);
      double before = part.get().bound();
      part = again(part.get(), ROOT_TRIALS);
      if (round > 1
          && part.isPresent()
          && part.get().bound() > before - 0.005 * (before - best.toPass())) {
        break;
      }
    }
    return part;
  }

  /** Narrows the span of the part bounded last, and bounds it anew. */
  private Optional<Part> again(Part part, int trials) {
    Span span = part.span().copy();
    boolean left =
        reach.narrow(part.open(), ofPart.loss(part.open(), best.toPass()), span)
            && reach.narrow(part.open(), span);
    return left ? tighten(with(part, part.open(), span), trials) : Optional.empty();
  }

  private static Part with(Part part, Open open, Span span) {
    return new Part(
        open, span, part.bound(), part.prices(), part.step(), part.picked(), part.number());
  }

  /** Bounds a part and closes what cannot be in a better plan; empty if nothing can. */
  private Optional<Part> tighten(Part part, int trials) {
    double tried =
        ofPart.of(
            part.open(), part.span(), part.prices(), best.toPass(), inHand, trials, part.step());
    double bound = Math.min(tried, part.bound());
    Optional<Open> open =
        part.open().where(c -> ofPart.boundWith(c) > best.toPass()).flatMap(room::of);
    if (bound <= best.toPass() || open.isEmpty()) {
      return Optional.empty();
    }
    if (open.get().size() == table.paddocks()) {
      best.repairFrom(open.get().only());
      return Optional.empty();
    }
    double step = Math.min(1, 4 * ofPart.step());
    return Optional.of(
        new Part(
            open.get(), part.span(), bound, ofPart.prices(), step, ofPart.picked(), part.number()));
  }

  private void split(Part part) {
    int wide = widestFeed(part.span());
    if (wide >= 0) {
      double middle = (part.span().low()[wide] + part.span().high()[wide]) / 2;
      for (boolean below : new boolean[] {true, false}) {
        Span span = part.span().copy();
        boolean left = reach.narrowToSide(part.open(), wide, middle, below, span);
        count++;
        if (left) {
          add(with(part, part.open(), span));
        }
      }
      return;
    }
    int paddock = mostInDoubt(part);
    for (boolean one : new boolean[] {true, false}) {
      count++;
      part.open()
          .where(side(part, paddock, one))
          .flatMap(room::of)
          .ifPresent(open -> add(with(part, open, part.span().copy())));
    }
  }

  private void add(Part part) {
    Optional<Part> bounded =
        reach.narrow(part.open(), part.span()) ? tighten(part, TRIALS) : Optional.empty();
    for (int round = 1; round < ROUNDS && bounded.isPresent(); round++) {
      bounded = again(bounded.get(), TRIALS);
    }
    if (bounded.isPresent()) {
      Part left = bounded.get();
      parts.add(
          new Part(
              left.open(),
              left.span(),
              left.bound(),
              left.prices(),
              left.step(),
              left.picked(),
              count));
      if (count <= Math.max(LEAST_PARTS_REPAIRED, PARTS_REPAIRED_TIMES_CHOICES / table.choices())) {
        best.repairFrom(ofPart.pick());
      }
    }
  }

  /** The feed of a mob's open paddocks in the held weeks, halfway and at the end; -1 if narrow. */
  private int widestFeed(Span span) {
    int widest = -1;
    double most = WIDE;
    for (int g = 0; g < table.run().mobs(); g++) {
      for (int t : new int[] {table.years() / 2, table.years() - 1}) {
        int k = t * table.sums() + YearSums.at(g, YearSums.GRAZED_HELD);
        double width = (span.high()[k] - span.low()[k]) / span.high()[k];
        if (table.run().firstAlike(g) == g && width > most && width < 2) {
          most = width;
          widest = k;
        }
      }
    }
    return widest;
  }

  /** The paddock about which the prices are least of one mind, large ones first. */
  private int mostInDoubt(Part part) {
    int widest = -1;
    double most = -1;
    for (int i = 0; i < table.paddocks(); i++) {
      double all = 0;
      double top = 0;
      for (int k = part.open().first(i); k < part.open().first(i + 1); k++) {
        int picked = part.picked()[part.open().choice(k)];
        all += picked;
        top = Math.max(top, picked);
      }
      double doubt = table.areaHa(i) * (0.01 + (all > 0 ? 1 - top / all : 0));
      if (part.open().first(i + 1) - part.open().first(i) > 1 && doubt > most) {
        most = doubt;
        widest = i;
      }
    }
    return widest;
  }

  /**
   * One side has the action that was picked most, or of one action the start; the other the rest.
   */
  private IntPredicate side(Part part, int paddock, boolean one) {
    int top = -1;
    boolean oneAction = true;
    for (int k = part.open().first(paddock); k < part.open().first(paddock + 1); k++) {
      int c = part.open().choice(k);
      oneAction &= top < 0 || table.action(c) == table.action(top);
      top = top < 0 || part.picked()[c] > part.picked()[top] ? c : top;
    }
    int of = top;
    boolean byStart = oneAction;
    return c ->
        table.paddock(c) != paddock
            || one == (byStart ? c == of : table.action(c) == table.action(of));
  }
}
