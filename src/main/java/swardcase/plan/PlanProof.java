package swardcase.plan;

import java.util.PriorityQueue;

/** Branch and bound. */
final class PlanProof {

  static int ROOT_TRIALS = Integer.getInteger("rt", 250);
  static int FIRST_TRIALS = Integer.getInteger("ft", 20);
  static int NODE_TRIALS = Integer.getInteger("nt", 20);
  static boolean RECENTRE = Boolean.getBoolean("recentre");
  static boolean LOSS = !Boolean.getBoolean("noloss");
  static int MAXN = Integer.getInteger("nodes", 400);

  record Part(
      Open open,
      Span span,
      double bound,
      double[] prices,
      double length,
      int[] picked,
      double[] about,
      long order) {}

  private final PlanTable table;
  private final PlanBound bound;
  private double inHand;
  private final double[] sumsInHand;
  private final java.util.function.Function<int[], Double> repair;
  private final java.util.function.Supplier<int[]> bestPick;
  private final double[] area;
  long parts;
  private long made;

  PlanProof(PlanTable table, PlanBound bound, java.util.function.Supplier<int[]> bestPick, java.util.function.Function<int[], Double> repair, double[] area) {
    this.table = table;
    this.bound = bound;
    this.area = area;
    this.bestPick = bestPick;
    this.repair = repair;
    inHand = repair.apply(bestPick.get());
    sumsInHand = new double[table.years() * table.sums()];
    table.sum(bestPick.get(), sumsInHand);
  }

  double prove() {
    Part root = root();
    if (root == null) return inHand;
    PriorityQueue<Part> queue =
        new PriorityQueue<>(
            (a, b) -> a.bound != b.bound ? Double.compare(b.bound, a.bound) : Long.compare(a.order, b.order));
    queue.add(root);
    
    while (!queue.isEmpty() && parts < MAXN) {
      Part part = queue.poll();
      if (part.bound <= inHand) continue;
      int paddock = widest(part);
      if (paddock < 0) continue;
      for (boolean one : new boolean[] {true, false}) {
        Open open = split(part, paddock, one);
        Part child = open == null ? null : bound(open, part.span.copy(), part, 2);
        parts++;
        if (child != null) { queue.add(child); if (parts < 6) update(bound.pick()); }
      }
      if (Boolean.getBoolean("trace") && (parts & 31) == 0) System.out.printf("parts %d queue %d bound %.1f%n", parts, queue.size(), queue.peek().bound);
    }
    if (Boolean.getBoolean("stats")) System.out.printf("parts %d queue %d trials %d calls %d%n", parts, queue.size(), PlanBound.TRIALS, PlanBound.CALLS);
    return queue.isEmpty() ? inHand : Math.max(inHand, queue.peek().bound);
  }

  private Part root() {
    Open open = Open.all(table);
    Span span = Span.all(table);
    if (!bound.narrow(open, span)) return null;
    bound.narrowByLimits(open, span);
    Part part = new Part(open, span, Double.POSITIVE_INFINITY, bound.slopes(sumsInHand), 1, null, sumsInHand, made++);
    for (int round = 0; round < 8; round++) {
      double before = part.bound;
      part = bound(part.open, part.span, part, 1);
      if (part == null) return null;
      if (update(bound.pick())) {table.sum(bestPick.get(), sumsInHand); part = new Part(part.open.where(c -> bound.boundWith(c) > inHand), part.span, part.bound, part.prices, Math.max(part.length,0.1), part.picked, sumsInHand, made++); }
      if (Boolean.getBoolean("trace")) System.out.printf("root %.1f open %d len %.4f%n", part.bound, part.open.size(), part.length);
      if (round > 1 && part.bound > before - 0.005 * (before - inHand)) break;
      if (!bound.narrowByLoss(part.open, inHand, part.span)) return null;
    }
    return part;
  }

  private boolean update(int[] pick) {
    double before = inHand;
    inHand = repair.apply(pick);
    return inHand > before;
  }

  private Part bound(Open open, Span span, Part from, int rounds) {
    double lowest = from.bound;
    double[] prices = from.prices;
    double length = from.length;
    double[] about = from.about;
    if (RECENTRE && from.picked != null) about = centre(open, from.picked, from.about);
    for (int round = 0; round < rounds; round++) {
      if (!bound.narrow(open, span)) return null;
      int trials = rounds == 1 ? (from.bound == Double.POSITIVE_INFINITY ? ROOT_TRIALS : ROOT_TRIALS / 2) : round == 0 ? FIRST_TRIALS : NODE_TRIALS;
      double b = bound.of(open, span, prices, inHand, about, trials, Math.min(1, (rounds == 1 ? (from.bound == Double.POSITIVE_INFINITY ? 1: 1) : Double.parseDouble(System.getProperty("lm","2"))) * length));
      lowest = Math.min(lowest, b);
      if (lowest <= inHand) return null;
      prices = bound.prices();
      length = bound.length();
      open = open.where(c -> bound.boundWith(c) > inHand);
      if (open == null) return null;
      if (open.size() == open.paddocks()) { int[] pick = new int[open.paddocks()]; for (int i = 0; i < pick.length; i++) pick[i] = open.choice(i); update(pick); return null; }
      if (LOSS && round + 1 < rounds) {
        if (!bound.narrowByLoss(open, inHand, span)) return null;
      }
    }
    return new Part(open, span, lowest, prices, length, bound.picked(), about, made++);
  }

  private double[] centre(Open open, int[] picked, double[] before) {
    double[] mean = new double[before.length];
    for (int i = 0; i < open.paddocks(); i++) {
      double all = 0;
      for (int k = open.first(i); k < open.first(i + 1); k++) all += picked[open.choice(k)] + 1e-3;
      for (int k = open.first(i); k < open.first(i + 1); k++) table.add(open.choice(k), (picked[open.choice(k)] + 1e-3) / all, mean);
    }
    return mean;
  }

  private int widest(Part part) {
    int widest = -1;
    double most = -1;
    for (int i = 0; i < table.paddocks(); i++) {
      int count = 0;
      double all = 0;
      double top = 0;
      for (int k = part.open.first(i); k < part.open.first(i + 1); k++) {
        count++;
        double p = part.picked[part.open.choice(k)];
        all += p;
        top = Math.max(top, p);
      }
      double doubt = area[i] * (0.01 + (all > 0 ? 1 - top / all : 0));
      if (count > 1 && doubt > most) {
        most = doubt;
        widest = i;
      }
    }
    return widest;
  }

  private Open split(Part part, int paddock, boolean one) {
    int top = -1;
    boolean oneAction = true;
    for (int k = part.open.first(paddock); k < part.open.first(paddock + 1); k++) {
      int c = part.open.choice(k);
      oneAction &= top < 0 || table.action(c) == table.action(top);
      top = top < 0 || part.picked[c] > part.picked[top] ? c : top;
    }
    int best = top;
    boolean byStart = oneAction;
    return part.open.where(
        c ->
            table.paddock(c) != paddock
                || one == (byStart ? c == best : table.action(c) == table.action(best)));
  }
}
