package swardcase.decision;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import swardcase.chance.CertaintyGain;
import swardcase.chance.Dominance;
import swardcase.chance.Drawn;
import swardcase.chance.Learnt;
import swardcase.chance.Payoffs;
import swardcase.chance.Sample;
import swardcase.chance.Spread;
import swardcase.decision.Enquiry.Change;
import swardcase.draws.Alternatives;
import swardcase.draws.Simulation;
import swardcase.farm.ActionKind;
import swardcase.outcome.Course;
import swardcase.outcome.FarmModel;
import swardcase.outcome.FarmRule;
import swardcase.outcome.Outcome;
import swardcase.outcome.OutcomeFunction;
import swardcase.search.Found;
import swardcase.search.PlanLimit;
import swardcase.sward.StandGate;
import swardcase.sward.StandingClover;
import swardcase.tables.Cultivar;

/**
 * Works out the findings of one paddock from the draws.
 *
 * <p>A change of the plan is sure if its step over the best cheaper choice of the paddock is
 * ({@link Judgement#isSure}) and, where it sows, nothing in the paddock is known to be poor ({@link
 * StandGate}). A paddock that the plan keeps is too close to call if any choice may be right over
 * keeping ({@link Judgement#isOpen}), whether or not it keeps within the limits of the farm.
 */
final class PaddockStudy {

  static final int KEEPING = 0;
  private static final int PLANNED = 1;

  private final Decision decision;
  private final FarmModel model;
  private final Simulation simulation;
  private final Alternatives alternatives;
  private final Unknowns unknowns;
  private final Enquiries enquiries;

  PaddockStudy(Decision decision, Unknowns unknowns, Enquiries enquiries) {
    this.decision = decision;
    this.unknowns = unknowns;
    model = decision.model();
    simulation = decision.simulation();
    alternatives = simulation.alternatives();
    this.enquiries = enquiries;
  }

  PaddockFindings of(int paddock) {
    List<StandGate.LookFirst> stand =
        StandGate.of(
            model.farm().paddocks().get(paddock),
            model.tables().cultivar(model.farm().sownCultivar()),
            model.tables());
    boolean poor = stand.stream().anyMatch(finding -> finding.state() == StandGate.State.POOR);
    List<CourseFindings> courses = courses(paddock, poor);
    boolean acts = decision.isActedOn(paddock);
    int weighed = acts ? PLANNED : mostAgainstKeeping(courses);
    CourseFindings about = courses.get(weighed);
    boolean isSure = about.isSure();
    Payoffs payoffs =
        new Payoffs(fitting(paddock).mapToObj(c -> npv(paddock, c)).toArray(double[][]::new));
    return new PaddockFindings(
        verdict(paddock, about),
        acts ? Optional.of(isSure) : Optional.empty(),
        acts ? about.notSure() : Optional.empty(),
        acts && sows(about.choice())
            ? stand.stream().filter(each -> each.state() != StandGate.State.GOOD).toList()
            : List.of(),
        acts ? about.judgement().isJustNotSure() : about.overKeeping().isJustOpen(),
        courses,
        weighed,
        acts && !isSure ? sureInstead(courses) : Optional.empty(),
        enquiries(
            paddock,
            payoffs,
            about,
            acts ? !about.judgement().isSure() : about.overKeeping().isOpen()));
  }

  /** Findings of a rule of the farm. */
  RuleFindings of(FarmRule rule) {
    int place = alternatives.paddocks() + rule.ordinal();
    int planned = decision.plan().choice(rule) > 0 ? PLANNED : KEEPING;
    return new RuleFindings(rule, planned, courses(place, false));
  }

  /**
   * What is said of the paddocks where the stories have other chances.
   *
   * @param chances of the stories in their order
   * @param weight that each draw then has, 1 on average
   */
  OtherChances otherwise(List<PaddockFindings> said, double[] chances, double[] weight) {
    return new OtherChances(
        chances[0],
        chances[1],
        chances[2],
        IntStream.range(0, said.size())
            .mapToObj(i -> otherwise(i, said.get(i), weight))
            .flatMap(Optional::stream)
            .toList());
  }

  /** Empty if the same is said of the paddock. The best cheaper choice is looked for anew. */
  private Optional<OtherChances.Changed> otherwise(
      int paddock, PaddockFindings said, double[] weight) {
    int n = said.courses().size();
    double[] kept = npv(paddock, KEEPING);
    boolean acts = said.sure().isPresent();
    Optional<Boolean> sure = Optional.empty();
    boolean open = false;
    if (acts) {
      CertaintyGain overKeeping = new CertaintyGain(kept, weight, decision.tolerance());
      double[] certainty =
          IntStream.range(0, n).mapToDouble(c -> overKeeping.of(npv(paddock, c))).toArray();
      double[] costNow = said.courses().stream().mapToDouble(CourseFindings::costNow).toArray();
      double[] cheaper = npv(paddock, bestCheaper(paddock, PLANNED, certainty, costNow));
      double[] step = Sample.difference(npv(paddock, PLANNED), cheaper);
      sure = Optional.of(Judgement.of(step, weight).isSure());
    } else {
      open =
          IntStream.range(1, n)
              .mapToObj(c -> Sample.difference(npv(paddock, c), kept))
              .anyMatch(gain -> Judgement.of(gain, weight).isOpen());
    }
    Verdict verdict = acts ? said.verdict() : open ? Verdict.TOO_CLOSE : Verdict.KEEP;
    return verdict == said.verdict() && sure.equals(said.sure())
        ? Optional.empty()
        : Optional.of(new OtherChances.Changed(paddock, verdict, sure));
  }

  private double[] npv(int paddock, int choice) {
    return simulation.npv(alternatives.place(paddock, choice));
  }

  /** The choices that can be made; one that passes a limit cannot. */
  private IntStream fitting(int paddock) {
    return IntStream.range(0, alternatives.choices(paddock).size()).filter(c -> fits(paddock, c));
  }

  private boolean fits(int paddock, int choice) {
    return alternatives.fits(alternatives.place(paddock, choice));
  }

  private boolean sows(Course choice) {
    return model.actions().get(choice.action()).sows();
  }

  private List<CourseFindings> courses(int paddock, boolean poor) {
    int n = alternatives.choices(paddock).size();
    double[] kept = npv(paddock, KEEPING);
    double[] certainty = new double[n];
    double[] costNow = new double[n];
    CertaintyGain overKeeping = new CertaintyGain(kept, decision.tolerance());
    for (int c = 0; c < n; c++) {
      certainty[c] = overKeeping.of(npv(paddock, c));
      costNow[c] = costNow(paddock, c) - costNow(paddock, KEEPING);
    }
    return IntStream.range(0, n)
        .mapToObj(c -> course(paddock, c, poor, kept, certainty, costNow))
        .toList();
  }

  private CourseFindings course(
      int paddock, int c, boolean poor, double[] kept, double[] certainty, double[] costNow) {
    Course choice = alternatives.choices(paddock).get(c);
    int over = bestCheaper(paddock, c, certainty, costNow);
    double[] gain = Sample.difference(npv(paddock, c), kept);
    double[] step = Sample.difference(gain, Sample.difference(npv(paddock, over), kept));
    double[] nothing = new double[gain.length];
    double[] sorted = gain.clone();
    Arrays.sort(sorted);
    return new CourseFindings(
        choice,
        alternatives.place(paddock, c),
        passes(paddock, c),
        Spread.of(gain, sorted, simulation.draws().uniforms()),
        certainty[c],
        costPerHa(paddock, c),
        costNow[c],
        over,
        decision.spread(step),
        Judgement.of(step),
        poor && sows(choice),
        Judgement.of(gain),
        Dominance.firstDegree(sorted, nothing),
        Dominance.secondDegree(sorted, nothing));
  }

  /** The planned choice is the plan itself, whose costs stand among the measures. */
  private Drawn costPerHa(int paddock, int choice) {
    int place = alternatives.place(paddock, choice);
    if (place == Alternatives.PLAN && paddock >= alternatives.paddocks()) {
      return decision
          .of(FarmMeasures.costOf(FarmRule.values()[paddock - alternatives.paddocks()]))
          .times(1 / model.farm().areaHa());
    }
    if (place == Alternatives.PLAN) {
      double area = model.farm().paddocks().get(paddock).areaHa();
      return decision.of(paddock, FarmMeasures.OfPaddock.PLAN_COST).times(1 / area);
    }
    return decision.spread(simulation.costPerHa(place)).drawn();
  }

  private double costNow(int paddock, int choice) {
    OutcomeFunction run = decision.likely();
    Outcome outcome = simulation.mean(alternatives.place(paddock, choice));
    double sum = 0;
    for (int t = 0; t < outcome.years(); t++) {
      sum += run.discount(t) * outcome.cost(t);
    }
    return sum;
  }

  /** The best of the choices that cost less and fit; keeping if none is better than that. */
  private int bestCheaper(int paddock, int choice, double[] certainty, double[] costNow) {
    int best = KEEPING;
    for (int c = 1; c < certainty.length; c++) {
      boolean better = costNow[c] < costNow[choice] && certainty[c] > certainty[best];
      best = better && fits(paddock, c) ? c : best;
    }
    return best;
  }

  private Set<PlanLimit> passes(int paddock, int choice) {
    Course course = alternatives.choices(paddock).get(choice);
    return decision.found().bestStarts().get(paddock).stream()
        .filter(start -> start.course().equals(course))
        .filter(start -> !alternatives.fits(alternatives.place(paddock, choice)))
        .findFirst()
        .map(Found.BestStart::passes)
        .orElse(EnumSet.noneOf(PlanLimit.class));
  }

  /**
   * The choice whose regret over keeping is least, of those that are open if any is; the better one
   * on average of two alike.
   */
  private static int mostAgainstKeeping(List<CourseFindings> courses) {
    return IntStream.range(1, courses.size())
        .boxed()
        .min(
            Comparator.comparing((Integer c) -> !courses.get(c).overKeeping().isOpen())
                .thenComparing(c -> courses.get(c).overKeeping().regretShare())
                .thenComparing(c -> -courses.get(c).gain().mean()))
        .orElse(KEEPING);
  }

  /** The best choice that is sure over what is cheaper, and fits; empty if that is keeping. */
  private static Optional<Integer> sureInstead(List<CourseFindings> courses) {
    return IntStream.range(1, courses.size())
        .boxed()
        .filter(c -> courses.get(c).fits() && courses.get(c).isSure())
        .max(Comparator.comparingDouble(c -> courses.get(c).certaintyGain()));
  }

  /**
   * What can be found out about a paddock. Where its answer is open, a test that is worth its price
   * settles it, or a number that is worth more than that test beyond its price; where nobody
   * walked, a walk comes first.
   */
  private List<Enquiry> enquiries(
      int paddock, Payoffs payoffs, CourseFindings about, boolean isOpen) {
    int[] choices = fitting(paddock).toArray();
    Function<Learnt.Pick, Optional<Change>> change =
        pick -> change(paddock, alternatives.choices(paddock).get(choices[pick.choice()]), pick);
    List<Enquiry> tests = enquiries.tests(paddock, payoffs, change);
    if (!isOpen) {
      return tests;
    }
    Optional<Cultivar> sown =
        Optional.of(model.tables().cultivar(model.farm().sownCultivar()))
            .filter(cultivar -> sows(about.choice()));
    Set<Integer> beside =
        StandingClover.beside(
            model.inputs(),
            model.farm().paddocks().get(paddock),
            simulation.draws().composition(paddock),
            sown);
    double[] step = Sample.difference(simulation.npv(about.place()), npv(paddock, about.over()));
    List<Enquiry> all = new ArrayList<>(tests);
    unknowns
        .settling(paddock, payoffs, step, beside)
        .ifPresent(number -> all.add(enquiries.of(number, change)));
    return all.stream()
        .filter(each -> each.advice().isWorthKnowing())
        .max(
            Comparator.<Enquiry, Boolean>comparing(each -> each.kind() == Enquiry.Kind.WALK)
                .thenComparing(Enquiry::net))
        .map(most -> all.stream().map(e -> e == most ? e.settling(paddock) : e).toList())
        .orElse(tests);
  }

  private Optional<Change> change(int paddock, Course to, Learnt.Pick pick) {
    return to.equals(decision.plan().course(paddock))
        ? Optional.empty()
        : Optional.of(
            new Change(OptionalInt.of(paddock), Optional.of(to), pick.chance(), pick.ifHigh()));
  }

  private Verdict verdict(int paddock, CourseFindings about) {
    if (decision.isActedOn(paddock)) {
      ActionKind kind = model.actions().get(about.choice().action()).kind();
      return kind == ActionKind.KEEP_OFF ? Verdict.KEEP_OFF : Verdict.ACT;
    }
    return about.overKeeping().isOpen() ? Verdict.TOO_CLOSE : Verdict.KEEP;
  }
}
