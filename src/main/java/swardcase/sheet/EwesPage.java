package swardcase.sheet;

import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.DoubleStream;
import swardcase.chance.Drawn;
import swardcase.paper.Canvas;
import swardcase.paper.Column;
import swardcase.paper.Fill;
import swardcase.paper.Flow;
import swardcase.paper.Style;
import swardcase.paper.Table;
import swardcase.report.Report;
import swardcase.report.Reproduction;
import swardcase.report.Reproduction.DoseMonth;
import swardcase.report.Reproduction.MobResult;
import swardcase.wording.OestrogenWords;
import swardcase.wording.Texts;
import swardcase.wording.Words;

/** Ewes and oestrogen: a screening estimate of what the flock loses, and when it eats how much. */
final class EwesPage {

  private static final double HEIGHT = 165;

  private final Flow flow;
  private final Report report;
  private final Reproduction flock;

  EwesPage(Flow flow, Report report) {
    this.flow = flow;
    this.report = report;
    flock = report.reproduction();
  }

  void draw() {
    flow.section(Texts.get("ewes.heading"));
    flow.paragraph(OestrogenWords.flock(flock), Style.BODY_BOLD);
    flow.paragraph(Texts.get("ewes.vet"), Style.BODY);
    totals();
    flow.part(Texts.get("ewes.mobs"));
    if (flock.mobs().isEmpty()) {
      flow.paragraph(Texts.get("ewes.noMobs"), Style.BODY);
    } else {
      mobs();
    }
    if (!flock.dose().isEmpty()) {
      flow.together(this::dose);
    }
  }

  private void totals() {
    Table table =
        new Table(
            flow,
            Column.words(Texts.get("column.flock"), 357),
            Column.numbers(Texts.get("column.value"), 150));
    String cost = Words.money(report.farm().currency(), flock.costPerYear());
    table.row(Texts.get("ewes.joined"), Words.exact(flock.ewesJoined()));
    table.row(Texts.get("ewes.unaffected"), Words.range(flock.pregnantPercentUnaffected()));
    table.row(Texts.get("ewes.affected"), Words.range(flock.pregnantPercent()));
    table.row(Texts.get("ewes.sterile"), Words.range(flock.sterilePercent()));
    table.row(Texts.get("ewes.lambs"), Words.count(flock.lambsLostPerYear()));
    table.row(Texts.get("ewes.cost"), cost);
    flow.gap(4);
  }

  private void mobs() {
    Table table =
        new Table(
            flow,
            Column.names(Texts.get("column.mob"), 135),
            Column.numbers(Texts.get("column.ewes"), 50),
            Column.words(Texts.get("column.joining"), 100),
            Column.numbers(Texts.get("column.dose"), 72),
            Column.numbers(Texts.get("column.unaffected"), 75),
            Column.numbers(Texts.get("column.affected"), 75),
            Column.below(Texts.get("column.finding")).in(Style.CELL));
    for (MobResult mob : flock.mobs()) {
      table.row(
          mob.name(),
          Words.exact(mob.ewes()),
          OestrogenWords.joining(mob.joining()),
          Words.inTwoLines(mob.doseAtJoining()),
          Words.inTwoLines(mob.pregnantPercentUnaffected()),
          Words.inTwoLines(mob.pregnantPercent()),
          OestrogenWords.mob(mob, flock));
    }
    flow.gap(4);
  }

  private void dose() {
    flow.part(Texts.get("ewes.dose"));
    flow.paragraph(Texts.get("ewes.dose.note"), Style.NOTE);
    DoseMonth most = flock.dose().get(flock.highestDoseIn().ordinal());
    flow.figure(
        HEIGHT,
        Texts.get(
            "ewes.dose.alt",
            Words.shortName(most.month()),
            Words.range(most.formononetinPercentOfIntake())),
        this::paint);
  }

  private void paint(Canvas canvas, double top) {
    List<Drawn> doses = flock.dose().stream().map(DoseMonth::formononetinPercentOfIntake).toList();
    ColumnChart chart =
        new ColumnChart(
            canvas,
            flow.lettering(),
            new Rectangle2D.Double(Flow.LEFT, top, Flow.WIDTH, HEIGHT),
            flock.dose().stream().map(month -> Words.shortName(month.month())).toList(),
            DoubleStream.concat(DoubleStream.of(0), doses.stream().mapToDouble(Drawn::high)));
    for (int i = 0; i < doses.size(); i++) {
      chart.range(i, doses.get(i), 0.4, Fill.OCHRE);
      chart.stroke(i, doses.get(i).mean(), 0.55);
    }
  }
}
